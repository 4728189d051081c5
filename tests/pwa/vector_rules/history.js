// Shared cases of histories: of a part, of a kind, of a donor, and how many to bring home.
import { ofDonor, ofKind, ofPart } from '../../../pwa/views/history.js';
import { bringHome } from '../../../pwa/views/history_counts.js';
import { picked, workshop } from './views.js';

export const rules = {
  'history.of_part': (g) => picked(ofPart(workshop(g), g.id), g.pick),
  'history.of_kind': (g) => picked(ofKind(workshop(g), g.id, g.most), g.pick),
  'history.of_donor': (g) => picked(ofDonor(workshop(g), g.id, g.most), g.pick),
  'history_counts.bring_home': (g) => bringHome(g.judged, g.rejected, g.wanted, g.chance),
};
