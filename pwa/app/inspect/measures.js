/** What is measured on a piece: a row for each measure, and the large keypad for the one in hand. */

import { Act, html, Icon } from '../frame/index.js';
import { Press } from '../press.js';
import { local } from '../run/figures.js';
import { RunFrame, RunTitle } from '../run/frame.js';
import { Keypad, Units } from '../run/keypad.js';
import { amountOf, press } from '../run/typed.js';
import { useDigits } from '../run/use_digits.js';
import { t, unitWords } from '../texts/index.js';
import '../texts/inspect_measures.js';
import { DECIMALS, nextSlot, readingsOf, told, unitOf, unitsOf } from './readings.js';

/** @param {any} measure */
function limitsSay(measure) {
  const { least, most } = measure;
  const facts = { least: local(least ?? ''), most: local(most ?? ''), unit: unitOf(measure) };
  if (!least && !most) return t('measure.limits.none');
  const says = least && most ? 'limits' : least ? 'limits.least' : 'limits.most';
  return `${t(`measure.${says}`, facts)}, ${measure.source || t('measure.unsourced')}`;
}

/** @param {any} measure @param {any} found */
function foundSays(measure, found) {
  if (!found.times) return [measure.instrument, limitsSay(measure)].filter(Boolean).join('; ');
  const mean = `${local(found.mean)} ${unitOf(measure)}`;
  const words = [
    found.times > found.of ? `${mean}, ${t('measure.mean', { n: found.times })}` : mean,
    found.of > 1 && !found.whole ? t('measure.far', found) : '',
    found.lies ? t(`measure.${found.lies}`) : '',
  ];
  return words.filter(Boolean).join('; ');
}

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

/** @param {{measures: any[], draft: any, change: (part: any) => void, read: (part: any) => void}} props read: a change that is judged */
export function Measures({ measures, draft, change, read }) {
  if (!measures.length) return null;
  return html`<ul class="looks">${measures.map((measure) => {
    const found = told(measure, draft.readings);
    const open = () => change({ measuring: measure.id, typed: '' });
    return html`<li key=${measure.id}><span><b>${measure.name}</b><span class=${found.times ? '' : 'soft'}>${foundSays(measure, found)}</span></span>
      <div class=${found.times ? 'yn' : 'yn one'}><${Press} class="press" aria-label=${t('measure.spoken', { name: measure.name })} aria-pressed=${String(found.whole)}
        onPress=${open}>${t(found.times ? 'measure.again' : 'measure.read')}</${Press}><${TakeBack} measure=${measure} draft=${draft} change=${read} /></div></li>`;
  })}</ul>`;
}

/** The measure in hand, place after place. @param {{measure: any, draft: any, change: (part: any) => void, name: string}} props */
export function Measuring({ measure, draft, change, name }) {
  const { slot, round } = nextSlot(measure, draft.readings);
  const units = unitsOf(measure);
  const unit = units.includes(draft.unit) ? draft.unit : (units[0] ?? '');
  const reading = amountOf(draft.typed, unit);
  const found = told(measure, draft.readings);
  const close = () => change({ measuring: '', typed: '' });
  const type = (/** @type {string} */ key) =>
    change((/** @type {any} */ was) => ({ typed: press(was.typed, key, DECIMALS) }));
  const keep = () => {
    if (!reading) return;
    const readings = [...draft.readings, { measure: measure.id, ...slot, value: reading }];
    const on = nextSlot(measure, readings).round === round;
    change({ readings, typed: '', ...(on ? {} : { measuring: '' }) });
  };
  useDigits(type, close);
  const where = [slot?.position, slot?.direction].filter(Boolean).join(', ');
  return html`<${RunFrame} title=${measure.name} leave=${close} says=${t('measure.back')} className="narrow">
    <${RunTitle} name=${[measure.name, where].filter(Boolean).join(': ')} right=${name} />
    <div class="typed" role="status" data-long=${draft.typed.length > 5 ? 'yes' : 'no'}><span class="big">${local(draft.typed)}</span><span class="unit">${unit}</span></div>
    <p class="same"><b>${found.times ? foundSays(measure, found) : limitsSay(measure)}</b></p>
    <${Units} units=${units} unit=${unit} onPress=${(/** @type {string} */ word) => change({ unit: word })} />
    <${Keypad} onKey=${type} />
    <${Act} confirm disabled=${!reading} onPress=${keep} label=${keepWords(reading)} second=${reading ? '' : t('reading.empty')}
      spoken=${reading ? `${t('measure.keep')} ${local(reading.value)} ${unitWords(unit)}` : undefined} />
  </${RunFrame}>`;
}

/** @param {any} reading */
const keepWords = (reading) =>
  reading
    ? html`${t('measure.keep')} <span class="fig">${local(reading.value)}</span>`
    : t('measure.keep');
