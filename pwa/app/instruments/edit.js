/** A wrench or an instrument, new or changed; or its calibration alone. */
import { code as codeView } from '../../views/code.js';
import { lost } from '../../views/things.js';
import { today } from '../dates.js';
import { useDraft } from '../draft.js';
import { feedback } from '../feedback.js';
import { Before } from '../frame/before.js';
import { Act, Code, Dock, html, Icon, Missing, Page, say, useSlice, Wait } from '../frame/index.js';
import { freshId } from '../fresh_id.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';
import { Certificate, Days, InstrumentFields, Rest, WrenchFields } from './fields.js';
import { changeOf, changes, FIELDS, held, shownOf } from './form.js';
import { sortSays, troubleSays } from './says.js';

/** @typedef {Record<string, string>} Draft */

/** @type {Draft} */
const NOTHING = Object.freeze({});
const BACK = { to: '/wrenches', says: t('form.back') };

/**
 * @param {any} props the screen's, and `heading` of a new one, `certificate` where only the calibration is written
 */
export function ToolForm({ params, store, go, back, heading, certificate = false }) {
  const { id = 'new', code = '' } = params;
  const tool = useSlice(store, (s) => s.partSlice(id), [id]).workshop;
  const label = useSlice(store, (s) => s.codeSlice(code), [code]).workshop;
  if (!tool || !label)
    return html`<${Page} title=${t('tool.list')} back=${BACK} ready=${false} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const subject = id === 'new' ? null : tool.subject(id);
  const word = id === 'new' ? heading : subject?.heading;
  const found = code ? codeView(label, code) : null;
  if (!FIELDS[word] || subject?.hidden) return html`<${NotHere} />`;
  return html`<${Form} key=${id} ...${{ heading: word, subject, store, go, back, found, certificate }} />`;
}

const NotHere =
  () => html`<${Page} title=${t('here')} back=${BACK}><div class="left"><h1 tabindex="-1" class="gone">${t('here')}</h1>
  <${Missing} says=${t('tool.here')} /></div></${Page}>`;

/** @param {string} heading @param {any} subject @param {boolean} certificate */
function titleOf(heading, subject, certificate) {
  if (!subject) return t(`tool.new.${heading}`);
  return t(certificate ? 'cal.title' : `tool.edit.${heading}`);
}

/** What stands written now; a new certificate is mostly of today. @param {any} props */
function useFields({ heading, subject, store, certificate }) {
  const name = `${certificate ? 'calibrate' : heading}:${subject?.id ?? 'new'}`;
  const [draft, change, forget] = useDraft(store, name, NOTHING);
  /** @type {Draft} */
  const start = certificate ? { calibrated: today(), due: '' } : {};
  const shown = draft && shownOf(heading, subject, { ...start, ...draft });
  const set = (/** @type {string} */ field) => (/** @type {string} */ to) =>
    change({ ...named(heading, shown ?? NOTHING, field, to), ...changeOf(heading, field, to) });
  return { shown, set, forget };
}

/** A new instrument is called what its sort is called until it is named. @param {string} heading @param {Draft} shown @param {string} field @param {string} to @returns {Draft} */
function named(heading, shown, field, to) {
  if (heading !== 'instrument' || field !== 'sort') return {};
  const plain = ['', sortSays({ heading, sort: shown.sort })];
  return plain.includes((shown.name ?? '').trim()) ? { name: sortSays({ heading, sort: to }) } : {};
}

/** The label it is made for; one that marks something else meanwhile stays there. @param {{found: any}} props */
const ForLabel = ({ found }) => html`<div class="about"><${Code} code=${found.code} /></div>
  ${found.says !== 'blank' && html`<p class="wrong"><${Icon} name="i-caution" />${found.things[0] ? t('new.taken', { name: found.things[0].name ?? '' }) : t('new.retired')}</p>`}`;

/** @param {any} found a label to give it, or null @param {string} id */
const labelled = (found, id) =>
  found?.says === 'blank'
    ? [{ heading: 'label', about: found.code, after: found.after, body: { marks: id } }]
    : [];

/** @param {any} props */
function Form(props) {
  const { heading, subject, store, go, back, found, certificate } = props;
  const { shown, set, forget } = useFields(props);
  const { keep, trouble } = useKeep(store);
  const title = titleOf(heading, subject, certificate);
  const home = subject ? `/${heading}/${subject.id}` : '/wrenches';
  if (!shown)
    return html`<${Page} title=${title} back=${{ ...BACK, to: home }} quiet><div class="left"><${Wait} /></div></${Page}>`;
  const fields = changes(heading, subject, shown);
  const wrong = held(heading, shown, today());
  const act = async () => {
    const id = subject?.id ?? freshId();
    if (!(await keep([{ heading, about: id, body: { fields } }, ...labelled(found, id)])))
      return false;
    await forget();
    feedback('kept');
    say(t('form.kept', { name: shown.name }));
    if (subject) back(home);
    else go(`/${heading}/${id}`, { replace: true });
    return true;
  };
  const why = whyNot(shown, wrong, fields, subject);
  const Fields = heading === 'wrench' ? WrenchFields : InstrumentFields;
  return html`<${Page} title=${title} back=${{ ...BACK, to: home }} quiet><div class="left form">
    <div class="id"><h1 tabindex="-1">${title}</h1>${certificate && html`<p class="where">${shown.name}</p>`}${found && html`<${ForLabel} found=${found} />`}</div>
    ${certificate ? html`<${Certificate} ...${{ heading, shown, set }} />` : html`<${Fields} ...${{ shown, set }} /><${Days} ...${{ shown, set }} /><${Rest} ...${{ shown, set }} />`}
    ${wrong.length > 1 && wrong.map((code) => html`<p key=${code} class="wrong"><${Icon} name="i-caution" />${troubleSays(code, shown)}</p>`)}
    ${subject && !certificate && html`<${Before} heading=${heading} lost=${lost(subject)} />`}
    <${Dock}><${Act} confirm disabled=${why !== undefined} onPress=${act} label=${t('form.keep')} second=${why} /></${Dock}>
  </div>${trouble}</${Page}>`;
}

/** Why it cannot be kept yet. @param {Draft} shown @param {string[]} wrong @param {any} fields @param {any} subject */
function whyNot(shown, wrong, fields, subject) {
  if (!shown.name?.trim()) return t('form.wants-name');
  if (wrong[0]) return troubleSays(wrong[0], shown);
  return subject && Object.keys(fields).length === 0 ? t('edit.nothing') : undefined;
}
