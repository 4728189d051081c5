// Shared cases of what a part measures.
import { measured } from '../../../pwa/views/measured.js';
import { picked, workshop } from './views.js';

export const rules = {
  measured: (g) => picked(measured(workshop(g), g.id), g.pick),
};
