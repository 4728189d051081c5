/** What stands about a part or holder now. */
import { day } from '../dates.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';
import { html } from './html.js';
import { StrikeLink } from './inspections.js';
import { madeSays } from './maker.js';

/** Where something lies, as a name and the rest. @param {any} place */
export function placeWords(place) {
  const chain = place.chain.map((/** @type {any} */ one) => one.name);
  const name = place.gone || place.name || place.where || t('place.unknown');
  const rest = [place.gone || !place.name ? '' : place.where, ...chain].filter(
    (word) => word && word !== name,
  );
  return { name, rest: rest.join(', ') };
}

/** One line of what is so. @param {{says: string, name: any, rest?: any}} props */
export const Fact = ({ says, name, rest }) =>
  html`<div><dt>${says}</dt><dd><b>${typeof name === 'string' ? capital(name) : name}</b>${' '}${rest && html`<span class="soft">${rest}</span>`}</dd></div>`;

/** The word before a place: it lies in a bag; words as "at X" or "back from X" stand by themselves. @param {any} place */
const placeSays = (place) => t(place.name && !place.gone ? 'fact.lies' : 'fact.where');

/** Rows for every place that stands. @param {{lies: any[]}} props */
export function Places({ lies }) {
  return html`${lies.map((place) => html`<${Fact} key=${place.id} says=${placeSays(place)} ...${placeWords(place)} />`)}`;
}

/** When a part that is out is to be back, if that was said. @param {{due: string | null}} sent */
export const dueSays = ({ due }) => (due ? t('code.away.due', { day: day(due) || due }) : '');

/** Where it was sent to be worked on. @param {{away: any[]}} props */
export function Away({ away }) {
  return html`${away.map((one) => {
    const since = t('fact.away.since', { day: day(one.made) });
    const rest = [one.for, since, dueSays(one)].filter(Boolean);
    return html`<${Fact} key=${one.id} says=${t('fact.away')} name=${one.to} rest=${rest.join(', ')} />`;
  })}`;
}

/** @param {any} part */
function standing(part) {
  const verdicts = (part.verdict?.standing ?? []).map((/** @type {any} */ one) => ({
    id: one.id,
    made: one,
    what: [t('stands.verdict', { verdict: t(`verdict.${one.verdict}`) }), one.reason]
      .filter(Boolean)
      .join(', '),
  }));
  const places = part.lies.map((/** @type {any} */ one) => ({
    id: one.id,
    made: one,
    what: t('stands.place', { place: placeWords(one).name }),
  }));
  const fitted = (part.fitted ?? []).map((/** @type {any} */ one) => ({
    id: one.id,
    made: one,
    what: one.build ? t('stands.fitted', { place: one.place || one.name }) : t('stands.off'),
  }));
  const sent = (part.away ?? []).map((/** @type {any} */ one) => ({
    id: one.id,
    made: one,
    what: t('stands.sent', { to: one.to }),
  }));
  return [...verdicts, ...places, ...fitted, ...sent];
}

/** Each fact that stands now, with the way to strike it out. @param {{of: any}} props */
export function Standing({ of }) {
  const facts = standing(of);
  if (facts.length === 0) return null;
  return html`<div class="sect"><h2>${t('stands')}</h2></div><ul class="sheet notes">${facts.map(
    (fact) =>
      html`<li key=${fact.id}><p>${fact.what} <span class="soft">${madeSays(fact.made)}</span></p><${StrikeLink} entry=${fact.id} about=${of.id} what=${fact.what} /></li>`,
  )}</ul>`;
}
