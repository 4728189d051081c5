/** How many of each verdict, the share thrown out with its band, and how many to bring home. */
import { TradeError } from '../errors.js';
import { standing } from '../log/workshop.js';
import { bringLearned, shareRejected } from '../trade/yields.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */

export const MARKS = Object.freeze([...things.VERDICTS, 'look', 'ask']);
/** A band from fewer judged ones than this says little (ours). */
export const FEW = 10;
const DIGITS = 6;

/**
 * Pieces by verdict, how many were judged, how many of these are scrap, and the share. A handful
 * that is counted together counts as many as it is.
 * @param {Subject[]} parts
 */
export function countsOf(parts) {
  /** @type {Record<string, number>} */
  const verdicts = Object.fromEntries(MARKS.map((mark) => [mark, 0]));
  for (const part of parts) {
    const had = verdicts[things.mark(part)];
    if (had !== undefined) verdicts[things.mark(part)] = had + pieces(part);
  }
  const judged = sum(things.VERDICTS.map((word) => verdicts[word] ?? 0));
  const rejected = verdicts.scrap ?? 0;
  return {
    pieces: sum(Object.values(verdicts)),
    verdicts,
    judged,
    rejected,
    few: judged < FEW,
    share: share(judged, rejected),
  };
}

/** @param {number[]} numbers */
const sum = (numbers) => numbers.reduce((all, each) => all + each, 0);

/** @param {Subject} part */
const pieces = (part) => Math.max(0, things.quantity(part) ?? 0);

/**
 * The share rejected, and the band it lies in with 95 % credibility; flat prior. observed is what
 * was counted, mean what is to be expected of the next ones.
 * @param {number} judged
 * @param {number} rejected
 */
export function share(judged, rejected) {
  const found = orRefused(() => shareRejected(judged, rejected));
  if (found instanceof TradeError || judged === 0) return null;
  return {
    observed: rounded(rejected / judged),
    mean: rounded(found.mean),
    low: rounded(found.low),
    high: rounded(found.high),
  };
}

/**
 * How many to bring home so that with that chance so many of them may be used. What was judged here
 * is all that is known of the share; where no number can be told, why.
 * @param {number} judged
 * @param {number} rejected
 * @param {number} wanted
 * @param {number} chance
 */
export function bringHome(judged, rejected, wanted, chance) {
  const found = orRefused(() => bringLearned(wanted, judged, rejected, chance));
  if (found instanceof TradeError) return { bring: null, chance: null, why: found.code };
  return { bring: found.bring, chance: rounded(found.chance_reached), why: null };
}

/** @template T @param {() => T} work @returns {T | TradeError} */
function orRefused(work) {
  try {
    return work();
  } catch (error) {
    if (error instanceof TradeError) return error;
    throw error;
  }
}

/** @param {number} number */
const rounded = (number) => Number(number.toFixed(DIGITS));

/**
 * Why not: each reason of a standing verdict but use, the most frequent first.
 * @param {Subject[]} parts
 */
export function reasonsOf(parts) {
  /** @type {Map<string, {verdict: string, reason: string, count: number}>} */
  const found = new Map();
  for (const part of parts) {
    const verdict = things.mark(part);
    if (!things.VERDICTS.slice(1).includes(verdict)) continue;
    const said = standing(part, 'verdict').flatMap(({ body }) => plain.text(body.reason) ?? []);
    for (const reason of plain.once(said)) {
      const key = `${verdict} ${reason}`;
      const count = (found.get(key)?.count ?? 0) + pieces(part);
      found.set(key, { verdict, reason, count });
    }
  }
  const lines = [...found.values()].filter(({ count }) => count);
  return plain.sorted(lines, (line) => [-line.count, line.verdict, plain.natural(line.reason)]);
}
