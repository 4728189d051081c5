/**
 * Measured parts to measured places, so that each difference lands nearest the wanted one.
 * Difference = place − part: a bore less its piston, a housing less its bush.
 */
import { TradeError } from '../errors.js';
import { many } from './alike.js';
import { finite } from './amounts.js';
import { cheapest } from './assignment.js';
import { sum } from './dimension.js';

/** Fewer parts than places. */
export class TooFewParts extends TradeError {
  static code = 'pairing-too-few';
  static says = 'There are {parts} parts for {places} places.';
  static nextStep = 'Measure {missing} more, or pair fewer places.';
}

/** No place at all. */
export class NothingToPair extends TradeError {
  static code = 'pairing-no-places';
  static says = 'There is no place to pair a part with.';
  static nextStep = 'Measure one place at least.';
}

/**
 * The pairing with the least sum of deviations from the wanted difference, proved best.
 * @param {readonly number[]} placesMm
 * @param {readonly number[]} partsMm each is used once at most
 * @param {number} wantedMm place less part; may be below zero (an interference)
 */
export function pair(placesMm, partsMm, wantedMm) {
  if (!many(placesMm, 'places').length) throw new NothingToPair();
  for (const each of placesMm) finite(each, 'place');
  for (const each of many(partsMm, 'parts')) finite(each, 'part');
  finite(wantedMm, 'wanted');
  const missing = placesMm.length - partsMm.length;
  if (missing > 0) {
    throw new TooFewParts({ parts: partsMm.length, places: placesMm.length, missing });
  }
  const chosen = cheapest(
    placesMm.map((place) => partsMm.map((part) => Math.abs(place - part - wantedMm))),
  );
  const differences = placesMm.map((place, i) => place - Number(partsMm[Number(chosen[i])]));
  const deviations = differences.map((each) => each - wantedMm);
  const off = deviations.map(Math.abs);
  const taken = new Set(chosen);
  return Object.freeze({
    parts: Object.freeze(chosen.map((at) => at + 1)),
    differences_mm: Object.freeze(differences),
    deviations_mm: Object.freeze(deviations),
    sum_of_deviations_mm: sum(off),
    worst_mm: Math.max(...off),
    left: Object.freeze(partsMm.flatMap((_, at) => (taken.has(at) ? [] : [at + 1]))),
  });
}
