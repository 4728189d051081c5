// Published values of yields: share with band, how many to bring, chance from a lot, used or new.
import * as money from '../../../pwa/trade/money.js';
import * as yields from '../../../pwa/trade/yields.js';

function toBring(g) {
  if ('share_good' in g) return yields.bring(g.needed, g.share_good, g.chance);
  return yields.bringLearned(g.needed, g.inspected, g.rejected, g.chance, g.prior_a, g.prior_b);
}

function fromLot(g) {
  if ('share_good' in g) return { chance: yields.chance(g.bring, g.needed, g.share_good) };
  const seen = [g.inspected, g.rejected, g.prior_a, g.prior_b];
  return { chance: yields.chanceLearned(g.bring, g.needed, ...seen) };
}

function against(g) {
  const [used, fresh] = [g.price_used, g.price_new].map((each) => money.parse(each, g.currency));
  const found = yields.usedAgainstNew(g.bring, used, g.needed, fresh);
  return {
    used_total: money.text(found.used_total),
    new_total: money.text(found.new_total),
    difference: money.text(found.difference),
    used_is_cheaper: found.used_is_cheaper,
  };
}

export function byShape(g) {
  if ('price_used' in g) return against(g);
  if ('bring' in g) return fromLot(g);
  if ('needed' in g) return toBring(g);
  return yields.shareRejected(g.inspected, g.rejected, g.prior_a, g.prior_b, g.credible);
}

export const topics = {};
