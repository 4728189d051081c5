/** Choices for this device: one of several, or on and off. */
import { useRef } from 'preact/hooks';
import { Icon } from '../icons.js';
import { Press } from '../press.js';
import { setSetting, settings } from '../settings.js';
import { t } from '../texts/index.js';
import { html } from './html.js';
import { say } from './live.js';

/** @typedef {import('../settings.js').SettingName} SettingName */

/**
 * One of several, all of them in sight.
 * @param {{says: string, note?: string, options: {value: any, label: string}[], value: any, onChoose: (value: any) => void}} props
 */
export function Choice({ says, note, options, value, onChoose }) {
  return html`<div class="set" role="group" aria-label=${says}><p class="group-says">${says}</p>${note && html`<p class="aside">${note}</p>`}<div class="chips">
    ${options.map((option) => html`<${Press} key=${String(option.value)} class="press" aria-pressed=${String(option.value === value)} onPress=${() => onChoose(option.value)}>${option.label}</${Press}>`)}</div></div>`;
}

/** A choice that is kept for the device. @param {{name: SettingName, says: string, note?: string, options: {value: any, label: string}[]}} props */
export function Setting({ name, ...rest }) {
  const choose = async (/** @type {any} */ value) => {
    await setSetting(name, value);
    say(t('set.kept'));
  };
  return html`<${Choice} ...${rest} value=${settings[name].value} onChoose=${choose} />`;
}

/** @param {{name: SettingName, says: string, note?: string}} props */
export const OnOff = (props) =>
  html`<${Setting} ...${props} options=${[{ value: true, label: t('set.on') }, { value: false, label: t('set.off') }]} />`;

/** Sunlight, and back to what was before. */
export function Sun() {
  const before = useRef('phone');
  const on = settings.theme.value === 'sunlight';
  const turn = () => {
    if (!on) before.current = settings.theme.peek();
    return setSetting('theme', on ? before.current : 'sunlight');
  };
  return html`<${Press} class="press sun" aria-pressed=${String(on)} onPress=${turn}><${Icon} name="i-sun" /><span><b>${t('more.sun')}</b>${t(on ? 'more.sun.on' : 'more.sun.off')}</span></${Press}>`;
}
