// Published orders of tightening, and what must hold of every other.
import * as sequence from '../../../pwa/trade/sequence.js';

const set = (listed) => [...new Set(listed)].sort((a, b) => a - b);

export function byShape(given) {
  const columns = given.columns ?? 1;
  const count = given.fasteners ?? (given.rows ?? 1) * columns;
  const tightening = sequence.order(given.pattern, count, given.rows ?? 2);
  const order = given.loosen ? sequence.loosening(tightening) : tightening;
  const column = order.map((number) => ((number - 1) % columns) + 1);
  const away = count > 1 ? Math.abs(order[1] - order[0]) : 0;
  return {
    order,
    permutation: set(order).length === count && Math.max(...order) === count,
    second_steps_away_at_least: Math.min(away, count - away),
    first_two_columns_are: set(column.slice(0, 2)),
    last_two_columns_are: set(column.slice(-2)),
  };
}

export const topics = {};
