/** Another fastener: number keys in rows of four, each with its state. */

import { useState } from 'preact/hooks';
import { Act, html, Icon, Key, Wait } from '../frame/index.js';
import { Press } from '../press.js';
import { namedFirst, passSays } from '../run/figures.js';
import { marked, RunFrame, RunTitle } from '../run/frame.js';
import { useRun } from '../run/use_run.js';
import { t } from '../texts/index.js';

/** @type {Record<string, string>} */
const MARKS = {
  done: 'm-done',
  flagged: 'i-caution',
  doubt: 'i-caution',
  out: 'i-strike',
  void: 'i-strike',
};

/** @param {{params: Record<string, any>, store: any, go: (path: string, how?: any) => void, back: (to?: string) => void}} props */
export function screen({ params, store, go, back }) {
  const run = useRun(store, params.id, { go, back });
  const [picked, setPicked] = useState(/** @type {string | null} */ (null));
  if (!run.known || !run.bench) return html`<main class="run narrow"><${Wait} /></main>`;
  const { view } = run.known;
  const home = `/joint/${params.id}`;
  const fasteners = marked(view, null);
  const one = fasteners.find((/** @type {any} */ f) => f.id === picked) ?? null;
  const act = async () => {
    await run.choose?.(one.id);
    back(home);
  };
  const title = t('choose.title', { noun: view.noun ?? t('noun.one') });
  return html`<${RunFrame} title=${title} demo=${view.invented} leave=${() => back(home)} says=${t('reading.back')} className="narrow">
    <${RunTitle} name=${title} right=${passSays(view, view.pass)} />
    <div class="numbers" role="group" aria-label=${title}>${[...fasteners]
      .sort((a, b) => a.number - b.number)
      .map(
        (
          f,
        ) => html`<${Press} key=${f.id} class="press" aria-pressed=${String(f.id === picked)} onPress=${() => setPicked(f.id)}
        aria-label=${t('choose.key', { noun: namedFirst(view, f.number).split(' ')[0], number: f.number, state: t(`draw.mark.${f.mark}`) })}>
        <span class="fig">${f.number}</span>${MARKS[f.mark] && html`<${Icon} name=${MARKS[f.mark]} />`}</${Press}>`,
      )}</div>
    <section class="asked">${one && html`<p role="status">${saysOf(view, one)}</p>`}
      ${
        one?.live.length > 0 &&
        html`<${Key} label=${t('choose.loosen', { number: one.number })}
        href=${`/joint/${view.id}/strike/${one.id}?how=loosen`} />`
      }</section>
    <${Act} confirm disabled=${!one || isDone(one) || view.turned.includes(one.id)} onPress=${act} label=${one ? t('choose.act', { number: one.number }) : t('choose.none')} />
  </${RunFrame}>`;
}

/** @param {any} fastener */
const isDone = (fastener) => fastener.mark === 'done' || fastener.mark === 'flagged';

/** @param {any} view @param {any} one */
function saysOf(view, one) {
  if (view.turned.includes(one.id)) return t('run.turned.warning');
  if (isDone(one)) return t('choose.done', { number: one.number });
  const ordered = view.next?.target && view.next.fastener !== one.id;
  return ordered ? t('choose.order', { next: view.next.number }) : (one.note ?? '');
}
