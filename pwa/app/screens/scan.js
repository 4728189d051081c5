/** Scan: what is this? It follows the newest label and opens nothing by itself. */
import { useState } from 'preact/hooks';
import { code as codeView } from '../../views/code.js';
import { feedback } from '../feedback.js';
import { CodeFound } from '../frame/code_found.js';
import { DemoLine, Doors, html, Scanner, say, Top, useArrival } from '../frame/index.js';
import { useAnswer } from '../frame/store.js';
import { codeGroups } from '../frame/told.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';

/** What every read label says. @param {any} store @param {string[]} codes */
const readAll = (store, codes) =>
  Promise.all(codes.map(async (code) => codeView(await store.codeSlice(code), code)));

/** Several labels: the person picks, the one nearest to the middle is first. @param {{read: any[], at: number, onPick: (at: number) => void}} props */
function Pick({ read, at, onPick }) {
  return html`<div class="pick" role="group" aria-label=${t('scan.several')}>${read.map(
    (
      one,
      n,
    ) => html`<${Press} key=${one.code} class="press second-act" aria-pressed=${String(n === at)} onPress=${() => onPick(n)}>
      <span class="n">${n + 1}</span><span>${one.things[0]?.name || t(`code.short.${one.says}`)}</span><span class="fig">${codeGroups(one.code)}</span></${Press}>`,
  )}</div>`;
}

/** @param {{params: Record<string, string>, store: any}} props */
export function screen({ params, store }) {
  const [codes, setCodes] = useState(/** @type {string[]} */ ([]));
  const [at, setAt] = useState(0);
  const { value } = useAnswer(() => readAll(store, codes), [codes.join(' ')]);
  useArrival(t('doors.scan'), true);
  const hear = async (/** @type {string[]} */ read) => {
    setCodes(read);
    setAt(0);
    const [first] = await readAll(store, read.slice(0, 1));
    if (!first) return;
    const away = first.says === 'thing' && first.things.some(({ away: sent }) => sent.length > 0);
    if (away || ['retired', 'scrapped', 'wrong'].includes(first.says)) feedback('wrong');
    say(
      t(`scan.heard.${first.says}`, {
        name: first.things[0]?.name ?? '',
        code: codeGroups(first.code),
      }),
    );
  };
  const one = value?.[at];
  const top = html`<${DemoLine} /><${Top} />`;
  return html`<${Scanner} onCodes=${hear} title=${t('doors.scan')} keys=${Boolean(params.type)} found=${Boolean(one)} top=${top}>
    ${one && html`<div class="sheet hit">${value && value.length > 1 && html`<${Pick} read=${value} at=${at} onPick=${setAt} />`}<${CodeFound} found=${one} store=${store} /></div>`}</${Scanner}>
    <${Doors} now="scan" />`;
}
