// Shared cases of a gauge study: the table, what comes next, what asks, what it came to.
import { study } from '../../../pwa/views/study.js';
import { picked, workshop } from './views.js';

/** The readings of a table stand as piece, person, repeat, digits; the story makes facts. */
function told(given) {
  const spoken = (given.trials ?? []).map(([piece, person, repeat, value]) => ({
    heading: 'trial',
    about: given.id,
    id: `${person}-${piece}-${repeat}`,
    body: { piece, person, repeat, value: { value, unit: 'mm' } },
  }));
  return { ...given, facts: [...(given.facts ?? []), ...spoken, ...(given.then ?? [])] };
}

export const rules = {
  study: (g) => picked(study(workshop(told(g)), g.id), g.pick),
};
