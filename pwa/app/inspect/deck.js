/** Under the thumb while the rest scrolls: the four verdicts, why, and the key that keeps them. */

import { useState } from 'preact/hooks';
import { Act, html, Icon, Key } from '../frame/index.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';
import { VERDICTS, wantsReason } from './judging.js';
import { heldSays } from './says.js';
import { Sign } from './sign.js';

/** @param {any} props */
export function Deck(props) {
  const { draft, change, act, bag, piece, held } = props;
  const used = draft.verdict === 'use';
  const said = used ? held.length > 0 : draft.verdict;
  const why = wantsReason(draft, held);
  return html`<div class="deck">
    ${said && html`<${Reasons} key=${draft.verdict} bag=${bag} draft=${draft} change=${change} says=${used ? heldSays(held) : ''} />`}
    <${Judge} draft=${draft} change=${change} />
    <${Act} key=${piece.id} confirm disabled=${!draft.verdict || why} onPress=${act} ...${actWords(props, why)} /></div>`;
}

/** @param {any} props */
function Reasons({ bag, draft, change, says }) {
  const [own, setOwn] = useState(Boolean(draft.own));
  const given = bag.reasons?.[draft.verdict] ?? [];
  const usual = given.length
    ? given
    : (USUAL[draft.verdict] ?? []).map((key) => t(`inspect.reasons.${key}`));
  return html`<div class="reasons stack">${says && html`<p class="off-limit" role="status"><${Sign} /><span>${says}</span></p>`}<div class="chips" role="group" aria-label=${t('inspect.reason')}>${usual.map(
    (
      /** @type {string} */ word,
    ) => html`<${Key} key=${word} className="press" label=${word} pressed=${!draft.own && draft.reason === word}
      onPress=${() => change({ reason: draft.reason === word ? '' : word, own: '' })} />`,
  )}<${Key} className="press" label=${t('inspect.reason.own')} pressed=${own} onPress=${() => setOwn(!own)} /></div>
    ${
      own &&
      html`<label class="field"><span>${t('inspect.reason.own')}</span><input type="text" id="own-reason" autocomplete="off" value=${draft.own}
      onInput=${(/** @type {any} */ event) => change({ own: event.target.value })} /></label>`
    }</div>`;
}

/** @type {Record<string, string[]>} */
const USUAL = {
  use: ['manual', 'fits'],
  spare: ['worn', 'rust'],
  machine: ['worn', 'bent'],
  scrap: ['scrap', 'bent', 'thread'],
};

/** @param {any} props */
function Judge({ draft, change }) {
  const judge = (/** @type {string} */ word) =>
    change({
      verdict: word,
      tapped: true,
      ...(word === draft.verdict ? {} : { reason: '', own: '' }),
    });
  return html`<div class="judge" role="group" aria-label=${t('inspect.verdict')}>${VERDICTS.map(
    (
      word,
    ) => html`<${Press} key=${word} class="press" aria-pressed=${String(draft.verdict === word)}
      onPress=${() => judge(word)}><${Icon} name=${`v-${word}`} /><span>${t(`inspect.verdict.${word}`)}</span></${Press}>`,
  )}</div>`;
}

/** @param {any} props @param {boolean} why whether a reason is still wanted */
function actWords({ draft, next, bag }, why) {
  if (!draft.verdict) return { label: t('inspect.keep.none') };
  const label = t('inspect.keep', { word: t(`inspect.word.${draft.verdict}`) });
  if (why) return { label, second: t('inspect.reason.first') };
  if (bag.pieces.length < 2) return { label };
  return {
    label,
    second: next ? t('inspect.then', { name: nextName(next, bag) }) : t('inspect.then.last'),
  };
}

/** @param {any} next @param {any} bag */
function nextName(next, bag) {
  const kind = bag.kind?.name;
  return kind ? `${kind.toLowerCase()} ${next.number}` : next.name;
}
