/** One screen for every reason: chips of usual words, own words beneath, then the key that keeps it. */

import { useDraft } from '../draft.js';
import { Act, html, Key, Wait } from '../frame/index.js';
import { t } from '../texts/index.js';
import { RunFrame, RunTitle } from './frame.js';

/**
 * @param {{store: any, name: string, title: string, says: string, lines?: any, chips: string[], label: any,
 *   leave: () => void, keep: (reason: string) => Promise<unknown>, demo?: boolean, trouble?: any}} props
 */
export function ReasonScreen(props) {
  const { store, name, title, says, lines, chips, label, leave, demo } = props;
  const [draft, change, forget] = useDraft(store, `reason:${name}`, { chip: '', own: '' });
  if (!draft) return html`<main class="run narrow"><${Wait} /></main>`;
  const reason = draft.own.trim() || draft.chip;
  const keep = async () => {
    if (!reason || (await props.keep(reason)) === false) return false;
    await forget();
    return true;
  };
  return html`<${RunFrame} title=${title} demo=${demo} leave=${leave} says=${t('reading.back')} className="narrow reason">
    <${RunTitle} name=${title} />
    ${lines}<p class="soft">${says}</p>
    <div class="asked"><div class="chips" role="group" aria-label=${t('strike.reason')}>${chips.map(
      (
        chip,
      ) => html`<${Key} key=${chip} className="press" pressed=${!draft.own.trim() && draft.chip === chip} label=${chip}
        onPress=${() => change({ chip: draft.chip === chip ? '' : chip, own: '' })} />`,
    )}</div>
    <label class="field"><span>${t('strike.own')}</span><input type="text" id="own-words" autocomplete="off" value=${draft.own}
      onInput=${(/** @type {any} */ event) => change({ own: event.target.value })} /></label></div>
    <${Act} confirm disabled=${!reason} onPress=${keep} label=${label} second=${reason || t('strike.held')} />
  </${RunFrame}>${props.trouble}`;
}
