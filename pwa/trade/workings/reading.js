/** Reading what came from a person or a program: text or number with unit, one or several. */
import { count } from '../amounts.js';
import { EITHER, read as readTyped } from '../typed.js';
import { NumberNegative } from '../unit_errors.js';
import { parseNumber, quantityOf, UNIT_WORDS } from '../units.js';
import { AskMissing, AskShape, AskUnknown, NotAChoice, RowsUneven } from './errors.js';
import { given } from './given.js';
import { refuseUneven } from './rows.js';

/** @typedef {import('./working.js').Ask} Ask */
/** @typedef {import('./working.js').Working} Working */
/** @typedef {import('./given.js').Typed} Typed */

const LONGEST = 80;
const MOST = 200;
const PER_CENT = '%';

/**
 * Everything given, read; what is left out takes its default. Each refusal has the name of the ask
 * among its facts as `about`.
 * @param {Working} working
 * @param {Record<string, any>} typed
 */
export function read(working, typed) {
  if (!isObject(typed))
    throw new AskShape({ ask: 'given', trouble: 'is no object of values by their names' });
  const names = working.asks.map((ask) => ask.name);
  for (const name of Object.keys(typed)) {
    if (!names.includes(name))
      throw new AskUnknown({ ask: name.slice(0, LONGEST), known: names.join(', ') });
  }
  /** @type {Record<string, Typed[]>} */
  const values = {};
  for (const ask of working.asks) {
    const found = readAsk(following(ask, values), typed[ask.name]);
    if (found.length > 0) values[ask.name] = found;
  }
  refuseUneven(working, values);
  return given(values);
}

/**
 * What was given for one ask; nothing where nothing was given and nothing must be.
 * @param {Ask} ask
 * @param {any} value
 * @returns {Typed[]}
 */
export function readAsk(ask, value) {
  try {
    const found = ask.many ? several(ask, value) : single(ask, value);
    if (found.length === 0 && !ask.optional) throw new AskMissing({ ask: said(ask.name) });
    return found;
  } catch (refused) {
    const facts = /** @type {any} */ (refused).facts;
    if (facts) facts.about ??= ask.name;
    throw refused;
  }
}

/**
 * An ask of any quantity is one of the quantity chosen before it.
 * @param {Ask} ask
 * @param {Record<string, Typed[]>} values
 * @returns {Ask}
 */
export function following(ask, values) {
  if (!ask.follows) return ask;
  return { ...ask, quantity: values[ask.follows]?.[0]?.value ?? ask.quantity };
}

/** @param {string} name */
const said = (name) => name.replaceAll('-', ' ');

/** @param {Ask} ask @param {any} value @returns {Typed[]} */
function single(ask, value) {
  if (!isEmpty(value)) return [one(ask, value)];
  const unit = ask.quantity === 'share' ? PER_CENT : ask.unit;
  return ask.default === null ? [] : [{ value: ask.default, unit }];
}

/** @param {any} value @returns {boolean} */
function isEmpty(value) {
  const text = isObject(value) ? value.value : value;
  return text === undefined || text === null || (typeof text === 'string' && !text.trim());
}

/** @param {any} value */
const isObject = (value) => typeof value === 'object' && value !== null && !Array.isArray(value);

/** @param {Ask} ask @param {any} value @returns {Typed[]} */
function several(ask, value) {
  if (value === undefined || value === null) return [];
  const list = typeof value === 'string' ? pieces(value) : value;
  if (!Array.isArray(list)) throw new AskShape({ ask: said(ask.name), trouble: 'is no list' });
  if (list.length > MOST)
    throw new AskShape({ ask: said(ask.name), trouble: `has more than ${MOST} numbers` });
  const filled = list.filter((each) => !isEmpty(each));
  if (list.findLastIndex((each) => !isEmpty(each)) + 1 !== filled.length)
    throw new RowsUneven({ row: said(ask.row ?? ask.name) });
  return filled.map((each) => one(ask, each));
}

