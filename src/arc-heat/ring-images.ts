/** The heat of one instant spread round a ring. */

/** Where e^−c no longer counts. */
const NEGLIGIBLE = 30;
/** s²/C² above which few waves do instead of few images. */
const CHANGEOVER = 0.09;

/**
 * Σ over n of exp(−(x + nC)²/2s²) and its derivative by x, 1/m, into `into`: by images while the bell is narrow and by
 * the theta function's other form, √(2π)·s/C·(1 + 2Σcos(2πnx/C)·exp(−2π²n²s²/C²)), once it has met itself.
 */
export function roundRing(circumference: number, x: number, variance: number, into: Float64Array): void {
  if (variance < CHANGEOVER * circumference * circumference) asImages(circumference, x, variance, into);
  else asWaves(circumference, x, variance, into);
}

function asImages(circumference: number, x: number, variance: number, into: Float64Array): void {
  let sum = 0;
  let slope = 0;
  const reach = Math.sqrt(2 * NEGLIGIBLE * variance);
  for (let n = Math.ceil((-reach - x) / circumference); n * circumference + x <= reach; n += 1) {
    const away = x + n * circumference;
    const bell = Math.exp((-away * away) / (2 * variance));
    sum += bell;
    slope -= (away / variance) * bell;
  }
  into[0] = sum;
  into[1] = slope;
}

function asWaves(circumference: number, x: number, variance: number, into: Float64Array): void {
  const wave = (2 * Math.PI) / circumference;
  const decay = (wave * wave * variance) / 2;
  let sum = 1;
  let slope = 0;
  for (let n = 1; decay * n * n < NEGLIGIBLE; n += 1) {
    const height = 2 * Math.exp(-decay * n * n);
    sum += height * Math.cos(n * wave * x);
    slope -= height * n * wave * Math.sin(n * wave * x);
  }
  const level = Math.sqrt(2 * Math.PI * variance) / circumference;
  into[0] = level * sum;
  into[1] = level * slope;
}
