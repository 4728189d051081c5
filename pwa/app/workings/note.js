/** A working as a note: its inputs, its result and its formula in words that stand alone. */
import { t } from '../texts/index.js';
import { lineText, nameOf } from './told.js';
import { askSays, choiceSays } from './words.js';

/** @param {string} ask @param {any} typed */
function typedText(ask, typed) {
  if (Array.isArray(typed)) {
    const unit = typed.find((each) => each?.unit)?.unit ?? '';
    const values = typed.map((each) => each?.value ?? each).join(', ');
    return `${values} ${unit}`.trim();
  }
  if (typed && typeof typed === 'object') return `${typed.value} ${typed.unit}`;
  return choiceSays(ask, typed) || typed;
}

/** @param {string} working @param {import('../../trade/workings/working.js').Line} line */
function lineOf(working, line) {
  const band = line.between
    ? ` (${t('work.band', { low: line.between[0], high: line.between[1] })})`
    : '';
  const mark = line.mark ? ` (${t(`work.mark.${line.mark}`)})` : '';
  return `${nameOf(working, line)} ${lineText(line)}${band}${mark}`;
}

/**
 * @param {any} told as a working tells
 * @returns {string}
 */
export function noteText(told) {
  const { working } = told;
  const result = told.lines.map((/** @type {any} */ line) => lineOf(working, line)).join('; ');
  const given = Object.entries(told.given)
    .map(([name, typed]) => `${askSays(working, name)} ${typedText(name, typed)}`)
    .join('; ');
  const cautions = told.cautions
    .filter((/** @type {any} */ each) => each.word !== 'notice')
    .map((/** @type {any} */ each) => `${t(`signal.${each.word}`)} ${each.says}`);
  return [
    t('work.note', { name: t(`work.${working}`), result, given }),
    ...cautions,
    t('work.note.formula', { formula: told.formula, source: told.source.replace(/\.$/, '') }),
  ].join(' ');
}
