/** The blank label of a part: the camera, a wedge reader or the keypad; or none. */

import { useEffect, useState } from 'preact/hooks';
import { readWedge } from '../../scan/index.js';
import { code as codeView } from '../../views/code.js';
import { feedback } from '../feedback.js';
import { DemoLine, html, Key, Scanner, say } from '../frame/index.js';
import { t } from '../texts/index.js';

/**
 * What a read label is good for here.
 * @param {any} store
 * @param {string} code
 * @returns {Promise<{code: string, after: string[], wrong: string}>}
 */
async function look(store, code) {
  const found = codeView(await store.codeSlice(code), code);
  const [thing] = found.things;
  const blank = found.says === 'blank';
  const other = thing ? t('strip.label.taken', { name: thing.name ?? '' }) : t('strip.label.other');
  return { code: found.code, after: found.after, wrong: blank ? '' : other };
}

/** Takes a blank label, says why another one will not do. @param {any} store @param {(label: any) => void} take */
export function useBlank(store, take) {
  const [wrong, setWrong] = useState('');
  const hear = async (/** @type {string} */ code, scan = false) => {
    const label = await look(store, code);
    feedback(label.wrong ? 'wrong' : 'read');
    setWrong(label.wrong);
    say(label.wrong || t('strip.label.is', { code }));
    if (!label.wrong) take({ code: label.code, after: label.after, scan });
  };
  return { wrong, hear };
}

/** A wedge reader fills the label; it does not open what it read. @param {(code: string) => unknown} hear */
export function useWedge(hear) {
  // The window hears a stroke before the document, where a read label would open its record.
  useEffect(() => readWedge(window, (code) => hear(code)), [hear]);
}

/** @param {{hear: (code: string, scan: boolean) => unknown, wrong: string, without: () => void, top: any}} props */
export function LabelScan({ hear, wrong, without, top }) {
  return html`<${Scanner} onCodes=${(/** @type {string[]} */ codes) => hear(codes[0] ?? '', true)} title=${t('strip.label.scan')} hint=${t('strip.label.hint')} top=${html`<${DemoLine} />${top}`}>
    <div class="sheet hit">${wrong && html`<p class="tell" role="status">${wrong}</p>`}
    <${Key} label=${t('strip.label.none')} onPress=${without} /></div></${Scanner}>`;
}
