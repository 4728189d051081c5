// Shared cases of histories: of a part, of a kind, of a donor, and how many to bring home.
import { ofDonor, ofKind, ofPart } from '../../../pwa/views/history.js';
import { bringHome } from '../../../pwa/views/history_counts.js';
import { picked, workshop } from './views.js';

export const historyViews = {
  'history.of_part': (w, g) => ofPart(w, g.id),
  'history.of_kind': (w, g) => ofKind(w, g.id, g.most),
  'history.of_donor': (w, g) => ofDonor(w, g.id, g.most),
};
const told = Object.entries(historyViews).map(([name, view]) => [
  name,
  (given) => picked(view(workshop(given), given), given.pick),
]);

export const rules = {
  ...Object.fromEntries(told),
  'history_counts.bring_home': (g) => bringHome(g.judged, g.rejected, g.wanted, g.chance),
};
