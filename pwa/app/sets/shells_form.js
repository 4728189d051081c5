/** The fields of shells, shims and washers: places, the owner's window, the stock. */
import { useMemo, useState } from 'preact/hooks';
import { Chips, Count, NumberField, TextField } from '../forms_fields.js';
import { html, Icon, Key, say } from '../frame/index.js';
import { Choice } from '../new_thing/choice.js';
import { t } from '../texts/index.js';
import { clearanceOf } from './shells_entries.js';
import { columnsOf, mmOf, placeName, typedOf } from './shells_model.js';
import { readingsOf } from './shells_readings.js';
import { lengthKinds } from './shells_stock.js';

const MOST = 32;

/** A list with one of its rows changed. @param {any[]} rows @param {number} at @param {any} part */
const withRow = (rows, at, part) => rows.map((row, i) => (i === at ? { ...row, ...part } : row));

/** A list of so many rows. @param {any[]} rows @param {number} many */
const ofLength = (rows, many) => Array.from({ length: many }, (_, at) => rows[at] ?? {});

/** A length as it is typed; what cannot be read says so. @param {any} props */
function LengthField({ id, label, hint, value, unit, onChange }) {
  const wrong = Boolean(value.trim()) && mmOf(value, unit) === null;
  const described = wrong || hint ? `${id}-hint` : undefined;
  return html`<div class="field"><label for=${id}>${label}</label>
    <input id=${id} type="text" inputmode="decimal" autocomplete="off" value=${value} aria-invalid=${wrong ? 'true' : undefined} aria-describedby=${described}
      onInput=${(/** @type {any} */ event) => onChange(event.target.value)} />
    ${wrong ? html`<p class="wrong" id=${described}><${Icon} name="i-caution" />${t('form.number', { typed: value, dot: '.' })}</p>` : hint && html`<p class="hint" id=${described}>${hint}</p>`}</div>`;
}

/** @param {any} props */
export function PlacesForm({ workshop, draft, change }) {
  const [filling, setFilling] = useState(false);
  const { what, unit, rows } = draft;
  const put = (/** @type {number} */ at, /** @type {any} */ part) =>
    change((/** @type {any} */ was) => ({ rows: withRow(was.rows, at, part) }));
  const words = ['shells', 'one', 'two'].map((word) => ({
    value: word,
    says: t(`shells.what.${word}`),
  }));
  const units = ['mm', 'in'].map((word) => ({ value: word, says: word }));
  return html`<${Chips} label=${t('shells.what')} value=${what} words=${words} onChange=${(/** @type {string} */ one) => change({ what: one })} />
    <${Chips} label=${t('shells.unit')} value=${unit} words=${units} onChange=${(/** @type {string} */ one) => change({ unit: one })} />
    <section class="stack"><h2>${t('shells.places')}</h2>
    <${Key} icon="i-find" label=${t('shells.fill')} pressed=${filling} onPress=${() => setFilling(!filling)} />
    ${filling && html`<${Fill} ...${{ workshop, draft, change }} />`}
    <${Count} label=${t('shells.count')} value=${rows.length} most=${MOST} onChange=${(/** @type {number} */ many) => change((/** @type {any} */ was) => ({ rows: ofLength(was.rows, many) }))} />
    <${TextField} id="shells-called" label=${t('shells.called')} hint=${t('shells.called.hint')} value=${draft.called} onChange=${(/** @type {string} */ called) => change({ called })} />
    ${rows.map(
      (/** @type {any} */ row, /** @type {number} */ at) =>
        html`<div key=${at} class=${what === 'shells' ? 'in-row' : ''}>${columnsOf(what).map(
          (word) =>
            html`<${LengthField} key=${word} unit=${unit} id=${`shells-${word}-${at}`} label=${t(`shells.${word}`, { place: placeName(draft, at) })} value=${row[word] ?? ''} onChange=${(/** @type {string} */ typed) => put(at, { [word]: typed })} />`,
        )}</div>`,
    )}</section>`;
}

/** Columns filled from what was read. @param {any} props */
function Fill({ workshop, draft, change }) {
  const sources = useMemo(() => readingsOf(workshop), [workshop]);
  const take = (/** @type {string} */ word) => (/** @type {string} */ id) => {
    const found = sources.find((one) => one.id === id);
    if (!found) return;
    change((/** @type {any} */ was) => ({ rows: filled(was, word, found.list) }));
    say(t('shells.filled', { n: found.list.length }));
  };
  return html`${columnsOf(draft.what).map((word) => html`<${Choice} key=${word} id=${`fill-${word}`} label=${t(`shells.fill.${word}`)} none=${t('shells.fill.none')} more=${t('shells.fill.more')} list=${sources} heading="part" value="" onChange=${take(word)} />`)}`;
}

