// Shared cases of wrenches and instruments: their records, their list, their calibration.
import { age, calibration } from '../../../pwa/views/calibration.js';
import { instrument, instruments, troubles } from '../../../pwa/views/instrument.js';
import { picked, workshop } from './views.js';

export const instrumentViews = {
  instrument: (w, g) => instrument(w, g.id, g.today),
  instruments: (w, g) => instruments(w, g.today),
};
const told = Object.entries(instrumentViews).map(([name, view]) => [
  name,
  (given) => picked(view(workshop(given), given), given.pick),
]);

export const rules = {
  ...Object.fromEntries(told),
  calibration: (g) => calibration(g.calibrated, g.due, g.today),
  'calibration.age': (g) => age(g.then, g.today),
  'instrument.troubles': (g) => troubles(g.said, g.today),
};
