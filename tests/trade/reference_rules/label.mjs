// Published values of the labels' alphabet, and what its check character must catch.
import { ALPHABET, parse, value } from '../../../pwa/trade/label.js';

/** A good code of which no two neighbours are alike. */
const GOOD = [...'WTNSMRK4'];
const SIGNS = new Map([...ALPHABET].map((sign) => [value(sign), sign]));
/** The published symbols, five of which our labels can't carry. */
const CHECK_SYMBOLS = `${ALPHABET}*~$=U`;

function ofNumber(number) {
  let rest = Math.floor(number / 32);
  let code = SIGNS.get(number % 32);
  for (; rest; rest = Math.floor(rest / 32)) code = SIGNS.get(rest % 32) + code;
  const symbol = CHECK_SYMBOLS[number % 37];
  return { code, with_check: code + symbol, check_symbol: symbol };
}

function isCaught(signs) {
  try {
    parse(signs.join(''));
  } catch {
    return true;
  }
  return false;
}

function caught() {
  const changed = GOOD.flatMap((own, at) =>
    [...ALPHABET].filter((sign) => sign !== own).map((sign) => GOOD.with(at, sign)),
  );
  const swapped = GOOD.slice(1).map((next, at) => GOOD.with(at, next).with(at + 1, GOOD[at]));
  return {
    single_changes: changed.filter(isCaught).length,
    neighbour_swaps_at_most: swapped.filter(isCaught).length,
  };
}

export function byShape(given) {
  if ('length' in given) return caught();
  if ('alphabet' in given)
    return {
      symbols: Array.from({ length: 32 }, (_, n) => SIGNS.get(n)).join(''),
      check_symbols: CHECK_SYMBOLS,
    };
  if ('number' in given) return ofNumber(given.number);
  const signs = [...given.typed.replaceAll('-', '')];
  return { read: signs.map((sign) => SIGNS.get(value(sign))).join('') };
}

export const topics = {};
