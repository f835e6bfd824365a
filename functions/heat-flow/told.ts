/** What the help of the heat-flow formulas says in the same words. */

export const LEFT_OUT =
  "Not in the model: flow of the pool by surface tension (Marangoni) and the sulfur that turns it, evaporation, gravity, heat taken by clamps and collets.";

export const NEARNESS =
  "Compared with an independent nonlinear 3-D solution (computed, no measurement) of 316L, 304L and metals with the conductivity of titanium and carbon steel: 95 of 100 face widths within 3 to 6 %, roots within 0.2 to 0.6 mm, amps within 3 to 5 % of a tube from 12 mm (1/2 in) OD. No measured weld stands beside it yet: prove on a coupon.";

export const MODEL_SOURCE =
  "Gaussian moving source of [eagar-tsai-1983] in a plate of finite thickness, images and loss as in [carslaw-jaeger-1959], properties by one rule for all metals fitted to that solution; arc efficiency [stenbacka-2012] (95 % range 0.73–0.82, mean of the journal version [stenbacka-2013] 0.77; in single calorimeters 0.67 [dupont-marder-1995], about 0.75 [smartt-1985], 0.75–0.85 [giedt-1989])";

/** The fused width at a depth, from the temperature there. */
const WIDTH_TEX = String.raw`b_z = 2\,y\ \text{where}\ \max_\xi T(\xi, y, z) = \theta`;

/** The bead that is asked for, as the mean of face and root. */
export const MEAN_TEX = String.raw`b = \frac{b_0 + b_h}{2},\quad ${WIDTH_TEX}`;

/** Face, root and how deep the melt reaches. */
export const SECTION_TEX = String.raw`${WIDTH_TEX},\quad p = z\ \text{where}\ \max_\xi T(\xi, 0, z) = \theta`;

export const PLATE_TEX = String.raw`T(\xi, y, z) = \frac{q}{\rho c\,h}\int_0^\infty \mathrm{e}^{-m\tau}\,\varphi\,G(z, \tau)\,\frac{\exp\left(-\frac{(\xi + v\tau)^2 + y^2}{2s^2}\right)}{2\pi s^2}\,\mathrm{d}\tau`;

/** What has become of the heat of one instant when it is τ old. */
export const AGE_TEX = [
  String.raw`s^2 = \sigma^2 + 2\alpha\tau + 2(\alpha_f - \alpha)\left(\tau - t_c\ln\left(1 + \frac{\tau}{t_c}\right)\right),\quad t_c = \frac{4.714\,\alpha}{v^2}`,
  String.raw`\varphi = 1 + (\varphi_f - 1)\frac{\tau}{\tau + t_c},\quad m = \frac{H}{\rho c\,h},\quad G = 1 + 2\sum_{n \ge 1}\cos\left(\frac{n\pi z}{h}\right)\exp\left(-\frac{n^2\pi^2\alpha\tau}{h^2}\right)`,
] as const;

export const POWER_TEX = String.raw`q = \eta V I`;

export const MODEL_TEX = [PLATE_TEX, ...AGE_TEX, POWER_TEX] as const;

/** Of the plate and what its heat does with its age. */
const AGE_WHERE = {
  T: "temperature rise",
  y: "distance beside its path",
  z: "depth from the face",
  q: "power into the tube, W",
  ρ: "density at room temperature (material)",
  c: "heat from 20 °C to the liquidus and half of the latent heat, per degree",
  h: "wall thickness (wall)",
  τ: "age of an increment of heat",
  m: "rate of surface loss",
  φ: "factor of old heat, which sits in colder metal",
  φ_f: "its value for very old heat, (k cold/k mean)^0.116",
  G: "rise at depth z over the mean through the wall",
  n: "number of the image",
  v: "surface travel (speed)",
  s: "spread of the heat of one instant",
  σ: "spread of the arc, a quarter of arcSize",
  α: "diffusivity near the arc, of k = 0.953·(0.757·mean + 0.243·k at the liquidus)",
  α_f: "diffusivity of very old heat, α·(α cold/α)^0.751",
  t_c: "age at which heat is half old",
  H: "loss of both faces, 77.3·(k mean/k cold)^0.874 W/m²K",
} as const;

export const MODEL_WHERE = {
  ...AGE_WHERE,
  ξ: "distance ahead of the arc",
  η: "fraction of the arc's power that reaches the tube (efficiency)",
  V: "arc voltage (volts)",
  I: "mean current, A",
} as const;

/** Of a bead that is told by its mean width. */
export const MEAN_WHERE = {
  b: "mean fused width",
  "b₀": "face width",
  bₕ: "root width",
  b_z: "fused width at depth z",
  θ: "rise from preheat to the liquidus",
} as const;

/** Of a standing arc, which has no power of its own to tell. */
export const STANDING_WHERE = {
  ...AGE_WHERE,
  ...MEAN_WHERE,
  y: "distance from the arc",
  q: "power of AMPS_MELT, W",
  t: "dwell",
} as const;
