/** The foot of every printed page: what it is, its code, the day, and which page of how many. */
import { useEffect } from 'preact/hooks';
import { fullDay } from '../dates.js';
import { t } from '../texts/index.js';
import { codeGroups } from './told.js';

/** Words as a string of a style sheet. @param {string} words */
const quoted = (words) => `"${words.replace(/["\\]/g, '\\$&').replace(/\s+/g, ' ')}"`;

/** "Page 1 of 4", with the browser's own counters in it. */
function pageWords() {
  const said = t('print.page', { page: '\u0000page\u0000', pages: '\u0000pages\u0000' });
  const pieces = said.split('\u0000').filter(Boolean);
  return pieces
    .map((piece) => (['page', 'pages'].includes(piece) ? `counter(${piece})` : quoted(piece)))
    .join(' ');
}

/** @param {string} title @param {string} [code] */
function rules(title, code) {
  const said = [code && codeGroups(code), title, fullDay(new Date())].filter(Boolean).join(' · ');
  return `@page {
    @bottom-left { content: ${quoted(said)}; font: 9pt sans-serif; text-align: left; }
    @bottom-right { content: ${pageWords()}; font: 9pt sans-serif; white-space: nowrap; }
  }`;
}

/** The foot of the page that is being printed; made once, because a new sheet restyles everything. */
const foot = new CSSStyleSheet();

/** What the screen of now is, for its foot. */
const shown = { title: '', code: /** @type {string | undefined} */ (undefined) };

addEventListener('beforeprint', () => {
  foot.replaceSync(rules(shown.title, shown.code));
  if (!document.adoptedStyleSheets.includes(foot)) document.adoptedStyleSheets.push(foot);
});

/** The foot names this screen when it is printed; a browser without margin boxes leaves it out. @param {string} title @param {string} [code] */
export function usePrintFoot(title, code) {
  useEffect(() => {
    Object.assign(shown, { title, code });
  }, [title, code]);
}
