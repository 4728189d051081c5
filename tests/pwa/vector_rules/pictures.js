// Shared cases of photos: what names them, what was pointed at, what a kind shows.
import { examples, pictures, pointed } from '../../../pwa/views/pictures.js';
import { picked, workshop } from './views.js';

export const rules = {
  pictures: (g) => picked(pictures(workshop(g), g.id), g.pick),
  'pictures.examples': (g) => picked(examples(workshop(g).subject(g.id)), g.pick),
  'pictures.pointed': (g) => picked(pointed(workshop(g), g.id, g.photo), g.pick),
};
