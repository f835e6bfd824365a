/** What the help of the heat-flow formulas says in the same words. */

export const LEFT_OUT =
  "Not in the model: flow of the pool by surface tension (Marangoni) and the sulfur that turns it, evaporation, gravity, heat taken by clamps and collets.";

export const NEARNESS =
  "Compared with an independent nonlinear 3-D solution (computed, no measurement) of 316L, 304L and metals with the conductivity of titanium and carbon steel: 95 of 100 face widths within 3 to 6 %, roots within 0.2 to 0.5 mm, amps within 2 to 5 % of a tube from 12 mm (1/2 in) OD. No measured weld stands beside it yet: prove on a coupon.";

export const MODEL_SOURCE =
  "Gaussian moving source of [eagar-tsai-1983] in a plate of finite thickness, images and loss as in [carslaw-jaeger-1959], properties by one rule for all metals fitted to that solution; arc efficiency [stenbacka-2012] (95 % range 0.73–0.82)";

export const MODEL_TEX = [
  String.raw`T(\xi, y, z) = \frac{q}{\rho c\,h}\int_0^\infty e^{-m\tau}\,\varphi\,G(z, \tau)\,\frac{\exp\left(-\frac{(\xi + v\tau)^2 + y^2}{2s^2}\right)}{2\pi s^2}\,\mathrm{d}\tau`,
  String.raw`s^2 = \sigma^2 + 2\alpha\tau + 2(\alpha_f - \alpha)\left(\tau - t_c\ln\left(1 + \tfrac{\tau}{t_c}\right)\right),\quad m = \frac{H}{\rho c\,h},\quad q = \eta V I`,
] as const;

export const MODEL_WHERE = {
  T: "temperature rise",
  ξ: "distance ahead of the arc",
  y: "distance beside its path",
  z: "depth from the face",
  q: "power into the tube, W",
  ρc: "heat to the liquidus per volume and degree, with half of the latent heat (material)",
  h: "wall thickness (wall)",
  τ: "age of an increment of heat",
  m: "rate of surface loss",
  φ: "factor of old heat, which sits in colder metal",
  G: "face or root over the mean through the wall",
  v: "surface travel (speed)",
  s: "spread of the heat of one instant",
  σ: "spread of the arc, a quarter of arcSize",
  α: "diffusivity near the arc",
  α_f: "diffusivity of old heat",
  t_c: "age at which old begins, 4.7·α/v²",
  H: "loss of both faces, about 80 W/m²K",
  η: "fraction of the arc's power that reaches the tube (efficiency)",
  V: "arc voltage (volts)",
  I: "mean current, A",
} as const;
