/** A wrench or an instrument: what it measures, how sure, when it was calibrated, its labels. */
import { value } from '../log/workshop.js';
import { compare, quantityOf } from '../trade/units.js';
import { days } from './away.js';
import { calibration } from './calibration.js';
import { noteLines } from './joint_lines.js';
import { permitted } from './judging.js';
import * as plain from './plain.js';
import * as things from './things.js';

/** @typedef {import('../log/values.js').Subject} Subject */
/** @typedef {plain.Workshop} Workshop */

const TEXTS = Object.freeze([
  'name',
  'sort',
  'unit',
  'least',
  'most',
  'deviation',
  'uncertainty',
  'lies',
  'note',
]);
const POSITIVE = Object.freeze(['resolution', 'deviation', 'uncertainty']);
const SMALL_SHARE = 0.06;

/**
 * Wrenches and instruments by name, each as its line says it.
 * @param {Workshop} workshop
 * @param {string} today
 */
export function instruments(workshop, today) {
  const group = (/** @type {string} */ heading) =>
    plain.sorted(
      workshop.all(heading).map((subject) => lineOf(subject, today)),
      (line) => [plain.natural(line.name), line.id],
    );
  return { wrenches: group('wrench'), instruments: group('instrument') };
}

/**
 * The record of a wrench or an instrument.
 * @param {Workshop} workshop
 * @param {string} id
 * @param {string} today
 */
export function instrument(workshop, id, today) {
  const subject = workshop.subject(id);
  const line = { ...lineOf(subject, today), id };
  return {
    ...line,
    ...things.described(subject),
    ...things.labels(workshop, id),
    invented: value(subject, 'invented') === true,
    troubles: troubles(line, today),
    before: before(subject),
    made: subject?.made ?? null,
    changes: changes(subject),
    strikes: things.strikes(subject),
    lost: things.lost(subject),
    notes: noteLines(subject, ['note', 'photo', 'purchase']),
    unread: subject?.unread ?? [],
  };
}

/**
 * What does not go together in a description, though each field can be read. A form holds such a
 * one back; two devices that each change one field may still meet in it.
 * @param {Record<string, any>} said the fields as text, and of an instrument its calibration or both days
 * @param {string} today
 * @returns {string[]}
 */
export function troubles(said, today) {
  const found = unitTrouble(plain.text(said.quantity), plain.text(said.unit));
  if (above(said.least, said.most)) found.push('least-above-most');
  const nothing = POSITIVE.filter((name) => number(said[name]) && !above(said[name], '0'));
  found.push(...nothing.map((name) => `${name}-not-above-zero`));
  const { calibrated, due } = said.calibration ?? said;
  if ((days(calibrated, today) ?? 0) < 0) found.push('calibrated-to-come');
  if ((days(calibrated, due) ?? 0) < 0) found.push('due-before-calibrated');
  return found;
}

/**
 * @param {string | null} quantity
 * @param {string | null} unit
 * @returns {string[]}
 */
function unitTrouble(quantity, unit) {
  if (unit === null) return [];
  const measures = quantityIn(unit);
  if (measures === null) return ['unit-unknown'];
  return quantity !== null && quantity !== measures ? ['unit-of-another'] : [];
}

/** @param {string | null} unit */
function quantityIn(unit) {
  try {
    return quantityOf(unit ?? '');
  } catch {
    return null;
  }
}

/** Two numbers of one scale are compared, whatever its unit is. @param {unknown} said */
const number = (said) => plain.quantity({ value: said, unit: 'mm' });

/** @param {unknown} one @param {unknown} other */
function above(one, other) {
  const [left, right] = [number(one), number(other)];
  return left !== null && right !== null && compare(left, right) > 0;
}

/** @param {Subject | null} subject @param {string} today */
function lineOf(subject, today) {
  /** @type {Record<string, string | null>} */
  const said = Object.fromEntries(TEXTS.map((name) => [name, plain.text(value(subject, name))]));
  const heading = subject?.heading ?? null;
  const wrench = heading === 'wrench';
  const own = wrench ? null : plain.text(value(subject, 'quantity'));
  return {
    id: subject?.id ?? '',
    heading,
    name: null,
    ...said,
    quantity: own ?? quantityIn(said.unit ?? null),
    resolution: plain.text(value(subject, wrench ? 'graduation' : 'resolution')),
    permitted: wrench ? permittedBy(subject, said.deviation ?? null) : null,
    calibration: calibration(value(subject, 'calibrated'), value(subject, 'due'), today),
  };
}

/**
 * How far a wrench may be off in per cent, and by which rule.
 * @param {Subject | null} wrench
 * @param {string | null} own
 */
function permittedBy(wrench, own) {
  const share = permitted(wrench);
  if (share === null) return null;
  if (own) return { percent: own, rule: 'own' };
  const rule = share === SMALL_SHARE ? 'small' : 'larger';
  return { percent: String(Math.round(share * 100)), rule };
}

/** Days it was calibrated on before, newest first, each once. @param {Subject | null} subject */
function before(subject) {
  const field = subject?.fields.calibrated;
  const now = plain.text(field?.value);
  const said = (field?.lost ?? []).map((claim) => plain.text(claim.value));
  return plain.once(said).filter((day) => day && day !== now);
}

/** Later descriptions that count, newest first, with what each says; each can be struck out. @param {Subject | null} subject */
function changes(subject) {
  /** @type {Map<string, {id: string, order: string, device: string, fields: any[]}>} */
  const found = new Map();
  const fields = Object.entries(subject?.fields ?? {});
  for (const [field, said] of plain.sorted(fields, ([name]) => [name])) {
    for (const { entry, order, device, value: now } of [said, ...said.lost]) {
      const line = found.get(entry) ?? { id: entry, order, device, fields: [] };
      line.fields.push({ field, value: now });
      found.set(entry, line);
    }
  }
  const later = [...found.values()].filter(({ id }) => id !== subject?.made);
  return plain.sorted(later, ({ order, id }) => [order, id]).reverse();
}