/** The numbers of a text like "198.12 198.31 mm"; one unit at the end holds for all. @param {string} text */
function pieces(text) {
  const found = text.split(/[\s;]+/).filter(Boolean);
  const unit = found.length > 0 && !/[0-9]/.test(found.at(-1) ?? '') ? found.pop() : '';
  return found.map((piece) => `${piece} ${unit}`.trim());
}

/** @param {Ask} ask @param {any} value @returns {Typed} */
function one(ask, value) {
  const parts = isObject(value) ? value : { value };
  const text = Number.isSafeInteger(parts.value) ? String(parts.value) : parts.value;
  const unit = parts.unit ?? null;
  const shaped = typeof text === 'string' && (unit === null || typeof unit === 'string');
  if (!shaped || text.length > LONGEST)
    throw new AskShape({
      ask: said(ask.name),
      trouble: 'is neither text nor a number with its unit',
    });
  return (READERS[ask.quantity] ?? measuredOf)(ask, text.trim(), unit || null);
}

/** @type {Record<string, (ask: Ask, text: string, unit: string | null) => Typed>} */
const READERS = {
  // Of what quantity it is was not chosen.
  any: (ask) => {
    throw new AskMissing({ ask: said(ask.follows ?? ask.name), about: ask.follows });
  },
  number: bare,
  count: (ask, text, unit) => {
    const plain = Number(bare(ask, text, unit).value);
    return { value: String(count(plain, said(ask.name))), unit: null };
  },
  share: shareOf,
  designation: (ask, text, unit) => ({ value: noUnit(ask, text, unit), unit: null }),
  choice: (ask, text, unit) => {
    const word = text.replaceAll(' ', '-');
    if (unit !== null || !ask.choices.includes(word))
      throw new NotAChoice({ typed: text, known: ask.choices.join(', ') });
    return { value: word, unit: null };
  },
  currency: (ask, text, unit) => {
    if (unit !== null || !/^[A-Z]{3}$/.test(text))
      throw new AskShape({
        ask: said(ask.name),
        trouble: 'is no currency of three letters, like EUR',
      });
    return { value: text, unit: null };
  },
};

/** @param {Ask} ask @param {string} text @param {string | null} unit @returns {Typed} */
function measuredOf(ask, text, unit) {
  const words = /** @type {Record<string, any>} */ (UNIT_WORDS)[ask.quantity] ?? {};
  if (unit !== null && !Object.hasOwn(words, unit)) {
    quantityOf(unit);
    throw new AskShape({ ask: said(ask.name), trouble: `is not measured in ${unit}` });
  }
  const found = readTyped(text, ask.quantity, { unit, decimalSign: EITHER });
  if (found.number.startsWith('-') && !ask.signed) throw new NumberNegative({ typed: text });
  return { value: found.number, unit: found.unit };
}

/** @param {Ask} ask @param {string} text */
const number = (ask, text) => parseNumber(text, { oneDecimalKey: true, signed: ask.signed });

/** @param {Ask} ask @param {string} text @param {string | null} unit */
function noUnit(ask, text, unit) {
  if (unit !== null) throw new AskShape({ ask: said(ask.name), trouble: 'has no unit' });
  return text;
}

/** @param {Ask} ask @param {string} text @param {string | null} unit @returns {Typed} */
function bare(ask, text, unit) {
  return { value: number(ask, noUnit(ask, text, unit)), unit: null };
}

/** @param {Ask} ask @param {string} text @param {string | null} unit @returns {Typed} */
function shareOf(ask, text, unit) {
  if (unit !== null && unit !== PER_CENT)
    throw new AskShape({ ask: said(ask.name), trouble: 'is told in per cent' });
  const plain = number(ask, text.replace(/%$/, ''));
  if (Number(plain) > 100)
    throw new AskShape({ ask: said(ask.name), trouble: 'is more than 100 per cent' });
  return { value: plain, unit: PER_CENT };
}