/** As many rows as were read; names come from the first column. @param {any} draft @param {string} word @param {{name: string, mm: number}[]} list */
function filled({ rows, unit, what }, word, list) {
  const first = columnsOf(what)[0] === word;
  return ofLength(rows, first ? list.length : Math.max(rows.length, list.length)).map((row, at) => {
    const read = list[at];
    if (!read) return row;
    return { ...row, [word]: typedOf(read.mm, unit), ...(first ? { name: read.name } : {}) };
  });
}

/** @param {any} props */
export function WindowForm({ draft, change }) {
  const field = (/** @type {string} */ word, /** @type {string} */ hint = '') =>
    html`<${LengthField} unit=${draft.unit} id=${`shells-${word}`} label=${`${t(`shells.${word}`)}, ${draft.unit}`} hint=${hint} value=${draft[word]} onChange=${(/** @type {string} */ typed) => change({ [word]: typed })} />`;
  return html`<section class="stack"><h2>${t('shells.window')}</h2><div class="in-row">${field('least')}${field('most')}</div>${field('aim', t('shells.aim.hint'))}
    <${TextField} id="shells-source" label=${t('shells.source')} hint=${t('shells.source.hint')} value=${draft.source} onChange=${(/** @type {string} */ source) => change({ source })} />
    ${!draft.source.trim() && html`<p class="soft">${t('shells.unsourced')}</p>`}</section>`;
}

/** @param {any} props */
export function StockForm({ workshop, draft, change, stock }) {
  const kinds = useMemo(() => lengthKinds(workshop), [workshop]);
  const { unit } = draft;
  const put = (/** @type {number} */ at, /** @type {any} */ part) =>
    change((/** @type {any} */ was) => ({ stock: withRow(was.stock, at, part) }));
  const list = stock.groups
    .map((/** @type {any} */ { thick, count }) =>
      t('shells.there.one', { thick: typedOf(thick, unit), count, unit }),
    )
    .join(', ');
  return html`<section class="stack">
    <${Choice} id="shells-kind" label=${t('shells.stock')} none=${t('shells.stock.typed')} more=${t('shells.stock.more')} list=${kinds} heading="kind" value=${draft.kind} fresh=${draft.kind ? '' : t('shells.stock.typed')} onChange=${(/** @type {string} */ kind) => change({ kind })} />
    ${
      draft.kind
        ? html`<p>${t('shells.there', { n: stock.groups.length, list })}</p>${stock.unmeasured > 0 && html`<p class="soft">${t('shells.unmeasured', { n: stock.unmeasured })}</p>`}`
        : html`${draft.stock.map(
            (
              /** @type {any} */ row,
              /** @type {number} */ at,
            ) => html`<div key=${at} class="in-row">
      <${LengthField} unit=${unit} id=${`stock-${at}`} label=${`${t('shells.thick', { n: at + 1 })}, ${unit}`} value=${row.thick ?? ''} onChange=${(/** @type {string} */ thick) => put(at, { thick })} />
      <${NumberField} id=${`many-${at}`} label=${t('shells.many')} value=${row.count ?? '1'} onChange=${(/** @type {string} */ count) => put(at, { count })} /></div>`,
          )}<${Key} label=${t('shells.add')} onPress=${() => change((/** @type {any} */ was) => ({ stock: [...was.stock, {}] }))} />`
    }</section>`;
}

/** What goes where, each with its clearance. @param {any} props */
export function GoesWhere({ draft, found }) {
  const { unit, what } = draft;
  const key = what === 'one' ? 'shells.gets' : 'shells.gets.two';
  return html`<section class="stack"><h2>${t('shells.goes')}</h2><ol class="sheet set-spread goes">${found.places.map(
    (/** @type {any} */ one) => {
      const named = [...new Set(one.parts.map((/** @type {any} */ { name }) => name))].join(', ');
      const gets =
        one.piece === null
          ? t('shells.wanted', {
              thick: typedOf(one.thickness_wanted_mm, unit),
              target: typedOf(found.target, unit),
              unit,
            })
          : t(key, { thick: typedOf(one.thick, unit), unit, name: named && ` · ${named}` });
      const lands =
        one.piece === null ? t('shells.none') : `${clearanceOf(one.clearance_mm, unit)} ${unit}`;
      return html`<li key=${one.place} class="row plain"><span class="says"><b>${one.name}</b><span class="soft">${gets}</span></span><span class="fig">${lands}</span></li>`;
    },
  )}</ol></section>`;
}
