/** What the devices of the workshop are called: told by the computer, kept on this device. */
import { effect, signal } from '@preact/signals';
import { asked } from './asking.js';

const KEPT = 'device-names';

/** Names by id, and which device this is. */
export const names = signal(/** @type {Record<string, string>} */ ({}));
export const ownDevice = signal('');

/** Devices that were met without a name; each is asked for once. @type {Set<string>} */
const wanted = new Set();
const askedFor = new Set();

/** The name of another device, or null where it is this one or nobody has told. @param {string} device */
export function nameOfOther(device) {
  if (device === ownDevice.value) return null;
  const name = names.value[device];
  if (name === undefined && device) wanted.add(device);
  return name ?? null;
}

/**
 * Takes the list of devices as the computer gave it.
 * @param {any} store
 * @param {{id: string, name: string}[]} devices
 */
export async function takeNames(store, devices) {
  const now = Object.fromEntries(devices.map(({ id, name }) => [id, name]));
  if (JSON.stringify(now) === JSON.stringify(names.peek())) return;
  names.value = now;
  await store.setSetting(KEPT, now);
}

/** @param {any} store */
async function askAgain(store) {
  const unknown = [...wanted].filter((id) => !askedFor.has(id));
  if (!store.state.paired.peek() || (askedFor.size > 0 && unknown.length === 0)) return;
  for (const id of ['the list', ...unknown]) askedFor.add(id);
  try {
    await takeNames(store, (await asked(store, 'GET', '/devices')).devices);
  } catch {
    // Without the computer the names known so far stay; the next contact asks again.
    for (const id of ['the list', ...unknown]) askedFor.delete(id);
  }
}

/**
 * Knows the names of before, and asks for new ones whenever the computer has been heard.
 * @param {any} store
 */
export async function watchDeviceNames(store) {
  names.value = (await store.setting(KEPT)) ?? {};
  effect(() => {
    const contact = store.state.lastContact.value;
    const paired = store.state.paired.value === 'yes';
    Promise.resolve(store.device()).then((own) => {
      ownDevice.value = own?.device ?? '';
    });
    if (contact && paired) askAgain(store);
  });
}
