/** Where two devices said different things: both are shown, the person says which one is so. */
import { when } from '../dates.js';
import { keepAll } from '../keeping.js';
import { t } from '../texts/index.js';
import { Key } from './act.js';
import { placeWords } from './facts.js';
import { html } from './html.js';
import { codeGroups } from './told.js';

/**
 * @param {{says: string, choices: {id: string, label: string, body: any}[], onChoose: (choice: any) => unknown}} props
 */
export function AskWhich({ says, choices, onChoose }) {
  return html`<section class="tell tell-two" role="group" aria-label=${says}><p>${says}</p><div class="stack">
    ${choices.map((choice) => html`<${Key} key=${choice.id} label=${choice.label} onPress=${() => onChoose(choice)} />`)}</div></section>`;
}

/** What a body keeps of a fact: only what it has. @param {Record<string, any>} fields */
const having = (fields) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== null && value !== ''));

/** @type {Record<string, {what: (one: any) => string, body: (one: any) => any}>} */
const kinds = {
  verdict: {
    what: (one) => t(`verdict.${one.verdict}`),
    body: (one) => having({ verdict: one.verdict, reason: one.reason }),
  },
  place: {
    what: (one) => placeWords(one).name,
    body: (one) => ({ in: one.holder, ...having({ where: one.where, gone: one.gone }) }),
  },
  fitted: {
    what: (one) => one.place || one.name || t('fact.build'),
    body: (one) => ({ build: one.build, ...having({ place: one.place }) }),
  },
};

/** @param {{heading: string, says: string, facts: any[], of: any, store: any}} props */
function Ask({ heading, says, facts, of, store }) {
  const kind = /** @type {{what: (one: any) => string, body: (one: any) => any}} */ (
    kinds[heading]
  );
  const choices = facts.map((one) => ({
    id: one.id,
    label: t('ask.option', { what: kind.what(one), when: when(one.made) }),
    body: kind.body(one),
  }));
  const choose = (/** @type {any} */ choice) =>
    keepAll(store, [{ heading, about: of.id, body: choice.body, after: of.after[heading] }]);
  return html`<${AskWhich} says=${says} choices=${choices} onChoose=${choose} />`;
}

/**
 * Every question about a part or holder.
 * @param {{of: any, store: any}} props
 */
export function Asks({ of, store }) {
  const { verdict, lies, lies_ask: two, fitted, fitted_ask: both, codes_ask: codes } = of;
  const place = t(of.heading === 'holder' ? 'ask.place.holder' : 'ask.place');
  return html`${verdict?.ask && html`<${Ask} heading="verdict" says=${t('ask.verdict')} facts=${verdict.standing} of=${of} store=${store} />`}
    ${two && html`<${Ask} heading="place" says=${place} facts=${lies} of=${of} store=${store} />`}
    ${both && html`<${Ask} heading="fitted" says=${t('ask.fitted')} facts=${fitted} of=${of} store=${store} />`}
    ${(codes ?? []).map((/** @type {any} */ one) => html`<div key=${one.code} class="tell tell-two"><p>${t('ask.code', { code: codeGroups(one.code) })}</p><${Key} href=${`/L/${one.code}`} icon="i-label" label=${t('ask.code.look')} /></div>`)}`;
}
