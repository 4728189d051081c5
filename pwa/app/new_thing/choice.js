/** One of many by chips: the first few at hand, the rest found by name. */

import { useState } from 'preact/hooks';
import { TextField } from '../forms_fields.js';
import { html, Key } from '../frame/index.js';
import { t } from '../texts/index.js';

const AT_HAND = 5;

/**
 * @typedef {{id: string, name: string}} Named
 */

/**
 * @param {{id: string, label: string, none: string, more: string, list: Named[], heading: string, value: string,
 *   first?: string | null, fresh?: string, mayAdd?: boolean, ready?: string[], called?: string, most?: number, onChange: (id: string, fresh?: string) => void}} props
 */
export function Choice({
  id,
  label,
  none,
  more,
  list,
  value,
  first,
  fresh,
  mayAdd,
  ready = [],
  called = '',
  most = AT_HAND,
  onChange,
}) {
  const [finding, setFinding] = useState(false);
  const likely = calledAfter(list, called)?.id;
  const shown = atHand(list, value, first ?? likely ?? null, most);
  const usual =
    value || fresh || likely ? '' : (calledAfter(ready.map(asNamed), called)?.name ?? '');
  const pick = (/** @type {string} */ one, /** @type {string} */ added = '') => {
    setFinding(false);
    onChange(one, added);
  };
  return html`<fieldset><legend>${label}</legend><div class="chips">
    ${shown.map((one) => html`<${Key} key=${one.id} className="press" label=${one.name} pressed=${one.id === value} onPress=${() => pick(one.id === value ? '' : one.id)} />`)}
    ${fresh && html`<${Key} className="press" label=${fresh} pressed=${true} onPress=${() => pick('')} />`}
    ${usual && html`<${Key} className="press" label=${t('kind.start', { name: usual })} onPress=${() => pick('', usual)} />`}
    ${!shown.length && !fresh && !usual && html`<${Key} className="press" label=${none} pressed=${!value} onPress=${() => pick('')} />`}
    ${(list.length > most || mayAdd) && html`<${Key} id=${`${id}-more`} className="press" label=${more} pressed=${finding} onPress=${() => setFinding(!finding)} />`}</div>
    ${finding && html`<${Finder} id=${id} label=${label} list=${list} mayAdd=${mayAdd} ready=${ready} pick=${pick} />`}</fieldset>`;
}

/** @param {Named[]} list @param {string} value @param {string | null} first @param {number} most */
function atHand(list, value, first, most) {
  const wanted = list.filter((one) => one.id === value || one.id === first);
  const rest = list.filter((one) => !wanted.includes(one));
  return [...wanted, ...rest].slice(0, most);
}

/** @param {string} name */
const asNamed = (name) => ({ id: name, name });

/** What a thing is called after, the longest name first: "Pushrod 3". @param {Named[]} list @param {string} called */
const calledAfter = (list, called) =>
  list
    .filter(({ name }) => name && called.toLowerCase().includes(name.toLowerCase()))
    .sort((one, other) => other.name.length - one.name.length)[0];

/** @param {any} props */
function Finder({ id, label, list, mayAdd, ready, pick }) {
  const [query, setQuery] = useState('');
  const words = query.trim().toLowerCase();
  const hits = list
    .filter((/** @type {Named} */ one) => one.name.toLowerCase().includes(words))
    .slice(0, 12);
  const offered = ready
    .filter((/** @type {string} */ name) => name.toLowerCase().includes(words))
    .slice(0, words ? 6 : Math.max(0, 12 - hits.length));
  const same = [...hits.map((/** @type {Named} */ one) => one.name), ...offered].some(
    (name) => name.toLowerCase() === words,
  );
  return html`<${TextField} id=${`${id}-find`} label=${t('bind.find')} value=${query} onChange=${setQuery} />
    <div class="chips" role="group" aria-label=${label}>${hits.map((/** @type {Named} */ one) => html`<${Key} key=${one.id} className="press" label=${one.name} onPress=${() => pick(one.id)} />`)}
    ${offered.map((/** @type {string} */ name) => html`<${Key} key=${name} className="press" label=${t('kind.start', { name })} onPress=${() => pick('', name)} />`)}
    ${mayAdd && words && !same && html`<${Key} className="press" label=${t('new.kind.add', { name: query.trim() })} onPress=${() => pick('', query.trim())} />`}</div>`;
}
