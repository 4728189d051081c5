/** Keeping a working as a note: on the record it was opened from, or on one that is chosen. */
import { useEffect, useMemo, useState } from 'preact/hooks';
import { find as findView, prepare } from '../../views/find.js';
import { pathOf } from '../frame/code_found.js';
import {
  Act,
  codeGroups,
  Dock,
  html,
  Icon,
  Sheet,
  say,
  useAnswer,
  useStore,
} from '../frame/index.js';
import { keepAll } from '../keeping.js';
import { Press } from '../press.js';
import { local } from '../run/figures.js';
import { t } from '../texts/index.js';
import { inSentence, inWords } from '../words.js';
import { noteText } from './note.js';
import { lineText, nameOf } from './told.js';
import { askSays } from './words.js';

const MAY_HAVE_NOTES = ['part', 'joint'];
const MOST = 20;
/** Lines that are said beside the first one. */
const SAID_TOO = ['share-of-proof', 'to-file'];

/**
 * @typedef {{id: string, name: string, heading: string, codes?: string[]}} Thing what the note is kept on
 */

/** @param {{value: string, unit: string}} amount @param {any} line "45 N·m = 33.2 lbf·ft" */
const convertedText = ({ value, unit }, line) => `${local(value)} ${unit} = ${lineText(line)}`;

/** @param {import('./outcome.js').Outcome} outcome @param {string} working */
function second(outcome, working) {
  if (outcome.told) {
    const [first, next] = outcome.told.lines;
    if (working === 'convert') return convertedText(outcome.told.given.amount, first);
    const both = next && (typeof first.value === 'string' || SAID_TOO.includes(next.name));
    const shown = both ? [first, next] : [first];
    return shown.map((line) => `${nameOf(working, line)} ${lineText(line)}`).join(', ');
  }
  const what = inWords(outcome.wanted.map((name) => inSentence(askSays(working, name))));
  return what ? t('work.wanted', { what }) : t('work.trouble');
}

/** How long the fingers rest before a new result is said, in ms, so that no digit is talked over. */
const REST = 1000;

/** @param {string} headline */
function useTold(headline) {
  useEffect(() => {
    const resting = setTimeout(() => headline && say(headline), REST);
    return () => clearTimeout(resting);
  }, [headline]);
}

/**
 * The main action, and what was kept.
 * @param {{working: string, outcome: import('./outcome.js').Outcome, thing: Thing | null, kept: Thing | null, onKept: (thing: Thing) => void}} props
 */
export function Keep({ working, outcome, thing, kept, onKept }) {
  const store = useStore();
  const [choosing, setChoosing] = useState(false);
  const keepOn = async (/** @type {Thing} */ on) => {
    const body = { text: noteText(outcome.told) };
    const said = t('work.kept', { name: on.name });
    const entries = await keepAll(store, [{ heading: 'note', about: on.id, body }], said);
    if (entries === false) return false;
    setChoosing(false);
    onKept(on);
    return true;
  };
  const headline = second(outcome, working);
  useTold(outcome.told ? headline : '');
  const press = () => (thing ? keepOn(thing) : setChoosing(true));
  const label = thing ? t('work.keep.on', { name: thing.name }) : t('work.keep');
  return html`<${Dock}>${kept && html`<p class="kept-on"><${Icon} name="i-note" /><a href=${pathOf(kept)}>${t('work.kept', { name: kept.name })}</a></p>`}
    ${outcome.told ? html`<${Act} label=${label} second=${headline} disabled=${Boolean(thing && kept)} confirm=${Boolean(thing)} onPress=${press} />` : html`<p class="wanted">${headline}</p>`}</${Dock}>
    ${choosing && html`<${Choose} onClose=${() => setChoosing(false)} onChoose=${keepOn} />`}`;
}

/** @param {{onClose: () => void, onChoose: (thing: Thing) => Promise<boolean>}} props */
function Choose({ onClose, onChoose }) {
  const { value: rows } = useAnswer((store) => store.findRows(), []);
  const [query, setQuery] = useState('');
  const things = useMemo(() => chosenFrom(rows ?? [], query), [rows, query]);
  return html`<${Sheet} title=${t('work.choose')} onClose=${onClose}><div class="form">
    <label class="field"><span>${t('work.choose.find')}</span><input type="search" autocomplete="off" value=${query} onInput=${(/** @type {any} */ event) => setQuery(event.target.value)} /></label>
    ${things.length === 0 && rows && html`<p class="soft">${t(rows.length === 0 ? 'work.choose.empty' : 'work.choose.none')}</p>`}
    <ul class="sheet pick">${things.map(
      (thing) => html`<li key=${thing.id}><${Press} class="row" onPress=${() => onChoose(thing)}>
      <${Icon} name=${thing.heading === 'joint' ? 'i-star' : 'i-part'} /><span class="says"><b>${thing.name}</b><span class="soft">${t(`work.choose.${thing.heading}`)}</span></span><span class="fig code-small">${thing.codes?.[0] ? codeGroups(thing.codes[0]) : ''}</span></${Press}></li>`,
    )}</ul></div></${Sheet}>`;
}

/** @param {any[]} rows @param {string} query @returns {Thing[]} */
function chosenFrom(rows, query) {
  const may = rows.filter((row) => MAY_HAVE_NOTES.includes(row.heading) && row.name);
  if (!query.trim()) return may.slice(0, MOST);
  const byId = new Map(may.map((row) => [row.id, row]));
  const view = findView(prepare(may), query);
  const hits = view.groups.flatMap((/** @type {any} */ group) => group.hits);
  return hits.flatMap((/** @type {any} */ hit) => byId.get(hit.id) ?? []).slice(0, MOST);
}
