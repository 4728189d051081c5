/** A new identifier for something made on this screen: a part, a run, an entry another one names. */

import { uuid7 } from '../log/ids.js';

export const freshId = () => uuid7(Date.now(), crypto.getRandomValues(new Uint8Array(10)));
