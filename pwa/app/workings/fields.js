/** Fields of a working: a number with its unit beside it, a choice, a list in rows. */
import { useState } from 'preact/hooks';
import { Chips } from '../forms_fields.js';
import { html, Icon } from '../frame/index.js';
import { Press } from '../press.js';
import { t, unitWords } from '../texts/index.js';
import { askSays, choiceSays, hintOf } from './words.js';

/** @typedef {import('../../trade/workings/working.js').Ask} Ask */
/** @typedef {ReturnType<typeof import('./use_working.js').useWorking>} Bench */

const FEW = 4;
/** What may stay empty and yet is what one came for. @type {Record<string, string[]>} */
const IN_SIGHT = {
  clearance: ['least', 'most'],
  preload: ['class'],
  stretch: ['load', 'stretched'],
  'ring-gap': ['wanted-gap'],
  ratio: ['wanted-ratio'],
};
/** Has a value already and goes with what is folded. @type {Record<string, string[]>} */
const FOLDED = { bring: ['currency'] };
/** Asked only once something else is chosen. @type {Record<string, Record<string, string>>} */
const ONLY_WITH = { set: { worth: 'second-quantity', 'second-worth': 'second-quantity' } };
/** Of the amounts that are converted only these are below nought. */
const BELOW_NOUGHT = ['temperature', 'length', 'angle'];
const TYPED = ['designation', 'currency'];

/**
 * Every field of a working: those that are wanted, then those that may stay empty.
 * @param {{working: string, bench: Bench}} props
 */
export function Fields({ working, bench }) {
  const rows = [...new Set(bench.asks.map((ask) => ask.row).filter(Boolean))];
  const single = bench.asks.filter((ask) => !ask.row && isAsked(working, ask, bench));
  const inSight = (/** @type {Ask} */ ask) =>
    IN_SIGHT[working]?.includes(ask.name) ||
    (!ask.optional && !FOLDED[working]?.includes(ask.name));
  const wanted = single.filter(inSight);
  const spare = single.filter((ask) => !inSight(ask));
  const field = (/** @type {Ask} */ ask) =>
    html`<${Field} key=${ask.name} working=${working} ask=${ask} bench=${bench} />`;
  return html`${wanted.map(field)}
    ${rows.map((row) => html`<${Rows} key=${row} working=${working} row=${row} bench=${bench} />`)}
    ${spare.length > 0 && html`<${Spare} asks=${spare} bench=${bench} field=${field} />`}`;
}

/**
 * What may stay empty is folded until something stands in it.
 * @param {{asks: Ask[], bench: Bench, field: (ask: Ask) => any}} props
 */
function Spare({ asks, bench, field }) {
  const [open, setOpen] = useState(asks.some((ask) => bench.typed(ask).length > 0));
  return html`<section class="fold spare"><${Press} class="press" typing aria-expanded=${String(open)} onPress=${() => setOpen(!open)}>
    <span>${t('work.spare')}</span><${Icon} name="i-down" /></${Press}>${open && html`<div class="form">${asks.map(field)}</div>`}</section>`;
}

/** @param {{working: string, ask: Ask, bench: Bench}} props */
function Field({ working, ask, bench }) {
  if (ask.choices.length > 0)
    return html`<${Choice} working=${working} ask=${ask} bench=${bench} />`;
  const id = `ask-${ask.name}`;
  const wrong = bench.outcome.trouble[ask.name];
  const hint = hintOf(working, ask);
  const described = wrong || hint ? `${id}-says` : undefined;
  return html`<div class="field ask"><label for=${id}>${askSays(working, ask.name)}</label>
    <div class="with-unit"><${Typed} id=${id} value=${bench.typed(ask)} ask=${ask} wrong=${wrong} described=${described}
        onType=${(/** @type {string} */ text) => bench.put(ask.name, text)} />
      ${mayBeBelow(ask) && html`<${Press} class="press sign" typing aria-label=${t('work.sign')} onPress=${() => bench.put(ask.name, turned(bench.typed(ask)))}>±</${Press}>`}
      <${Unit} working=${working} ask=${ask} bench=${bench} /></div>
    <${Says} id=${`${id}-says`} wrong=${wrong} hint=${hint} /></div>`;
}

/** @param {{id: string, wrong?: string, hint?: string}} props */
function Says({ id, wrong, hint }) {
  if (wrong) return html`<p class="wrong" id=${id}><${Icon} name="i-caution" />${wrong}</p>`;
  return hint ? html`<p class="hint" id=${id}>${hint}</p>` : null;
}

/** What is of a quantity that was not chosen is not asked. @param {string} working @param {Ask} ask @param {Bench} bench */
function isAsked(working, ask, bench) {
  const first = bench.asks.find(({ name }) => name === ONLY_WITH[working]?.[ask.name]);
  return ask.quantity !== 'any' && (!first || bench.typed(first).length > 0);
}

/** @param {Ask} ask */
const mayBeBelow = (ask) => ask.signed && (!ask.follows || BELOW_NOUGHT.includes(ask.quantity));

