// Shared cases of the workings: what is given as typed, what each side tells.
import { workOut } from '../../../pwa/trade/workings/registry.js';

export const rules = {
  'workings.work_out': (g) => workOut(g.working, g.given),
};
