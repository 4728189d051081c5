/** What the person chose for this device; known at once, kept by the store, never in the log. */
import { effect, signal } from '@preact/signals';

/** The chosen values; `phone` as theme follows the phone. */
export const settings = {
  theme: signal('phone'),
  hand: signal('right'),
  gloves: signal(false),
  sound: signal(true),
  vibration: signal(true),
  letters: signal(true),
  unit: signal('N·m'),
  by: signal(''),
};

/** @typedef {keyof typeof settings} SettingName */

/** @type {any} */
let keeper = null;

/**
 * Changes one choice, here and on the disk.
 * @param {SettingName} name
 * @param {any} value
 */
export async function setSetting(name, value) {
  settings[name].value = value;
  await keeper?.setSetting(name, value);
}

/** Reads what was chosen before. @param {any} store */
export async function readSettings(store) {
  keeper = store;
  const names = /** @type {SettingName[]} */ (Object.keys(settings));
  const known = await Promise.all(names.map((name) => store.setting(name)));
  for (const [at, name] of names.entries()) {
    if (known[at] !== undefined && known[at] !== null) settings[name].value = known[at];
  }
}

/** Puts theme, hand and gloves on the page, and follows the phone's theme until one is chosen. */
export function wearSettings() {
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const phone = signal(dark.matches ? 'dark' : 'light');
  dark.addEventListener('change', () => {
    phone.value = dark.matches ? 'dark' : 'light';
  });
  const wear = document.documentElement.dataset;
  effect(() => {
    wear.theme = settings.theme.value === 'phone' ? phone.value : settings.theme.value;
    wear.hand = settings.hand.value;
    wear.gloves = settings.gloves.value ? 'yes' : 'no';
  });
}