/** @param {string} text the number with the other sign */
const turned = (text) => (text.startsWith('-') ? text.slice(1) : `-${text}`);

/** @param {{id: string, value: string, ask: Ask, onType: (text: string) => void, wrong?: string, described?: string, says?: string}} props */
function Typed({ id, value, ask, onType, wrong, described, says }) {
  const mode = TYPED.includes(ask.quantity)
    ? 'text'
    : ask.quantity === 'count'
      ? 'numeric'
      : 'decimal';
  return html`<input id=${id} class=${mode === 'text' ? 'big-words' : 'big'} type="text" inputmode=${mode} autocomplete="off" autocapitalize="characters" spellcheck=${false} enterkeyhint="next"
    value=${value} aria-label=${says} aria-invalid=${wrong ? 'true' : undefined} aria-describedby=${described}
    onKeyDown=${toNext} onInput=${(/** @type {any} */ event) => onType(event.target.value)} />`;
}

/** Enter goes to the next number, as on a calculating machine. @param {any} event */
function toNext(event) {
  if (event.key !== 'Enter') return;
  const all = [...document.querySelectorAll('.working input')];
  const next = /** @type {HTMLElement | undefined} */ (all[all.indexOf(event.target) + 1]);
  if (!next) return;
  event.preventDefault();
  next.focus();
}

/** The unit beside a number: a choice where there are several. @param {{working: string, ask: Ask, bench: Bench}} props */
function Unit({ working, ask, bench }) {
  if (ask.quantity === 'share') return html`<span class="unit">%</span>`;
  if (ask.units.length === 0) return null;
  const unit = bench.unit(ask);
  if (ask.units.length === 1) return html`<span class="unit">${unit}</span>`;
  return html`<span class="unit-choice"><select aria-label=${t('work.unit', { what: askSays(working, ask.name) })} value=${unit}
    onChange=${(/** @type {any} */ event) => bench.setUnit(ask, event.target.value)}>
    ${ask.units.map((word) => html`<option key=${word} value=${word} selected=${word === unit} aria-label=${unitWords(word)}>${word}</option>`)}</select><${Icon} name="i-down" /></span>`;
}

/** @param {{working: string, ask: Ask, bench: Bench}} props */
function Choice({ working, ask, bench }) {
  const value = bench.typed(ask) || ask.default || '';
  const says = askSays(working, ask.name);
  const put = (/** @type {string} */ word) => bench.put(ask.name, word);
  if (ask.choices.length <= FEW)
    return html`<${Chips} label=${says} value=${value} onChange=${put} words=${ask.choices.map((word) => ({ value: word, says: choiceSays(ask.name, word) }))} />`;
  const id = `ask-${ask.name}`;
  const none = ask.default === null;
  return html`<div class="field ask"><label for=${id}>${says}</label><span class="unit-choice whole"><select id=${id} value=${value} onChange=${(/** @type {any} */ event) => put(event.target.value)}>
    ${none && html`<option value="" selected=${value === ''}>${t('work.none')}</option>`}
    ${ask.choices.map((word) => html`<option key=${word} value=${word} selected=${word === value}>${choiceSays(ask.name, word)}</option>`)}</select><${Icon} name="i-down" /></span>
    <${Says} id=${`${id}-says`} wrong=${bench.outcome.trouble[ask.name]} hint=${hintOf(working, ask)} /></div>`;
}

/**
 * A list of numbers, or of several numbers each; there is always one more row to type into.
 * @param {{working: string, row: string | null, bench: Bench}} props
 */
function Rows({ working, row, bench }) {
  const asks = bench.asks.filter((ask) => ask.row === row);
  const used = asks.filter((ask) => isAsked(working, ask, bench));
  const length = Math.max(...asks.map((ask) => bench.typed(ask).length)) + 1;
  const wrong = asks.map((ask) => bench.outcome.trouble[ask.name]).filter(Boolean)[0];
  const heads = used.map(
    (ask) =>
      html`<div class="row-head" key=${ask.name}><span class="group-says">${askSays(working, ask.name)}</span><${Unit} working=${working} ask=${ask} bench=${bench} /></div>`,
  );
  const cell = (/** @type {Ask} */ ask, /** @type {number} */ at) =>
    html`<${Typed} key=${ask.name} id=${`ask-${ask.name}-${at}`} ask=${ask} value=${bench.typed(ask)[at] ?? ''} says=${t('work.row', { what: askSays(working, ask.name), n: at + 1 })}
      onType=${(/** @type {string} */ text) => bench.putAt(ask.name, at, text)} />`;
  return html`<fieldset class="rows" data-wide=${String(used.length)}><legend>${t(`work.rows.${row}`)}</legend><div class="row-heads">${heads}</div>
    <ol class="field">${Array.from({ length }, (_, at) => html`<li key=${at}><span class="fig" aria-hidden="true">${at + 1}</span>${used.map((ask) => cell(ask, at))}</li>`)}</ol>
    <${Says} id=${`rows-${row}-says`} wrong=${wrong} hint=${t(`work.rows.${row}.hint`)} /></fieldset>`;
}
