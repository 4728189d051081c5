/** What is said of a photo: what of, where it was named, when and by whom; arrows in words. */

import { madeSays } from '../frame/maker.js';
import { t } from '../texts/index.js';

/** Where it was named, or which side of a criterion it shows. @param {any} line */
function namedSays(line) {
  if (!line) return t('photo.not-kept');
  if (line.side)
    return t('photo.example', { side: t(`photo.side.${line.side}`), asks: line.asks ?? '' });
  if (line.heading !== 'inspection') return line.says ?? '';
  const word = line.verdict ? t(`verdict.${line.verdict}`) : '';
  const inspection = word
    ? t('photo.inspection', { word: word.toLowerCase() })
    : t('photo.inspection.none');
  return [inspection, line.says].filter(Boolean).join('. ');
}

/** "Inspection: scrap, 12 Oct, Kim". @param {any} line */
export const captionOf = (line) =>
  [namedSays(line), line?.made ? madeSays(line) : ''].filter(Boolean).join(', ');

/** A photo and its arrows for who does not see them. @param {string} name @param {any[]} marks */
export function altOf(name, marks) {
  const standing = marks.filter(({ number }) => number);
  const words = standing.map(({ number, note }) => [number, note].filter(Boolean).join(' '));
  const arrows = standing.length
    ? t('photo.alt.marks', { n: standing.length, words: words.join(', ') })
    : '';
  return [t('photo.alt', { name }), arrows].filter(Boolean).join(' ');
}
