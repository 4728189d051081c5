/** Which screen answers which address. Screens are loaded when first opened. */

/** @typedef {{name: string, params: Record<string, string>}} Match */

/** Pattern and file stem, the more particular first. */
const routes = [
  ['/', 'home'],
  ['/scan', 'scan'],
  ['/tonight', 'tonight'],
  ['/find', 'find'],
  ['/more', 'more'],
  ['/settings', 'settings'],
  ['/sync', 'sync'],
  ['/refused/:id', 'refused'],
  ['/devices', 'devices'],
  ['/pair', 'pair'],
  ['/labels', 'labels'],
  ['/label/:id', 'label'],
  ['/L/:code', 'code'],
  ['/l/:code', 'code'],
  ['/part/:id', 'part'],
  ['/holder/:id', 'holder'],
  ['/note/:id', 'note'],
  ['/photo/:sha', 'photo'],
  ['/joint/:id', 'joint'],
  ['/joint/:id/reading', 'reading'],
  ['/joint/:id/choose', 'choose'],
  ['/joint/:id/strike/:pull', 'strike'],
  ['/joint/:id/wrench', 'wrench'],
  ['/joint/:id/edit', 'joint_edit'],
  ['/strike/:entry', 'strike'],
  ['/inspect/:id', 'inspect'],
  ['/edit/:id', 'edit'],
  ['/new/:code', 'new'],
  ['/bind/:code', 'bind'],
  ['/move/:id', 'move'],
  ['/wrenches', 'wrenches'],
  ['/wrench/new', 'wrench_edit'],
  ['/wrench/:id/edit', 'wrench_edit'],
  ['/wrench/:id', 'instrument'],
  ['/instrument/new', 'instrument_edit'],
  ['/instrument/:id/edit', 'instrument_edit'],
  ['/instrument/:id', 'instrument'],
  ['/calibrate/:id', 'calibrate'],
  ['/strip', 'strip'],
  ['/donors', 'donors'],
  ['/donor/:id', 'donor'],
  ['/fit/:id', 'fit'],
  ['/kinds', 'kinds'],
  ['/kind/:id', 'kind'],
  ['/builds', 'builds'],
  ['/sets', 'sets'],
  ['/set/:id', 'set'],
  ['/even', 'even'],
  ['/shells', 'shells'],
  ['/shelf', 'shelf'],
  ['/away', 'away'],
  ['/send', 'send'],
  ['/back', 'back_all'],
  ['/back/:id', 'back'],
  ['/studies', 'studies'],
  ['/study/:id', 'study'],
  ['/history/part/:id', 'history_part'],
  ['/history/kind/:id', 'history_kind'],
  ['/history/donor/:id', 'history_donor'],
  ['/workings', 'workings'],
  ['/workings/:name', 'working'],
];

/** Screens that need the whole glass; none of them shows the doors, not even while it is loaded. */
const without = new Set([
  'back',
  'back_all',
  'bind',
  'calibrate',
  'choose',
  'edit',
  'even',
  'fit',
  'inspect',
  'instrument_edit',
  'joint',
  'joint_edit',
  'kind',
  'move',
  'new',
  'photo',
  'reading',
  'send',
  'set',
  'shells',
  'strike',
  'strip',
  'study',
  'wrench',
  'wrench_edit',
]);

/** Whether the doors stand on a screen. @param {string} name */
export const hasDoors = (name) => !without.has(name);

/** @param {string} text */
function plain(text) {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

/**
 * @param {string[]} asked
 * @param {string} pattern
 * @returns {Record<string, string> | null}
 */
function paramsOf(asked, pattern) {
  const wanted = pattern.split('/');
  if (wanted.length !== asked.length) return null;
  /** @type {Record<string, string>} */
  const params = {};
  for (const [at, word] of wanted.entries()) {
    const given = asked[at] ?? '';
    if (word.startsWith(':') && given) params[word.slice(1)] = plain(given);
    else if (word !== given) return null;
  }
  return params;
}

/**
 * The screen of an address, `lost` when there is none.
 * @param {string} path
 * @returns {Match}
 */
export function matchRoute(path) {
  const asked = (path.length > 1 ? path.replace(/\/+$/, '') : path).split('/');
  for (const [pattern, name] of /** @type {[string, string][]} */ (routes)) {
    const params = paramsOf(asked, pattern);
    if (params) return { name, params };
  }
  return { name: 'lost', params: {} };
}

/** Where a label leads, and where people go from there. */
const NEAR = ['part', 'holder', 'code', 'scan', 'joint', 'inspect', 'tonight', 'find', 'reading'];

/** @type {Map<string, any>} */
const loaded = new Map();

/** A screen that has been loaded already. @param {string} name */
export const screenOf = (name) => loaded.get(name) ?? null;

/** Loads a screen's file once. @param {string} name */
export async function loadScreen(name) {
  if (!loaded.has(name)) loaded.set(name, (await import(`./screens/${name}.js`)).screen);
  return loaded.get(name);
}

/** Loads the screens that are opened most, one after another, whenever the page has nothing to do. */
export function loadAhead() {
  const idle = globalThis.requestIdleCallback ?? ((fn) => setTimeout(fn, 200));
  const next = (/** @type {number} */ at) =>
    idle(async () => {
      const name = NEAR[at];
      if (name === undefined) return;
      // One that does not come now is asked for again when it is opened.
      await loadScreen(name).catch(() => undefined);
      next(at + 1);
    });
  next(0);
}
