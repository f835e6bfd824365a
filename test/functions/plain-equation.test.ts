import { plainEquation } from "../../functions/plain-equation";

test.each([
  ["a fraction and a sum", String.raw`g = \frac{t}{2} + a`, "g = t/2 + a"],
  ["a sum over a sum", String.raw`I = \frac{a + b}{c + d}`, "I = (a + b)/(c + d)"],
  ["a product below the line", String.raw`n = \frac{v}{\pi d}`, "n = v/(πd)"],
  ["a product under a root", String.raw`\sqrt{\kappa t}`, "√(κt)"],
  ["a fraction within a fraction", String.raw`\frac{1}{\frac{a}{b}}`, "1/(a/b)"],
  [
    "words as factors",
    String.raw`\text{lap} = \text{turn}\cdot\frac{\text{overlap}}{360^\circ}`,
    "lap = turn·overlap/360°",
  ],
  ["words side by side", String.raw`\text{shift}\,\text{share}`, "shift·share"],
  ["lowered letters that exist", String.raw`V_p t_{\text{on}}`, "Vₚtₒₙ"],
  ["lowered letters that do not", String.raw`C_d\,Q_b`, "C_dQ_b"],
  ["powers", String.raw`d^2 x^{k} (a - b)^2 y^{a + b}`, "d²x^k(a − b)²y^(a + b)"],
  ["a sum with its range", String.raw`\sum_{k=0}^{N-1}\frac{a^k}{k!}`, "Σ[k = 0 … N − 1](a^k/(k!))"],
  ["an integral", String.raw`\int_0^{t + D} q\,\mathrm{d}u`, "∫[0 … t + D] qdu"],
  ["a function of a fraction", String.raw`\exp\left(-\frac{x}{2}\right)`, "exp(−x/2)"],
  ["brackets that round down", String.raw`\left\lfloor\frac{a}{b}\right\rfloor`, "⌊a/b⌋"],
  ["thousands", String.raw`C_0 = 209\,500\ \text{ppm}`, "C₀ = 209 500 ppm"],
  ["a percentage", String.raw`30\,\%\cdot I`, "30 %·I"],
  ["a unit over a unit", String.raw`0.8\ \tfrac{\text{V}}{\text{mm}}\cdot g`, "0.8 V/mm·g"],
  [
    "cases",
    String.raw`m \le \begin{cases} 0.015\ \text{in} & \text{for a 4 in tube} \\ 15\,\%\cdot t & \text{otherwise} \end{cases}`,
    "m ≤ 0.015 in for a 4 in tube, 15 %·t otherwise",
  ],
])("%s", (_, tex, plain) => {
  expect(plainEquation([tex])).toBe(plain);
});

test("lines are parted by semicolons", () => {
  expect(plainEquation(["a = b", "c = d"])).toBe("a = b; c = d");
});

test.each([String.raw`\oint x`, "a ? b"])("%s is refused, not half told", (tex) => {
  expect(() => plainEquation([tex])).toThrow(/^cannot tell /);
});
