/** A set: how it stands, or the choice of a new one; struck out, its pieces are free again. */
import { chosen } from '../../views/chosen.js';
import { feedback } from '../feedback.js';
import { html, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { useKeep } from '../run/keeping.js';
import { ReasonScreen } from '../run/reason.js';
import { undone } from '../sets/accept.js';
import { Choose } from '../sets/choose.js';
import { chosenFrom, readChoice, readSet } from '../sets/read.js';
import { warm } from '../sets/ready.js';
import { Standing } from '../sets/standing.js';
import { t } from '../texts/index.js';
import '../texts/sets.js';

export const BACK = { to: '/sets', says: t('form.back') };

/** @param {any} props */
export function screen(props) {
  const { params, store } = props;
  const { workshop } = useSlice(
    store,
    (one) => (params.id === 'new' ? readChoice(one, params.kind ?? '') : readSet(one, params.id)),
    [params.id, params.kind],
    (one) => (params.id === 'new' ? chosenFrom(one, params.kind ?? '') : null),
  );
  warm();
  if (!workshop)
    return html`<${Page} title=${t('set.title')} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  if (params.id === 'new') return html`<${New} ...${props} workshop=${workshop} />`;
  const set = chosen(workshop, params.id);
  if (!set.here) return html`<${Gone} says=${t('set.not-here')} />`;
  if (params.strike && !set.hidden) return html`<${Strike} ...${props} ...${{ workshop, set }} />`;
  return html`<${Standing} set=${set} back=${BACK} />`;
}

/** @param {{says: string}} props */
const Gone = ({ says }) =>
  html`<${Page} title=${t('set.title')} back=${BACK} quiet><div class="left"><h1 tabindex="-1" class="gone">${t('set.title')}</h1><${Missing} says=${says} /></div></${Page}>`;

/** @param {any} props */
function New({ params, store, go, workshop }) {
  const kind = workshop.subject(params.kind ?? '');
  if (kind?.heading !== 'kind') return html`<${Gone} says=${t('set.no-kind')} />`;
  return html`<${Choose} key=${kind.id} ...${{ store, go, workshop, kind: kind.id, back: BACK }} />`;
}

/** @param {any} props */
function Strike({ store, workshop, set, back }) {
  const { keep, trouble } = useKeep(store);
  const leave = () => back(`/set/${set.id}`);
  const strike = async (/** @type {string} */ reason) => {
    if (!(await keep(undone(workshop, set.id, reason)))) return false;
    feedback('kept');
    say(t('strike.kept'));
    back(`/set/${set.id}`);
    return true;
  };
  return html`<${ReasonScreen} store=${store} name=${set.id} title=${t('set.strike.title')} says=${t('set.strike.says')}
    chips=${['mistake', 'better', 'gone'].map((word) => t(`set.reason.${word}`))} label=${t('set.strike')}
    leave=${leave} keep=${strike} trouble=${trouble} />`;
}
