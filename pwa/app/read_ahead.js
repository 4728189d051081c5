/** Reads what a screen shows before it is opened, so that it is drawn once and whole. */
import { code as codeView } from '../views/code.js';
import { pathOf } from './frame/code_found.js';
import { matchRoute, screenOf } from './routes.js';

/** A screen does not stay longer than this for the next one's sake; then the next one says that it waits. */
const PATIENCE_MS = 150;

/**
 * Where each address leads once its answer is there. A label leads straight to its one thing.
 * @type {Record<string, (store: any, params: Record<string, string>, path: string) => Promise<string>>}
 */
const readings = {
  code: async (store, { code = '' }, path) => {
    const found = codeView(await store.codeSlice(code), code);
    const [thing] = found.things;
    return found.says === 'thing' && thing?.here ? pathOf(/** @type {any} */ (thing)) : path;
  },
  part: (store, { id }, path) => store.partSlice(id).then(() => path),
  instrument: (store, { id }, path) => store.partSlice(id).then(() => path),
  holder: (store, { id }, path) => store.holderSlice(id).then(() => path),
};

/**
 * @param {any} store
 * @param {string} path
 * @returns {Promise<string> | null} the address to show; null when nothing is to be waited for
 */
export function aheadOf(store, path) {
  const { name, params } = matchRoute(path.split('?')[0] ?? path);
  const read = screenOf(name) ? readings[name] : undefined;
  if (!read) return null;
  const enough = new Promise((done) => setTimeout(done, PATIENCE_MS, path));
  // What cannot be read is told by the screen itself, which asks again.
  return Promise.race([read(store, params, path), enough]).catch(() => path);
}
