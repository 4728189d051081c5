/** Numbers as people type them, made into plain decimal text; what has two meanings is asked about. */
import {
  NumberMissing,
  NumberNegative,
  NumberTooLong,
  NumberTwoMeanings,
  NumberUnclear,
} from './unit_errors.js';

const MOST_DIGITS = 15;
const PLAIN = /^[-−]?[0-9]*[.,]?[0-9]*$/;
const THREES = /^[1-9][0-9]{0,2}[.,][0-9]{3}$/;
const GROUPED = /^[1-9][0-9]{0,2}([.,])[0-9]{3}((?!\1)[.,][0-9]+|(\1[0-9]{3})+)$/;
const BLANKS = /^[ \t\r\n\u00a0\u202f]+|[ \t\r\n\u00a0\u202f]+$/g;

/**
 * The plain decimal text of a typed number; "2,5" gives "2.5", "61.0" keeps its nought.
 * Digits in threes are asked about, never guessed, unless the keypad has no other meaning for them.
 * @param {string} typed
 * @param {{oneDecimalKey?: boolean, signed?: boolean}} [how]
 */
export function parseNumber(typed, { oneDecimalKey = false, signed = false } = {}) {
  const text = typeof typed === 'string' ? typed.replace(BLANKS, '') : '';
  if (!text) throw new NumberMissing();
  refuseTwoMeanings(text, oneDecimalKey);
  if (!PLAIN.test(text) || !/[0-9]/.test(text)) throw new NumberUnclear({ typed: text });
  const negative = /^[-−]/.test(text);
  if (negative && !signed) throw new NumberNegative({ typed: text });
  const plain = plainOf(text.replace(/^[-−]/, ''));
  return negative && /[1-9]/.test(plain) ? `-${plain}` : plain;
}

/** @param {string} typed */
function plainOf(typed) {
  const [whole = '', part = ''] = typed.replace(',', '.').split('.');
  if (whole.length + part.length > MOST_DIGITS) throw new NumberTooLong({ typed });
  return (whole.replace(/^0+/, '') || '0') + (part ? `.${part}` : '');
}

/**
 * @param {string} text
 * @param {boolean} oneDecimalKey
 */
function refuseTwoMeanings(text, oneDecimalKey) {
  const three = THREES.test(text);
  if ((three && oneDecimalKey) || !(three || GROUPED.test(text))) return;
  const [first = '', ...rest] = text.split(/[.,]/);
  const last = rest[rest.length - 1];
  const whole = first + rest.slice(0, -1).join('');
  const mixed = text.includes('.') && text.includes(',');
  const joined = [`${whole}.${last}`, whole + last];
  if (rest.length > 1) joined.reverse();
  const meanings = mixed ? [`${whole}.${last}`, `${first}.${rest.join('')}`] : joined;
  throw new NumberTwoMeanings({ typed: text, one: meanings[0], other: meanings[1] });
}
