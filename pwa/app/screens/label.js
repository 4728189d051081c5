/** The labels of a part or holder: add one, retire a spoilt one, free one, print one again. */
import { useState } from 'preact/hooks';
import { code as codeView } from '../../views/code.js';
import { pathOf } from '../frame/code_found.js';
import {
  Act,
  Code,
  codeGroups,
  DemoLine,
  Dock,
  Empty,
  html,
  Key,
  Page,
  Scanner,
  say,
  Top,
  useAnswer,
  useArrival,
  Wait,
} from '../frame/index.js';
import { useSlice } from '../frame/store.js';
import { keepAll } from '../keeping.js';
import { t } from '../texts/index.js';

/** The thing, whatever it is, with its codes. @param {any} workshop @param {string} id */
function thingOf(workshop, id) {
  const subject = workshop.subject(id);
  const codes = workshop
    .linked(id, 'label')
    .concat(workshop.linked(id, 'marks'))
    .map((/** @type {any} */ label) => label.id);
  return {
    id,
    heading: subject?.heading ?? 'part',
    name: subject?.fields?.name?.value ?? t('record.nameless'),
    codes: [...new Set(codes)],
  };
}

/** The label facts that stand, which a new one is to name. @param {any} store @param {string} code */
async function saidOf(store, code) {
  return codeView(await store.codeSlice(code), code);
}

/** @param {{code: string, store: any}} props */
function Label({ code, store }) {
  const change = (/** @type {string} */ state, /** @type {string} */ words) => async () => {
    const { after } = await saidOf(store, code);
    await keepAll(
      store,
      [{ heading: 'label', about: code, body: { marks: null, state }, after }],
      words,
    );
  };
  const spoken = (/** @type {string} */ key) => t(key, { code: [...code].join(' ') });
  return html`<li><${Code} code=${code} /><div class="chips also">
    <${Key} className="press" label=${t('label.retire')} spoken=${spoken('label.retire.spoken')} onPress=${change('retired', t('label.retired'))} />
    <${Key} className="press" label=${t('label.free')} spoken=${spoken('label.free.spoken')} onPress=${change('free', t('label.freed'))} />
    <${Key} className="press" href=${`/labels?code=${code}`} label=${t('label.reprint')} spoken=${spoken('label.reprint.spoken')} /></div></li>`;
}

/** @param {{found: any, thing: any, onGive: () => Promise<unknown>}} props */
function Give({ found, thing, onGive }) {
  if (found.says === 'blank') {
    return html`<div class="sheet hit"><div class="about"><span></span><span><b>${t('code.blank', { code: codeGroups(found.code) })}</b></span></div><${Act} label=${t('label.give', { name: thing.name })} second=${codeGroups(found.code)} onPress=${onGive} /></div>`;
  }
  const mine = found.things.some((/** @type {any} */ one) => one.id === thing.id);
  const says = mine
    ? t('label.already')
    : found.says === 'thing'
      ? t('label.taken', { name: found.things[0].name })
      : t(`code.short.${found.says}`);
  return html`<div class="sheet hit"><p class="tell">${says}</p></div>`;
}

/** @param {{thing: any, store: any, onDone: () => void}} props */
function Adding({ thing, store, onDone }) {
  const [code, setCode] = useState('');
  const { value: found } = useAnswer(
    () => (code ? saidOf(store, code) : Promise.resolve(null)),
    [code],
  );
  const title = t('label.adding', { name: thing.name });
  useArrival(title, true);
  const give = async () => {
    if (!found) return false;
    const kept = await keepAll(
      store,
      [
        {
          heading: 'label',
          about: code,
          body: { marks: thing.id },
          ...(found.after.length ? { after: found.after } : {}),
        },
      ],
      t('label.added'),
    );
    if (kept !== false) onDone();
    return kept;
  };
  const top = html`<${DemoLine} /><${Top}><${Key} className="press" icon="i-back" label=${thing.name} onPress=${onDone} /></${Top}>`;
  return html`<${Scanner} title=${title} hint=${title} found=${Boolean(found)} top=${top} onCodes=${(
    /** @type {string[]} */ codes,
  ) => {
    setCode(codes[0] ?? '');
    say(t('scan.read', { code: codes[0] }));
  }}>${found && html`<${Give} found=${found} thing=${thing} onGive=${give} />`}</${Scanner}>`;
}

/** @param {{params: {id: string}, store: any}} props */
export function screen({ params, store }) {
  const [adding, setAdding] = useState(false);
  const { state, workshop } = useSlice(store, (s) => s.partSlice(params.id), [params.id]);
  const thing = workshop && thingOf(workshop, params.id);
  if (thing && adding)
    return html`<div class="quiet"><${Adding} thing=${thing} store=${store} onDone=${() => setAdding(false)} /></div>`;
  const title = thing ? t('label.of', { name: thing.name }) : t('label.title');
  return html`<${Page} title=${title} back=${{ to: thing ? pathOf(thing) : '/find', says: t('back') }} ready=${state === 'ready'}><div class="left">${thing ? html`<section class="id"><h1 tabindex="-1">${title}</h1></section>` : html`<${Wait} />`}${thing?.codes.length === 0 && html`<${Empty} icon="i-label" says=${t('label.none')} then=${t('label.none.then')} />`}
    ${thing && thing.codes.length > 0 && html`<ul class="sheet notes">${thing.codes.map((/** @type {string} */ code) => html`<${Label} key=${code} code=${code} store=${store} />`)}</ul>`}
    ${thing && html`<${Dock}><${Act} label=${t('label.add')} second=${t('label.add.second')} onPress=${() => setAdding(true)} /></${Dock}>`}</div></${Page}>`;
}
