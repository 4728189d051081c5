/** Settings of this device: theme, hands, sound, units, who is at the bench. */
import { TORQUE_WORDS } from '../../trade/units.js';
import { OnOff, Setting } from '../frame/choices.js';
import { html, Page } from '../frame/index.js';
import { setSetting, settings } from '../settings.js';
import { t } from '../texts/index.js';

/** @param {string} area @param {string[]} values */
const named = (area, values) => values.map((value) => ({ value, label: t(`${area}.${value}`) }));

const themes = ['phone', 'light', 'dark', 'sunlight'];

export function screen() {
  return html`<${Page} title=${t('settings')} now="more" back=${{ to: '/more', says: t('more') }} className="list"><div class="left"><section class="hello"><h1 tabindex="-1">${t('settings')}</h1></section>
    <${Setting} name="theme" says=${t('set.theme')} options=${named('theme', themes)} />
    <${Setting} name="hand" says=${t('set.hand')} options=${named('hand', ['right', 'left'])} />
    <${OnOff} name="gloves" says=${t('set.gloves')} note=${t('set.gloves.says')} /></div>
    <div class="right"><${OnOff} name="sound" says=${t('set.sound')} /><${OnOff} name="vibration" says=${t('set.vibration')} /><${OnOff} name="letters" says=${t('set.letters')} />
    <${Setting} name="unit" says=${t('set.unit')} note=${t('set.unit.says')} options=${TORQUE_WORDS.map((unit) => ({ value: unit, label: unit }))} />
    <div class="set"><label class="field"><span>${t('set.by')}</span><input type="text" maxlength="60" autocomplete="name" value=${settings.by.value} onChange=${(/** @type {any} */ event) => setSetting('by', event.target.value.trim())} /></label><p class="aside">${t('set.by.says')}</p></div></div></${Page}>`;
}
