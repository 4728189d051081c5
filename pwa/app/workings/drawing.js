/** The drawing of a working, where a drawing says more than its numbers. */
import { html } from '../frame/index.js';
import { AdapterDrawing } from './draw_adapter.js';
import { BringDrawing } from './draw_bring.js';
import { ClearanceDrawing } from './draw_clearance.js';
import { PreloadDrawing } from './draw_preload.js';
import { RatioDrawing } from './draw_ratio.js';
import { RingGapDrawing } from './draw_ring_gap.js';
import { SetDrawing } from './draw_set.js';
import { StretchDrawing } from './draw_stretch.js';

/** @type {Record<string, any>} */
const drawings = {
  adapter: AdapterDrawing,
  bring: BringDrawing,
  clearance: ClearanceDrawing,
  preload: PreloadDrawing,
  ratio: RatioDrawing,
  'ring-gap': RingGapDrawing,
  set: SetDrawing,
  stretch: StretchDrawing,
};

/** @param {{told: any}} props */
export function Drawing({ told }) {
  const drawn = drawings[told.working];
  return drawn ? html`<figure class="sheet work-drawing"><${drawn} told=${told} /></figure>` : null;
}
