/** What shows while something is read: nothing at first, a grey block, then a sentence. */
import { useEffect, useState } from 'preact/hooks';
import { Icon } from '../icons.js';
import { t } from '../texts/index.js';
import { html } from './html.js';

/** When the grey block shows, and when the sentence joins it, in ms. */
const PATIENCE = { block: 150, sentence: 2000 };

/**
 * @param {{what?: string, done?: number, of?: number}} props
 */
export function Wait({ what, done, of }) {
  const [stage, setStage] = useState(0);
  useEffect(() => {
    const block = setTimeout(() => setStage(1), PATIENCE.block);
    const sentence = setTimeout(() => setStage(2), PATIENCE.sentence);
    return () => {
      clearTimeout(block);
      clearTimeout(sentence);
    };
  }, []);
  if (stage === 0) return null;
  const far = of ? t('wait.far', { done: done ?? 0, of }) : '';
  return html`<div class="wait" role="status"><div class="wait-block"></div>
    ${stage === 2 && html`<p class="wait-says">${what ?? t('wait.reading')} ${far}</p>`}</div>`;
}

/**
 * An empty or missing thing: what is so, what it means, and children for what to do next.
 * @param {{icon?: string, says: string, then?: string, children?: any}} props
 */
export function Empty({ icon, says, then, children }) {
  return html`<div class="sheet empty">${icon && html`<${Icon} name=${icon} />`}
    <p><b>${says}</b></p>${then && html`<p class="soft">${then}</p>`}${children}</div>`;
}

/** Something that is not here, in one sentence. @param {{says: string, then?: string}} props */
export const Missing = ({ says, then }) =>
  html`<${Empty} icon="i-find" says=${says} then=${then} />`;
