/** A gauge study: its plan, the measuring, what it came to, and what was struck out of it. */
import { study as studyView } from '../../views/study.js';
import { feedback } from '../feedback.js';
import { html, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { useKeep } from '../run/keeping.js';
import { ReasonScreen } from '../run/reason.js';
import { Plan } from '../study/form.js';
import { readStudy } from '../study/read.js';
import { Run } from '../study/run.js';
import { atSays, readingSays } from '../study/says.js';
import { Standing } from '../study/standing.js';
import { linesOf } from '../study/table.js';
import { t } from '../texts/index.js';
import '../texts/study.js';

const BACK = { to: '/studies', says: t('form.back') };

/** @param {any} props */
export function screen(props) {
  const { params, store, back } = props;
  const { id } = params;
  const { workshop } = useSlice(store, (one) => readStudy(one, id), [id]);
  if (!workshop)
    return html`<${Page} title=${t('study.title')} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  if (id === 'new')
    return html`<${Plan} key="new" ...${props} id="new" subject=${null} workshop=${workshop} />`;
  const study = studyView(workshop, id);
  if (!study.here) return html`<${Gone} says=${t('study.not-here')} />`;
  if (study.hidden) return html`<${Standing} ...${{ study, store }} back=${BACK} />`;
  if (params.edit)
    return html`<${Plan} key=${id} ...${props} id=${id} subject=${workshop.subject(id)} workshop=${workshop} />`;
  if (params.strike)
    return html`<${Strike} key=${params.strike} ...${props} study=${study} made=${workshop.subject(id).made} />`;
  if (params.run)
    return html`<${Run} ...${{ study, workshop, store }} leave=${() => back(`/study/${id}`)} />`;
  return html`<${Standing} ...${{ study, store }} back=${BACK} />`;
}

/** @param {{says: string}} props */
const Gone = ({ says }) =>
  html`<${Page} title=${t('study.title')} back=${BACK} quiet><div class="left"><h1 tabindex="-1" class="gone">${t('study.title')}</h1><${Missing} says=${says} /></div></${Page}>`;

/** The reading that is to be struck out, if it stands here. @param {any} study @param {string} id */
const readingOf = (study, id) =>
  [
    ...[study.last].filter(Boolean),
    ...study.beside,
    ...study.asks.flatMap((/** @type {any} */ ask) => ask.readings),
    ...linesOf(study),
  ].find((one) => one?.id === id) ?? null;

/** @param {any} study @param {string} id what the reason is asked about */
function whatOf(study, id) {
  const words = (/** @type {string[]} */ list) => list.map((word) => t(`study.reason.${word}`));
  if (id === 'study') {
    const chips = words(['mistake', 'twice', 'instrument']);
    return {
      title: t('study.strike.title'),
      says: t('study.strike.says'),
      label: t('study.strike'),
      chips,
    };
  }
  const reading = readingOf(study, id);
  return (
    reading && {
      title: t('study.trial.title', { reading: readingSays(reading.value) }),
      says: `${atSays(reading)}. ${t('study.trial.says')}`,
      label: t('study.trial.act'),
      chips: words(['slipped', 'typed', 'piece', 'person', 'looked']),
    }
  );
}

/** @param {any} props */
function Strike({ params, store, study, made, back }) {
  const { keep, trouble } = useKeep(store);
  const leave = () => back(`/study/${study.id}`);
  const what = whatOf(study, params.strike);
  if (!what) return html`<${Gone} says=${t('study.trial.gone')} />`;
  const about = params.strike === 'study' ? made : params.strike;
  const strike = async (/** @type {string} */ reason) => {
    if (!(await keep([{ heading: 'strike-out', about, body: { reason } }]))) return false;
    feedback('kept');
    say(t('strike.kept'));
    leave();
    return true;
  };
  return html`<${ReasonScreen} store=${store} name=${`${study.id}:${params.strike}`} ...${what} leave=${leave} keep=${strike} trouble=${trouble} demo=${study.invented} />`;
}
