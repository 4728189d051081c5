/** What is measured on a piece: a row for each measure, and the large keypad for the one in hand. */

import { sameSpot } from '../../views/told.js';
import { Act, html, Icon } from '../frame/index.js';
import { Press } from '../press.js';
import { local } from '../run/figures.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { Keypad, Units } from '../run/keypad.js';
import { amountOf, press } from '../run/typed.js';
import { useDigits } from '../run/use_digits.js';
import { t, unitWords } from '../texts/index.js';
import '../texts/inspect_measures.js';
import { ReadWith, toolsFor } from './instrument.js';
import { DECIMALS, nextSpot, readingOf, readingsOf, toldOf, unitsOf } from './readings.js';
import { foundSays, limitsSay, plusMinus, spotSays, whereSays } from './says.js';
import { Sign } from './sign.js';

/** The last reading goes back into the hand: nothing is kept yet. @param {{measure: any, draft: any, change: (part: any) => void}} props */
function TakeBack({ measure, draft, change }) {
  const last = readingsOf(measure, draft.readings).at(-1);
  if (!last) return null;
  const words = t('measure.take-back', { value: `${local(last.value.value)} ${last.value.unit}` });
  const take = () =>
    change((/** @type {any} */ was) => ({
      readings: was.readings.filter((/** @type {any} */ one) => one !== last),
    }));
  return html`<${Press} class="press" aria-label=${words} onPress=${take}><${Icon} name="i-strike" /></${Press}>`;
}

/** @param {{measures: any[], draft: any, change: (part: any) => void, read: (part: any) => void, tools: any}} props read: a change that is judged */
export function Measures({ measures, draft, change, read, tools }) {
  if (!measures.length) return null;
  return html`<ul class="looks">${measures.map((measure) => {
    const found = toldOf(measure, draft.readings, tools.workshop);
    const open = () => change({ measuring: measure.id, typed: '' });
    return html`<li key=${measure.id}><span><b>${measure.name}</b>${
      found.verdict === 'outside'
        ? html`<span class="off-limit"><${Sign} /><span>${foundSays(measure, found)}</span></span>`
        : html`<span class=${found.times ? '' : 'soft'}>${foundSays(measure, found)}</span>`
    }</span>
      <div class=${found.times ? 'yn' : 'yn one'}><${Press} class="press" aria-label=${t('measure.spoken', { name: measure.name })} aria-pressed=${String(found.read === found.of)}
        onPress=${open}>${t(found.times ? 'measure.again' : 'measure.read')}</${Press}><${TakeBack} measure=${measure} draft=${draft} change=${read} /></div></li>`;
  })}</ul>`;
}

/** The measure in hand, spot after spot. @param {{measure: any, draft: any, change: (part: any) => void, name: string, kind: any, tools: any}} props */
export function Measuring({ measure, draft, change, name, kind, tools }) {
  const { spot, round } = nextSpot(measure, draft.readings);
  const units = unitsOf(measure);
  const unit = units.includes(draft.unit) ? draft.unit : measure.unit;
  const amount = amountOf(draft.typed, unit);
  const offered = toolsFor(tools, kind, measure);
  const taken = amount && [
    ...draft.readings,
    readingOf(measure, spot, amount, offered.now?.id ?? null),
  ];
  const close = () => change({ measuring: '', typed: '' });
  const type = (/** @type {string} */ key) =>
    change((/** @type {any} */ was) => ({ typed: press(was.typed, key, DECIMALS) }));
  const keep = () => {
    if (!taken) return;
    const on = nextSpot(measure, taken).round === round;
    change({ readings: taken, typed: '', ...(on ? {} : { measuring: '' }) });
  };
  useDigits(type, close);
  const { says, rest, out } = typedSays(
    measure,
    taken ?? draft.readings,
    amount && spot,
    tools.workshop,
  );
  return html`<${RunFrame} title=${measure.name} leave=${close} says=${t('measure.back')} className="narrow">
    <${RunTitle} name=${[measure.name, whereSays(spot)].filter(Boolean).join(': ')} right=${name} />
    <div class="typed" data-long=${draft.typed.length > 5 ? 'yes' : 'no'}><span class="big">${local(draft.typed)}</span><span class="unit">${unit}</span></div>
    <p class="gone" role="status">${amount ? `${local(amount.value)} ${unitWords(unit)}; ${says}` : ''}</p>
    <${ReadWith} says=${says} rest=${rest} out=${out} tools=${offered} />
    <${Units} units=${units} unit=${unit} onPress=${(/** @type {string} */ word) => change({ unit: word })} />
    <${Keypad} onKey=${type} />
    <${Act} confirm disabled=${!amount} onPress=${keep} label=${keepWords(amount)} second=${amount ? '' : t('reading.empty')}
      spoken=${amount ? `${t('measure.keep')} ${local(amount.value)} ${unitWords(unit)}` : undefined} />
  </${RunFrame}>`;
}

/**
 * While a number is typed: what it would tell at its spot; before that, what stands or the limits.
 * @param {any} measure
 * @param {any[]} readings the typed one among them
 * @param {any} spot where it is typed, or null
 * @param {any} workshop with the instruments
 */
function typedSays(measure, readings, spot, workshop) {
  const found = toldOf(measure, readings, workshop);
  if (!spot) {
    const says = found.times ? foundSays(measure, found) : limitsSay(measure);
    const out = found.verdict === 'outside';
    return { says, rest: found.times ? limitsSay(measure) : '', out };
  }
  const here = found.spots.find((/** @type {any} */ one) => sameSpot(one, spot));
  if (!here) return { says: limitsSay(measure), rest: '', out: false };
  const words = [
    here.verdict ? t(`measure.${here.verdict}`) : t('measure.limits.none'),
    here.times > 1 ? spotSays(found, here) : '',
  ];
  const sure = `${plusMinus(here.uncertainty, measure.unit)} ${t(`measure.from.${here.from}`)}`;
  return { says: words.filter(Boolean).join('; '), rest: sure, out: here.verdict === 'outside' };
}

/** @param {any} amount */
const keepWords = (amount) =>
  amount
    ? html`${t('measure.keep')} <span class="fig">${local(amount.value)}</span>`
    : t('measure.keep');
