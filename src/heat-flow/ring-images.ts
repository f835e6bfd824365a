/** The heat of one instant spread round a ring. */

/** Where e^−c no longer counts, and such a height. */
const NEGLIGIBLE = 25;
const SMALL = Math.exp(-NEGLIGIBLE);
/** s²/C² above which few waves do instead of few images. */
const CHANGEOVER = 0.09;

/**
 * Σ over n of exp(−((x + nC)² + u)/2s²) and its first two derivatives by x, 1/m and 1/m², into `into`, u = `square`
 * being the distance across the ring squared: by images while the bell is narrow and by the theta function's other form,
 * √(2π)·s/C·(1 + 2Σcos(2πnx/C)·exp(−2π²n²s²/C²))·exp(−u/2s²), once it has met itself.
 */
export function roundRing(
  circumference: number,
  x: number,
  square: number,
  variance: number,
  into: Float64Array,
): void {
  if (variance < CHANGEOVER * circumference * circumference)
    asImages(circumference, x, square, variance, into);
  else asWaves(circumference, x, square, variance, into);
}

function asImages(
  circumference: number,
  x: number,
  square: number,
  variance: number,
  into: Float64Array,
): void {
  let sum = 0;
  let slope = 0;
  let curve = 0;
  const reach = Math.sqrt(2 * NEGLIGIBLE * variance);
  const scale = -0.5 / variance;
  let away = x + circumference * Math.ceil((-reach - x) / circumference);
  for (; away <= reach; away += circumference) {
    const bell = Math.exp(scale * (away * away + square));
    sum += bell;
    slope += away * bell;
    curve += away * away * bell;
  }
  into[0] = sum;
  into[1] = 2 * scale * slope;
  into[2] = 2 * scale * (sum + 2 * scale * curve);
}

function asWaves(
  circumference: number,
  x: number,
  square: number,
  variance: number,
  into: Float64Array,
): void {
  const wave = (2 * Math.PI) / circumference;
  const decay = (wave * wave * variance) / 2;
  const [cos, sin, fall] = [Math.cos(wave * x), Math.sin(wave * x), Math.exp(-decay)];
  let sum = 1;
  let slope = 0;
  let curve = 0;
  // cos nφ, sin nφ and exp(−n²·decay) from those before: one cosine, sine and exponential do for all waves.
  let [c, s, height, ratio] = [cos, sin, 2 * fall, fall * fall * fall];
  for (let n = 1; height > SMALL; n += 1) {
    sum += height * c;
    slope -= height * n * wave * s;
    curve -= height * n * n * wave * wave * c;
    [c, s] = [c * cos - s * sin, s * cos + c * sin];
    height *= ratio;
    ratio *= fall * fall;
  }
  const level = (Math.sqrt(2 * Math.PI * variance) / circumference) * Math.exp(-square / (2 * variance));
  into[0] = level * sum;
  into[1] = level * slope;
  into[2] = level * curve;
}
