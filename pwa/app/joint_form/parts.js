/** The parts of a joint: what it clamps and what its fasteners are, found by name. */

import { useState } from 'preact/hooks';
import { find } from '../../views/find.js';
import { TextField } from '../forms_fields.js';
import { html, Icon, Key } from '../frame/index.js';
import { Press } from '../press.js';
import { t } from '../texts/index.js';

/** @param {{form: any, change: (part: any) => void, rows: any[]}} props */
export function Parts({ form, change, rows }) {
  const nameOf = new Map(rows.map((row) => [row.id, row.name]));
  const plural = form.plural || t('noun.more');
  return html`<section class="stack"><h2>${t('joint.parts')}</h2>
    <ul class="sheet">${form.parts.map(
      (
        /** @type {string} */ id,
      ) => html`<li key=${id} class="row plain"><b>${nameOf.get(id) ?? id}</b>
      <${Key} className="small-press press" label=${t('form.remove')} onPress=${() => change({ parts: form.parts.filter((/** @type {string} */ p) => p !== id) })} /></li>`,
    )}
      ${!form.parts.length && html`<li class="row plain soft">${t('joint.parts.none')}</li>`}</ul>
    <${PartFinder} id="find-part" label=${t('joint.parts.find')} rows=${rows} has=${form.parts}
      pick=${(/** @type {string} */ id) => change({ parts: [...form.parts, id] })} />
    <h2>${t('joint.fastener-part', { plural })}</h2>
    ${
      form.fastener_part &&
      html`<div class="sheet"><div class="row plain"><b>${nameOf.get(form.fastener_part) ?? form.fastener_part}</b>
      <${Key} className="small-press press" label=${t('form.remove')} onPress=${() => change({ fastener_part: '' })} /></div></div>`
    }
    <${PartFinder} id="find-fasteners" label=${t('joint.parts.find')} rows=${rows} has=${[form.fastener_part]}
      pick=${(/** @type {string} */ id) => change({ fastener_part: id })} /></section>`;
}

/**
 * A field that finds things by name, with its hits as keys.
 * @param {{id: string, label: string, rows: any[], has: string[], pick: (id: string) => void, heading?: string}} props
 */
export function PartFinder({ id, label, rows, has, pick, heading = 'part' }) {
  const [query, setQuery] = useState('');
  const hits = query.trim()
    ? hitsOf(rows, query, heading).filter((hit) => !has.includes(hit.id))
    : [];
  const take = (/** @type {string} */ found) => {
    setQuery('');
    pick(found);
  };
  return html`<div class="stack"><${TextField} id=${id} label=${label} value=${query} onChange=${setQuery} />
    ${
      hits.length > 0 &&
      html`<div class="sheet pick">${hits.map(
        (hit) =>
          html`<${Press} key=${hit.id} class="row" onPress=${() => take(hit.id)}><${Icon} name=${heading === 'holder' ? 'i-bin' : 'i-part'} /><span class="says"><b>${hit.name}</b></span></${Press}>`,
      )}</div>`
    }
    ${query.trim() && !hits.length && html`<p class="soft" role="status">${t('bind.nothing', { query })}</p>`}</div>`;
}

/**
 * @param {any[]} rows
 * @param {string} query
 * @param {string} heading
 * @returns {any[]}
 */
export function hitsOf(rows, query, heading) {
  const found = find(
    rows.filter((row) => row.heading === heading),
    query,
  );
  return found.groups.flatMap((/** @type {any} */ group) => group.hits).slice(0, 6);
}
