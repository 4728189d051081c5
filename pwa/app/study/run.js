/** Measuring for a study: one reading after another, blind to what was read before. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { parseNumber } from '../../trade/units.js';
import { key, orderOf } from '../../views/study_plan.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Act, html, Key, say, Wait } from '../frame/index.js';
import { DECIMALS } from '../inspect/readings.js';
import { Press } from '../press.js';
import { local } from '../run/figures.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { useKeep } from '../run/keeping.js';
import { Keypad } from '../run/keypad.js';
import { press } from '../run/typed.js';
import { useDigits } from '../run/use_digits.js';
import { t, unitWords } from '../texts/index.js';
import { Handover, Whole } from './hand.js';

const BLANK = { person: '', round: 0, cell: '', typed: '', sign: '' };

/** @typedef {import('../../views/study_plan.js').At} At */

/**
 * Cells nobody has read yet, in their order; one just kept is left out before it has come back from
 * the disk, so that the next reading never lands on it.
 * @param {any} study
 * @param {string[]} just
 * @returns {At[]}
 */
function openCells(study, just) {
  return orderOf(study).filter((at) => {
    const who = study.people.indexOf(at.person);
    return !study.rows[at.piece - 1]?.people[who]?.[at.repeat - 1] && !just.includes(key(at));
  });
}

/**
 * Whose turn it is: a person goes on to the end of a round, then the next one is asked for.
 * @param {At[]} open
 * @param {any} draft
 * @returns {At | null} null where somebody must take over first
 */
function turnOf(open, { person, round }) {
  const mine = open.find((at) => at.person === person);
  if (!mine) return null;
  return mine.repeat === round || open[0]?.person === person ? mine : null;
}

/** @param {{study: any, workshop: any, store: any, leave: () => void}} props workshop: what the study was read from */
export function Run({ study, workshop, store, leave }) {
  const [draft, change] = useDraft(store, `study-run:${study.id}`, BLANK);
  const [ahead, setAhead] = useState({ workshop, cells: /** @type {string[]} */ ([]) });
  const { keep, trouble } = useKeep(store);
  if (!draft) return html`<main class="run narrow"><${Wait} /></main>`;
  const open = openCells(study, ahead.workshop === workshop ? ahead.cells : []);
  if (!open.length) return html`<${Whole} ...${{ study, leave }} />`;
  const at = turnOf(open, draft);
  if (!at) return html`<${Handover} ...${{ study, open, leave, change }} />`;
  const typed = draft.cell === key(at) ? draft : { ...draft, typed: '', sign: '' };
  const set = (/** @type {any} */ part) =>
    change((/** @type {any} */ was) => {
      const now = was.cell === key(at) ? was : { ...was, typed: '', sign: '' };
      return { cell: key(at), typed: now.typed, sign: now.sign, ...part(now) };
    });
  const read = async (/** @type {any} */ value) => {
    if (!(await keep([{ heading: 'trial', about: study.id, body: { ...at, value } }])))
      return false;
    feedback('kept');
    setAhead((was) => ({
      workshop,
      cells: [...(was.workshop === workshop ? was.cells : []), key(at)],
    }));
    const next = turnOf(
      open.filter((one) => one !== at),
      draft,
    );
    say(next ? t('study.kept.one', { piece: next.piece }) : t('study.kept.round'));
    change({ typed: '', sign: '', round: Math.max(draft.round, at.repeat) });
    return true;
  };
  return html`<${Reading} key="reading" ...${{ study, at, typed, set, read, leave, left: open.length }} />${trouble}`;
}

/** The typed text as a measured value, or null while it is none. @param {any} typed @param {string} unit */
function readOf({ typed, sign }, unit) {
  if (!/[0-9]/.test(typed)) return null;
  const text = sign + typed.replace(/\.$/, '');
  return { value: parseNumber(text, { oneDecimalKey: true, signed: true }), unit };
}

/** Whether a reading may be below nothing: then there is a key for the sign. @param {any} study */
const maySign = ({ least }) => least === null || Number(least) < 0;

/** A minus typed by an instrument or on a keyboard counts, whether there is a key for it or not. @param {() => void} turn */
function useMinus(turn) {
  const now = useRef(turn);
  now.current = turn;
  useEffect(() => {
    const onKey = (/** @type {KeyboardEvent} */ event) => {
      const plain = !event.ctrlKey && !event.metaKey && !event.altKey;
      if (plain && (event.key === '-' || event.key === '−')) now.current();
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);
}

/** @param {any} props */
function Reading({ study, at, typed, set, read, leave, left }) {
  const { unit, of, last } = study;
  const value = readOf(typed, unit);
  const type = (/** @type {string} */ one) =>
    set((/** @type {any} */ was) => ({ typed: press(was.typed, one, DECIMALS) }));
  const turn = () => set((/** @type {any} */ was) => ({ sign: was.sign ? '' : '-' }));
  useDigits(type, leave);
  useMinus(turn);
  const shown = `${typed.sign ? '−' : ''}${local(typed.typed)}`;
  const who = t('study.turn', { person: at.person, done: of - left + 1, of });
  return html`<${RunFrame} title=${t('study.piece', at)} demo=${study.invented} leave=${leave} says=${t('study.leave')} className="narrow">
    <${RunTitle} name=${t('study.piece', at)} right=${who} />
    <div class="typed" role="status" data-long=${shown.length > 5 ? 'yes' : 'no'}><span class="big">${shown}</span><span class="unit">${unit}</span></div>
    <div class="pair">${maySign(study) && html`<${Press} class="press" typing aria-label=${t('study.sign')} aria-pressed=${String(Boolean(typed.sign))} onPress=${turn}>±</${Press}>`}
      <${Key} className="press" icon="i-strike" disabled=${!last} href=${last ? `/study/${study.id}?strike=${last.id}` : undefined}
        label=${last ? t('study.last', last) : t('study.last.none')} /></div>
    <${Keypad} onKey=${type} />
    <${Act} confirm disabled=${!value} onPress=${() => value && read(value)} label=${words(value)} second=${value ? '' : t('reading.empty')}
      spoken=${value ? `${t('study.read')} ${local(value.value)} ${unitWords(unit)}, ${t('study.read.of', at)}` : undefined} />
  </${RunFrame}>`;
}

/** @param {{value: string} | null} value */
const words = (value) =>
  value
    ? html`${t('study.read')} <span class="fig">${local(value.value.replace('-', '−'))}</span>`
    : t('study.read');
