/** What a gauge study came to: the scatter of the gauge, held against the width of the limits. */
import { decimal, float, sum } from '../trade/exact.js';
import { analysisOfVariance, goodEnough, shareOfTolerance } from '../trade/gauge_study.js';
import { chance, treatment } from '../trade/interaction.js';
import { GUARD_RULES } from '../trade/limits.js';
import { convert, convertDifference } from '../trade/units.js';

/** @typedef {import('../trade/units.js').Measured} Measured */

export const FEWEST = 2;
/** An instrument that shows a tenth of what is asked of it: common practice, no source. */
const TENTH = 10;
const HAIR = 1e-9;

/** A reading in the unit of the study. @param {Measured} reading @param {string} to */
export const size = ({ value, unit }, to) =>
  unit === to ? Number(value) : convert(Number(value), unit, to);

/** What the last digit of a reading is worth in the unit of the study. @param {Measured} reading @param {string} to */
export function step({ value, unit }, to) {
  const digit = Number(`1e-${(value.split('.')[1] ?? '').length}`);
  return unit === to ? digit : Math.abs(convertDifference(digit, unit, to));
}

/** How far two limits are apart, as they were typed, where there are two in their order. @param {string | null} least @param {string | null} most */
export function width(least, most) {
  if (least === null || most === null) return null;
  const { up, down } = decimal(least);
  const room = float(sum(decimal(most), { up: -up, down }));
  return room > 0 ? room : null;
}

/**
 * The figures and the verdict, or what stands against reckoning it.
 * @param {Measured[][][]} readings person → repeat → piece
 * @param {string} unit
 * @param {number | null} room the width of the limits, in the unit
 */
export function result(readings, unit, room) {
  const sizes = readings.map((person) => person.map((line) => line.map((one) => size(one, unit))));
  try {
    const { study, treated } = studied(sizes);
    return { trouble: null, figures: figures({ study, treated, sizes, room, readings, unit }) };
  } catch (error) {
    const { code } = /** @type {any} */ (error);
    if (!code) throw error;
    return { trouble: /** @type {string} */ (code), figures: null };
  }
}

/** @param {{study: any, treated: string, sizes: number[][][], room: number | null, readings: Measured[][][], unit: string}} found */
function figures({ study, treated, sizes, room, readings, unit }) {
  const shown = Math.max(...readings.flat(2).map((one) => step(one, unit)));
  const share = room === null ? null : shareOfTolerance(study.both, room);
  return {
    people: sizes.length,
    repeats: sizes[0]?.length ?? 0,
    pieces: sizes[0]?.[0]?.length ?? 0,
    interaction_is: treated,
    repeatability: study.repeatability,
    reproducibility: study.reproducibility,
    interaction: study.interaction,
    both: study.both,
    part: study.part,
    total: study.total,
    categories: study.categories,
    width: room,
    share,
    share_of_total: study.both_over_total,
    against: share === null ? 'pieces' : 'limits',
    verdict: goodEnough(share ?? study.both_over_total),
    near: GUARD_RULES.expanded * study.both,
    step: shown,
    coarse: room !== null && shown * TENTH > room * (1 + HAIR),
  };
}

/**
 * The interaction is pooled where the scatter of the repeats alone may have made it.
 * @param {number[][][]} sizes
 */
function studied(sizes) {
  const kept = analysisOfVariance(sizes, 'kept');
  if (kept.mean_square_repeat === 0 || kept.mean_square_interaction < 0)
    return { study: kept.study, treated: 'kept' };
  const treated = treatment(
    chance(kept.mean_square_interaction, kept.mean_square_repeat, {
      people: sizes.length,
      repeats: sizes[0]?.length ?? 0,
      parts: sizes[0]?.[0]?.length ?? 0,
    }),
  );
  const { study } = treated === 'kept' ? kept : analysisOfVariance(sizes, treated);
  return { study, treated };
}
