/**
 * Small pieces that the shapes of the headings are built from.
 *
 * A check gives the first trouble with a value, or null. Unknown fields are never looked at:
 * a newer device may know more.
 *
 * @typedef {import('./trouble.js').Trouble} Trouble
 * @typedef {(value: any) => Trouble | null} Check
 * @typedef {{check: Check, required: boolean, nullable: boolean}} Rule
 */

const BLANKS = /^[ \t\n\r\f\v\u00a0\u2003\u2002\u2009\u200a\u3000\u2028\u2029\ufeff]*$/;

/** @type {(sort: string, good: (value: any) => boolean) => Check} */
const leaf = (sort, good) => (value) => (good(value) ? null : { path: [], sort });

/** @type {(sort: string, pattern: RegExp) => Check} */
const written = (sort, pattern) =>
  leaf(sort, (value) => typeof value === 'string' && pattern.test(value));

/** Any text, also an empty one. */
export const text = leaf('text', (value) => typeof value === 'string');

/** Text that says something. @type {Check} */
export const words = (value) =>
  text(value) ?? (BLANKS.test(value) ? { path: [], sort: 'blank' } : null);

/** The id of a thing, an entry, a fastener or a pass; ASCII, so that all sort it alike. */
export const id = written('id', /^[ -~]{1,64}$/);

/** A UUID of version 7 in lower case. */
export const entryId = written(
  'id',
  /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/,
);

/** A stamp of the hybrid clock. */
export const stampText = written('stamp', /^[0-9a-f]{12}-[0-9a-f]{4}$/);

/** A decimal number as typed, kept as text so that its digits survive. */
export const number = written('number', /^(?=.{1,40}$)-?(?:[0-9]+\.?[0-9]*|\.[0-9]+)$/);

/** A whole number. */
export const whole = leaf('whole', Number.isSafeInteger);

/** A whole number from 1 on. @type {Check} */
export const count = (value) => whole(value) ?? (value > 0 ? null : { path: [], sort: 'least' });

/** True or false. */
export const truth = leaf('truth', (value) => typeof value === 'boolean');

/** One of a closed list of words. @type {(...list: string[]) => Check} */
export const word = (...list) => leaf('word', (value) => list.includes(value));

/** The SHA-256 of a picture in hex, which is its name. */
export const pictureDigest = written('digest', /^[0-9a-f]{64}$/);

/** A place on a picture: the shares of its width and height, each as text of four digits. */
export const spot = leaf(
  'spot',
  (value) =>
    Array.isArray(value) &&
    value.length === 2 &&
    value.every((share) => typeof share === 'string' && /^(?:0\.[0-9]{4}|1\.0000)$/.test(share)),
);

/** The eight signs of a label; whether the last one fits is not asked here. */
export const labelCode = written('code', /^[0-9A-HJKMNP-TV-Z]{8}$/);

/** An object whose fields are not looked at. */
export const facts = leaf('object', isObject);

/** A field that must be there. @type {(check: Check) => Rule} */
export const must = (check) => ({ check, required: true, nullable: false });

/** A field that must be there and may be null. @type {(check: Check) => Rule} */
export const mustOrNull = (check) => ({ check, required: true, nullable: true });

/** A field that may be absent or null. @type {(check: Check) => Rule} */
export const may = (check) => ({ check, required: false, nullable: true });

/** A field that may be absent, but not null. @type {(check: Check) => Rule} */
export const mayBe = (check) => ({ check, required: false, nullable: false });

/**
 * An object with these fields.
 * @param {Record<string, Rule>} rules
 * @returns {Check}
 */
export function shape(rules) {
  const entries = Object.entries(rules);
  return (value) => {
    if (!isObject(value)) return { path: [], sort: 'object' };
    for (const [name, rule] of entries) {
      const trouble = ruled(value, name, rule);
      if (trouble) return { path: [name, ...trouble.path], sort: trouble.sort };
    }
    return null;
  };
}

/**
 * A list whose lines pass a check.
 * @param {Check} check
 * @param {number} [most]
 * @returns {Check}
 */
export function lines(check, most = Number.POSITIVE_INFINITY) {
  return (value) => {
    if (!Array.isArray(value)) return { path: [], sort: 'list' };
    if (value.length > most) return { path: [], sort: 'many' };
    for (const [place, line] of value.entries()) {
      const trouble = check(line);
      if (trouble) return { path: [place, ...trouble.path], sort: trouble.sort };
    }
    return null;
  };
}

/** What a check takes, or text as an older page kept it. @type {(check: Check) => Check} */
export const textOr = (check) => (value) => (typeof value === 'string' ? null : check(value));

/** A measured value: digits as typed, and the word of the unit they were read in. */
export const measured = shape({ value: must(number), unit: must(words) });

/** The field `photos` of a fact. */
export const photos = may(lines(shape({ photo: must(pictureDigest), says: may(text) })));

/**
 * @param {any} value
 * @param {string} name
 * @param {Rule} rule
 * @returns {Trouble | null}
 */
function ruled(value, name, rule) {
  const found = Object.hasOwn(value, name) ? value[name] : undefined;
  if (found === undefined) return rule.required ? { path: [], sort: 'missing' } : null;
  if (found === null && rule.nullable) return null;
  return rule.check(found);
}

/** @param {any} value */
function isObject(value) {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
