/** Label sheets: the wish goes to the computer, which draws the PDF. */
import { useState } from 'preact/hooks';
import { asked } from '../asking.js';
import { Act, Dock, Empty, html, Key, Page, say, useAnswer, Wait } from '../frame/index.js';
import { LabelForm } from '../frame/label_form.js';
import { addressOf, saveFile } from '../frame/save_file.js';
import { codeGroups } from '../frame/told.js';
import { t } from '../texts/index.js';

/** How many codes are named on the screen; the rest are on the sheet. */
const NAMED = 12;

/** @typedef {{codes: string[], pdf: Blob}} Made */

/** @param {{made: Made, onAgain: () => void}} props */
function Ready({ made, onAgain }) {
  const { codes, pdf } = made;
  const named = codes.slice(0, NAMED).map(codeGroups).join(', ');
  return html`<div class="left"><section class="hello"><h1 tabindex="-1">${t('labels')}</h1></section>
    <div class="tell"><p><b>${codes.length > 0 ? t('labels.done', { n: codes.length }) : t('labels.test')}</b></p><p>${t('labels.says')}</p></div>
    <p class="soft">${named}${codes.length > NAMED ? ' …' : ''}</p>
    <div class="also stack"><${Key} icon="i-file" label=${t('labels.save')} onPress=${() => saveFile(pdf, `labels-${codes[0] ?? 'test'}.pdf`)} />
    <${Key} icon="i-print" label=${t('labels.more')} onPress=${onAgain} /></div>
    <${Dock}><${Act} label=${t('labels.open')} second=${t('labels.open.second')} onPress=${() => window.open(addressOf(pdf), '_blank')} /></${Dock}></div>`;
}

/** A ready grid by its id, an own one by its measures. @param {any} layout @returns {Record<string, string>} */
const gridOf = (layout) =>
  typeof layout === 'string'
    ? { layout }
    : Object.fromEntries(Object.entries(layout).map(([name, mm]) => [name, String(mm)]));

/** @param {any} store @param {(made: Made | null) => void} onMade */
function useMaking(store, onMade) {
  const [busy, setBusy] = useState(false);
  const [trouble, setTrouble] = useState('');
  const attempt =
    (/** @type {(wish: any) => Promise<Made>} */ draw) => async (/** @type {any} */ wish) => {
      setBusy(true);
      setTrouble('');
      try {
        const made = await draw(wish);
        onMade(made);
        say(made.codes.length > 0 ? t('labels.done', { n: made.codes.length }) : t('labels.test'));
      } catch (error) {
        const { says, next } = /** @type {any} */ (error);
        setTrouble([says ?? t('labels.refused'), next].filter(Boolean).join(' '));
      } finally {
        setBusy(false);
      }
    };
  const make = attempt(async (wish) => {
    const sheet = await asked(store, 'POST', '/sheets', wish);
    return { codes: sheet.codes, pdf: await asked(store, 'GET', `/sheets/${sheet.id}.pdf`) };
  });
  const test = attempt(async (layout) => ({
    codes: [],
    pdf: await asked(store, 'GET', `/sheets/test.pdf?${new URLSearchParams(gridOf(layout))}`),
  }));
  return { busy, trouble, make, test };
}

/** @param {{onAgain: () => void, fault: any}} props */
const Offline = ({
  onAgain,
  fault,
}) => html`<div class="left"><section class="hello"><h1 tabindex="-1">${t('labels')}</h1></section>
  <${Empty} icon="i-apart" says=${fault.code === 'not-connected' || !fault.says ? t('labels.offline') : fault.says} then=${fault.next ?? t('labels.offline.then')} />
  <${Dock}><${Act} label=${t('devices.again')} onPress=${onAgain} /></${Dock}></div>`;

/** @param {{presets: any[], params: {code?: string}, store: any}} props */
function Sheets({ presets, params, store }) {
  const [made, setMade] = useState(/** @type {Made | null} */ (null));
  const { busy, trouble, make, test } = useMaking(store, setMade);
  if (made) return html`<${Ready} made=${made} onAgain=${() => setMade(null)} />`;
  return html`<${LabelForm} presets=${presets} code=${params.code ?? ''} busy=${busy} onMake=${make} onTest=${test} />
    ${trouble && html`<p class="tell" role="alert">${trouble}</p>`}`;
}

/** @param {{params: {code?: string}, store: any}} props */
export function screen({ params, store }) {
  const [turn, setTurn] = useState(0);
  const ask = () => asked(store, 'GET', '/sheets/presets').catch((fault) => ({ fault }));
  const { value } = useAnswer(ask, [turn]);
  const back = { to: '/more', says: t('more') };
  return html`<${Page} title=${t('labels')} now="more" back=${back} ready=${Boolean(value)}>
    ${!value && html`<div class="left"><${Wait} /></div>`}
    ${value?.fault && html`<${Offline} fault=${value.fault} onAgain=${() => setTurn(turn + 1)} />`}
    ${value?.presets && html`<${Sheets} presets=${value.presets} params=${params} store=${store} />`}</${Page}>`;
}
