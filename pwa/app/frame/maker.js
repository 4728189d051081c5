/** Who made a fact, where that was not the person and the device that look at it now. */
import { dayOf } from '../dates.js';
import { nameOfOther } from '../device_names.js';
import { settings } from '../settings.js';

/** Another device by its name, or nothing. @param {string} device */
export const deviceSays = (device) => nameOfOther(device) ?? '';

/** "Kim, bench phone". @param {{by?: string | null, device: string}} fact */
export function makerOf({ by, device }) {
  const person = by && by !== settings.by.value ? by : '';
  return [person, deviceSays(device)].filter(Boolean).join(', ');
}

/** The day of a fact and who made it: "12 Oct, Kim, bench phone". @param {any} fact */
export const madeSays = (fact) => [dayOf(fact), makerOf(fact)].filter(Boolean).join(', ');
