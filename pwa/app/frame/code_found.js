/** What a label says: the thing it marks, a blank one, a retired one, scrap, or a question. */
import { day } from '../dates.js';
import { Icon } from '../icons.js';
import { keepAll } from '../keeping.js';
import { t } from '../texts/index.js';
import { Act, Key } from './act.js';
import { AskWhich } from './asks.js';
import { dueSays } from './facts.js';
import { html } from './html.js';
import { codeGroups, Panel } from './told.js';

const RECORDS = ['holder', 'joint', 'wrench', 'instrument'];

/** The address of a thing. @param {{heading: string, id: string}} thing */
export const pathOf = ({ heading, id }) => `/${RECORDS.includes(heading) ? heading : 'part'}/${id}`;

/** Sent out and not come back, as far as anybody said. @param {{found: any}} props */
function Away({ found }) {
  const [thing] = found.things;
  const [sent] = thing.away;
  return html`<${Panel} icon="i-move" word=${t('code.away', { to: sent.to })} says=${[thing.name, sent.for, dueSays(sent)].filter(Boolean).join(', ')} />
    <div class="stack"><${Key} href=${pathOf(thing)} icon="i-part" label=${t('code.see')} />
    <${Act} href=${`/back/${thing.id}`} label=${t('code.away.back')} second=${t('code.away.second')} /></div>`;
}

/** What is said of what nobody judges. @type {Record<string, string>} */
const NOUNS = { holder: 'code.holder', wrench: 'code.wrench', instrument: 'code.instrument' };

/** @type {Record<string, string>} */
const marks = { holder: 'i-bin', wrench: 'i-wrench', instrument: 'i-gauge' };

/** @param {{heading: string}} thing */
export const markOf = ({ heading }) => marks[heading] ?? 'i-part';

/** @param {{found: any}} props */
function Thing({ found }) {
  const [thing] = found.things;
  if (thing.away.length > 0) return html`<${Away} found=${found} />`;
  const verdict = t(
    thing.verdict ? `verdict.${thing.verdict}` : (NOUNS[thing.heading] ?? 'verdict.none'),
  );
  const label = html`${t('scan.open')} <span class="fig">${codeGroups(found.code)}</span>`;
  return html`<div class="about"><${Icon} name=${markOf(thing)} /><span><b>${thing.here ? thing.name || t('record.nameless') : t('here')}</b>${verdict}</span></div>
    <${Act} href=${pathOf(thing)} label=${label} second=${thing.here ? t('scan.open.record') : t('here.part')} />`;
}

/** @param {{found: any}} props */
function Scrapped({ found }) {
  const [thing] = found.things;
  const why = [thing.reason, thing.made ? day(thing.made) : ''].filter(Boolean).join(', ');
  return html`<${Panel} icon="v-scrap" word=${t('code.scrap.loud', { why: why || t('code.scrap.plain') })} says=${t('code.scrap', { name: thing.name || t('record.nameless') })} />
    <div class="stack"><${Key} href=${pathOf(thing)} icon="i-part" label=${t('code.see')} />
    <${Act} href=${`/inspect/${thing.id}`} label=${t('code.scrap.again')} second=${t('code.scrap.second')} /></div>`;
}

/** @param {{found: any}} props */
const Blank = ({
  found,
}) => html`<div class="about"><${Icon} name="i-label" /><span><b>${t('code.blank', { code: codeGroups(found.code) })}</b>${t('code.blank.says')}</span></div>
  <div class="stack"><${Key} href=${`/bind/${found.code}`} icon="i-part" label=${t('code.bind')} />
  <${Act} href=${`/new/${found.code}`} label=${t('code.new')} second=${t('code.new.second')} /></div>`;

/** @param {{found: any, store: any}} props */
function Retired({ found, store }) {
  const reuse = () =>
    keepAll(store, [
      {
        heading: 'label',
        about: found.code,
        body: { marks: null, state: 'free' },
        after: found.after,
      },
    ]);
  return html`<${Panel} icon="i-label" word=${t('code.retired')} says=${t('code.retired.says')} />
    <${Key} label=${t('code.retired.reuse')} onPress=${reuse} />`;
}

/** @param {{found: any, store: any}} props */
function Ask({ found, store }) {
  const choices = found.things.map((/** @type {any} */ thing) => ({
    id: thing.id,
    label: thing.name || t('record.nameless'),
    body: { marks: thing.id },
  }));
  const choose = (/** @type {any} */ choice) =>
    keepAll(store, [
      { heading: 'label', about: found.code, body: choice.body, after: found.after },
    ]);
  return html`<div class="about"><${Icon} name="i-caution" /><span><b>${codeGroups(found.code)}</b></span></div><${AskWhich} says=${t('code.ask')} choices=${choices} onChoose=${choose} />`;
}

/** @param {{found: any}} props */
const Wrong = ({ found }) =>
  html`<${Panel} icon="i-caution" word=${codeGroups(found.code)} says=${t('type.wrong')} />
  <${Act} href="/scan?type=1" label=${t('type.again')} second=${t('scan.type.second')} />`;

/** @type {Record<string, any>} */
const answers = {
  thing: Thing,
  blank: Blank,
  retired: Retired,
  scrapped: Scrapped,
  ask: Ask,
  wrong: Wrong,
};

/**
 * @param {{found: any, store: any}} props what the code view said
 */
export const CodeFound = ({ found, store }) =>
  html`<${answers[found.says] ?? Wrong} found=${found} store=${store} />`;
