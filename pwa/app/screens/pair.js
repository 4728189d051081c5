/** Pairing: by the address the computer shows, or by typing its eight digits. */
import { useEffect, useState } from 'preact/hooks';
import { Act, Caution, Dock, html, Icon, Page, say, useStore } from '../frame/index.js';
import { t } from '../texts/index.js';

/** Below this a browser does not mean to keep anything for long. */
const PRIVATE_QUOTA = 400_000_000;

/** @param {string} text */
const digits = (text) => text.replace(/\D/g, '').slice(0, 8);

/** @param {string} text */
const grouped = (text) => (text.length > 4 ? `${text.slice(0, 4)}-${text.slice(4)}` : text);

/** The code and the wish for the demo, as the address brought them. */
function brought() {
  const [code = '', ...wishes] = location.hash.slice(1).split('&');
  return { code: digits(code), demo: wishes.includes('demo') };
}

/** A first name for this device; it can be changed in Devices. */
const usualName = () =>
  t(matchMedia('(pointer: coarse)').matches ? 'pair.name.usual' : 'pair.name.computer');

/** What should be known about where this page keeps its entries. */
function Warnings() {
  const { state } = useStore();
  const kept = state.storage.value;
  const numbers = /^[\d.]+$|^\[/.test(location.hostname) && location.hostname !== '127.0.0.1';
  return html`${numbers && html`<${Caution} word="notice" says=${t('pair.address')} />`}
    ${kept && !kept.persisted && html`<${Caution} word="notice" says=${t(kept.quota < PRIVATE_QUOTA ? 'pair.private' : 'pair.persist')} />`}`;
}

/** Entries that lay ready in the demo wait on this device. @param {any} store */
async function takeDemo(store) {
  const answer = await fetch('/demo/waiting.jsonl');
  if (!answer.ok) return;
  const lines = (await answer.text()).split('\n').filter((line) => line.trim() !== '');
  const entries = lines.map((line) => JSON.parse(line)).map((one) => one.entry ?? one);
  await store.takeIn(entries);
}

/** @param {any} error */
const sentence = (error) => (error.says ? `${error.says} ${error.next ?? ''}` : t('pair.failed'));

/** @param {any} store @param {(path: string, how?: any) => void} go */
function usePairing(store, go) {
  const [stage, setStage] = useState('asking');
  const [trouble, setTrouble] = useState('');
  const [adopted, setAdopted] = useState(0);
  const pair = async (/** @type {string} */ code, /** @type {string} */ name, demo = false) => {
    setStage('going');
    setTrouble('');
    const before = Number(store.state.waiting.peek());
    try {
      await store.pair({ code: grouped(code), name });
      if (demo) await takeDemo(store);
      setAdopted(before);
      setStage('done');
      say(t('pair.done'));
      history.replaceState(history.state, '', '/pair');
      if (demo) go('/tonight', { replace: true });
    } catch (error) {
      setTrouble(sentence(error));
      say(sentence(error));
      setStage('asking');
    }
  };
  return { stage, trouble, adopted, pair };
}

/** A phone goes to the bench, a computer to what can be done. */
const onwards = () =>
  matchMedia('(pointer: coarse)').matches
    ? { href: '/scan', label: t('pair.go'), second: t('pair.go.second') }
    : { href: '/tonight', label: t('pair.desk'), second: t('pair.desk.second') };

/** @param {{adopted: number}} props */
const Done = ({
  adopted,
}) => html`<div class="tell"><p><b>${t('pair.done')}</b></p><p>${t('pair.done.says')} ${t('pair.adopted', { n: adopted })}</p></div><${Warnings} />
  <${Dock}><${Act} ...${onwards()} /></${Dock}>`;

/** @param {{onPair: (code: string, name: string) => Promise<unknown>, trouble: string, going: boolean}} props */
function Ask({ onPair, trouble, going }) {
  const [code, setCode] = useState(brought().code);
  const [name, setName] = useState(usualName());
  const whole = code.length === 8 && name.trim() !== '' && !going;
  return html`<form class="form" onSubmit=${(/** @type {Event} */ event) => {
    event.preventDefault();
    if (whole) onPair(code, name.trim());
  }}><p>${t('pair.says')} <span class="soft">${t('pair.how')}</span></p>
    ${trouble && html`<div class="panel" role="alert"><${Icon} name="i-caution" /><p>${trouble}</p></div>`}
    <label class="field"><span>${t('pair.code')}</span><input class="big" type="text" inputmode="numeric" autocomplete="one-time-code" enterkeyhint="go" value=${grouped(code)} onInput=${(/** @type {any} */ event) => setCode(digits(event.target.value))} /></label>
    <label class="field"><span>${t('pair.name')}</span><input type="text" maxlength="60" autocomplete="off" value=${name} onInput=${(/** @type {any} */ event) => setName(event.target.value)} /></label>
    <${Warnings} /><${Dock}><${Act} label=${t(going ? 'pair.going' : 'pair.act')} second=${t('pair.act.second')} disabled=${!whole} onPress=${() => onPair(code, name.trim())} /></${Dock}></form>`;
}

/** @param {{store: any, go: (path: string, how?: any) => void}} props */
export function screen({ store, go }) {
  const { stage, trouble, adopted, pair } = usePairing(store, go);
  useEffect(() => {
    const { code, demo } = brought();
    if (code.length === 8) pair(code, usualName(), demo);
  }, []);
  const already = stage === 'asking' && store.state.paired.value === 'yes';
  return html`<${Page} title=${t('pair')} now="more" back=${{ to: '/more', says: t('more') }}><div class="left"><section class="hello"><h1 tabindex="-1">${t(stage === 'done' ? 'pair.done' : 'pair')}</h1></section>
    ${already && html`<p class="tell"><b>${t('pair.already')}</b> ${t('pair.already.says')}</p>`}
    ${stage === 'done' ? html`<${Done} adopted=${adopted} />` : html`<${Ask} onPair=${pair} trouble=${trouble} going=${stage === 'going'} />`}</div></${Page}>`;
}
