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

/** Writes the foot for as long as the screen stands; a browser without margin boxes leaves it out. @param {string} title @param {string} [code] */
export function usePrintFoot(title, code) {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(rules(title, code));
    document.adoptedStyleSheets.push(sheet);
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
    };
  }, [title, code]);
}
