/**
 * Cells show what they hold at once. The engine fades a cell from its old content to its new one over 200 ms, whatever a
 * person's wish for less motion, and goes on drawing a sheet that was deleted meanwhile, which fails.
 */

import { stores } from "@odoo/o-spreadsheet";

type Renderer = InstanceType<typeof stores.RendererStore>;
type Draw = (this: Renderer, ...of: Parameters<Renderer["draw"]>) => string;

/** Later than any fading begun at 0 lasts, ms. */
const FADED = 1000;

/** Call once, before the engine is mounted. */
export function showCellsAtOnce(): void {
  const { prototype } = stores.RendererStore;
  const { value: draw } = Object.getOwnPropertyDescriptor(prototype, "draw") as { value: Draw };
  const fading = new Set<string>();
  // A drawing that begins to fade is followed by the one that ends it, where the engine would wait for frames.
  prototype.startAnimation = (id) => {
    fading.add(id);
    return "noStateChange";
  };
  prototype.stopAnimation = () => "noStateChange";
  prototype.draw = function drawToTheEnd(context) {
    fading.clear();
    const drawn = draw.call(this, context, 0);
    return fading.size > 0 ? draw.call(this, context, FADED) : drawn;
  };
}
