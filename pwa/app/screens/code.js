/** The address on a label: opens its record, or says what the label is instead. */
import { useEffect, useLayoutEffect } from 'preact/hooks';
import { code as codeView } from '../../views/code.js';
import { feedback } from '../feedback.js';
import { CodeFound, pathOf } from '../frame/code_found.js';
import { Code, Dock, html, Page, Wait } from '../frame/index.js';
import { useSlice } from '../frame/store.js';
import { t } from '../texts/index.js';

/** @param {{params: {code: string}, store: any, go: (path: string, how?: any) => void}} props */
export function screen({ params, store, go }) {
  const { state, workshop } = useSlice(store, (s) => s.codeSlice(params.code), [params.code]);
  const found = workshop && codeView(workshop, params.code);
  const [thing] = found?.things ?? [];
  const away = found?.says === 'thing' && thing.away.length > 0;
  const open = found?.says === 'thing' && thing.here && !away ? pathOf(thing) : null;
  const loud = away || found?.says === 'scrapped';
  useEffect(() => {
    if (loud) feedback('wrong');
  }, [loud]);
  // Before the paint, so that the record is the first thing to be seen.
  useLayoutEffect(() => {
    if (open) go(open, { replace: true });
  }, [open]);
  const title = t('code.title');
  return html`<${Page} title=${title} back=${{ to: '/scan', says: t('doors.scan') }} ready=${state === 'ready' && !open} className="list">
    <div class="left">${
      found && !open
        ? html`<section class="id"><h1 tabindex="-1">${title}</h1>${found.says !== 'wrong' && html`<div class="about"><${Code} code=${found.code} /></div>`}</section>
    <${Dock}><div class="sheet hit"><${CodeFound} found=${found} store=${store} /></div></${Dock}>`
        : html`<${Wait} />`
    }</div></${Page}>`;
}
