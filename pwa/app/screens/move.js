/** Moving a part or a holder: scan the bin it goes to, or choose it, or say where it went. */

import { useEffect, useState } from 'preact/hooks';
import { standing, value } from '../../log/workshop.js';
import { code as codeView } from '../../views/code.js';
import { feedback } from '../feedback.js';
import { TextField } from '../forms_fields.js';
import {
  Act,
  DemoLine,
  Dock,
  html,
  Icon,
  Key,
  Page,
  Scanner,
  say,
  Top,
  useSlice,
  Wait,
} from '../frame/index.js';
import { PartFinder } from '../joint_form/parts.js';
import { useKeep } from '../run/keeping.js';
import { t } from '../texts/index.js';

const GONE = ['shop', 'lent', 'thrown'];

/** @param {any} props */
export function screen({ params, store, back }) {
  const { workshop } = useSlice(store, readOf(params.id), [params.id]);
  const [rows, setRows] = useState(/** @type {any[]} */ ([]));
  const [way, setWay] = useState('scan');
  const { keep, trouble } = useKeep(store);
  useEffect(() => {
    Promise.resolve(store.findRows()).then(setRows);
  }, []);
  if (!workshop)
    return html`<${Page} title=${t('move.scan')} quiet ready=${false}><div class="left"><${Wait} /></div></${Page}>`;
  const subject = workshop.subject(params.id);
  const name = value(subject, 'name') ?? '';
  const home = `/${subject?.heading ?? 'part'}/${params.id}`;
  const put = async (/** @type {any} */ body, /** @type {string} */ place) => {
    const after = standing(subject, 'place').map((fact) => fact.id);
    if (!(await keep([{ heading: 'place', about: params.id, after, body }]))) return false;
    feedback('kept');
    say(t(body.gone ? 'move.kept.gone' : 'move.kept', { name, place }));
    back(home);
    return true;
  };
  const facts = {
    store,
    name,
    id: params.id,
    put,
    rows,
    home,
    way: setWay,
    lies: liesIn(workshop, subject),
  };
  return html`${way === 'scan' ? html`<${ByScan} ...${facts} />` : html`<${ByHand} ...${facts} />`}${trouble}`;
}

/** @param {string} id @returns {(store: any) => Promise<any>} */
const readOf = (id) => async (store) => {
  const held = await store.holderSlice(id);
  return held.subject(id)?.heading === 'holder' ? held : store.partSlice(id);
};

/** @param {any} workshop @param {any} subject */
function liesIn(workshop, subject) {
  const body = standing(subject, 'place')[0]?.body ?? {};
  const inside = value(workshop.subject(body.in ?? ''), 'name');
  if (inside) return t('move.now', { place: inside });
  const place = body.gone ?? body.where;
  return place ? t('move.now.gone', { place }) : t('move.nowhere');
}

/** @param {any} props */
function ByScan({ store, name, id, put, way, lies, home }) {
  const [found, setFound] = useState(/** @type {any} */ (null));
  const hear = async (/** @type {string[]} */ codes) => {
    const [code = ''] = codes;
    const one = codeView(await store.codeSlice(code), code);
    const wrong = troubleOf(one, id);
    feedback(wrong ? 'wrong' : 'read');
    say(wrong || (one.things[0]?.name ?? ''));
    setFound({ ...one, wrong });
  };
  const bin = found && !found.wrong ? found.things[0] : null;
  const top = html`<${DemoLine} /><${Top} back=${{ to: home, says: t('form.back') }} />`;
  return html`<${Scanner} onCodes=${hear} title=${t('move.title', { name })} hint=${t('move.scan')} found=${Boolean(bin)} top=${top}>
    <div class="sheet hit"><div class="about"><${Icon} name="i-move" /><span><b>${t('move.title', { name })}</b>${lies}</span></div>
      ${found?.wrong && html`<p class="tell" role="status">${found.wrong}</p>`}
      <${Key} label=${t('move.choose')} onPress=${() => way('hand')} />
      ${bin && html`<${Act} confirm onPress=${() => put({ in: bin.id }, bin.name)} label=${t('move.put', { name: bin.name })} />`}</div></${Scanner}>`;
}

/** @param {any} found @param {string} id why it is no place to put it, or nothing */
function troubleOf(found, id) {
  const [thing] = found.things;
  if (!thing) return t('move.blank');
  if (thing.id === id) return t('move.itself');
  return thing.heading === 'holder' ? '' : t('move.no-holder', { name: thing.name });
}

/** @param {any} props */
function ByHand({ name, id, put, rows, way, lies, home }) {
  const [holder, setHolder] = useState('');
  const [gone, setGone] = useState('');
  const [where, setWhere] = useState('');
  const picked = rows.find((/** @type {any} */ row) => row.id === holder) ?? null;
  const words = where.trim() ? { where: where.trim() } : {};
  const act = () =>
    picked ? put({ in: picked.id, ...words }, picked.name) : put({ in: null, gone }, gone);
  const label = picked
    ? t('move.put', { name: picked.name })
    : gone
      ? t('move.gone.act', { where: gone })
      : t('bind.none');
  return html`<${Page} title=${t('move.title', { name })} back=${{ to: home, says: t('form.back') }} quiet><div class="left form">
    <h1 tabindex="-1">${t('move.title', { name })}</h1><p class="soft">${lies}</p>
    <${PartFinder} id="holder" label=${t('move.find')} rows=${rows} has=${[holder, id]} heading="holder" pick=${(
      /** @type {string} */ one,
    ) => {
      setHolder(one);
      setGone('');
    }} />
    ${picked && html`<${TextField} id="where" label=${t('move.where')} value=${where} hint=${t('form.optional')} onChange=${setWhere} />`}
    <fieldset><legend>${t('move.gone')}</legend><div class="chips">${GONE.map((word) =>
      t(`move.gone.${word}`),
    ).map(
      (words_) =>
        html`<${Key} key=${words_} className="press" label=${words_} pressed=${gone === words_} onPress=${() => {
          setGone(words_);
          setHolder('');
        }} />`,
    )}</div></fieldset>
    <${Key} icon="i-scan" label=${t('move.scan')} onPress=${() => way('scan')} />
    <${Dock}><${Act} confirm disabled=${!picked && !gone} onPress=${act} label=${label} /></${Dock}></div></${Page}>`;
}
