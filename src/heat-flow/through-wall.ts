/** How heat let in at the face has spread through an insulated wall. */

/** Where each form of the theta function needs the fewest terms. */
const CHANGEOVER = 0.16;

/**
 * Temperature at the depth `part` of the wall (0 the face, 1 the root) over the mean through the wall, after the
 * dimensionless time f = ατ/h²: 1 + 2Σcos(nπz/h)·exp(−n²π²f), or for small f its images,
 * Σ exp(−(z/h + 2n)²/4f)/√(πf). Carslaw & Jaeger §14.3 and §10.10, from memory; both forms cut off below 1e-10.
 */
export function throughWall(f: number, part: number): number {
  if (f > CHANGEOVER) {
    const e = Math.exp(-Math.PI * Math.PI * f);
    if (e < 1e-11) return 1;
    const c = Math.cos(Math.PI * part);
    const e4 = e * e * e * e;
    return 1 + 2 * (c * e + (2 * c * c - 1) * e4 + (4 * c * c - 3) * c * e4 * e4 * e);
  }
  const scale = -1 / (4 * f);
  const sum = image(scale, part) + image(scale, 2 - part) + image(scale, 2 + part) + image(scale, 4 - part);
  return sum / Math.sqrt(Math.PI * f);
}

function image(scale: number, distance: number): number {
  return Math.exp(scale * distance * distance);
}
