/** New versions of the page: fetched aside, offered, and taken over only when nothing is unsaved. */

const ASK_AGAIN_MS = 3_600_000;
const OTHER_TABS_MS = 300;

/** What would be lost by a reload, by name. @type {Set<string>} */
const unsaved = new Set();

/** @type {ServiceWorkerRegistration|null} */
let registration = null;

/**
 * A form says that it holds something typed that is kept nowhere yet.
 * @param {string} name @param {boolean} on
 */
export function holdPage(name, on) {
  if (on) unsaved.add(name);
  else unsaved.delete(name);
}

/** @param {ServiceWorkerRegistration} found @param {() => void} offer */
function watch(found, offer) {
  if (found.waiting && navigator.serviceWorker.controller) offer();
  found.addEventListener('updatefound', () => {
    const worker = found.installing;
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && navigator.serviceWorker.controller) offer();
    });
  });
}

/** One reload when a new version takes over; none when the first version takes its first page. */
function reloadOnce() {
  let controlled = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (controlled && unsaved.size === 0) location.reload();
    controlled = true;
  });
}

/** Answers other tabs that want to change the version. */
function answerTabs() {
  const line = new BroadcastChannel('witnessmark page');
  line.onmessage = ({ data }) => {
    if (data === 'unsaved?' && unsaved.size) line.postMessage('unsaved');
  };
}

/** @returns {Promise<boolean>} whether another tab holds something unsaved */
function othersHold() {
  const line = new BroadcastChannel('witnessmark page');
  return new Promise((resolve) => {
    const timer = setTimeout(() => resolve(false), OTHER_TABS_MS);
    line.onmessage = ({ data }) => {
      if (data !== 'unsaved') return;
      clearTimeout(timer);
      resolve(true);
    };
    line.postMessage('unsaved?');
  }).then((held) => {
    line.close();
    return held === true;
  });
}

/** The first version may have opened before all of it was here; the worker brings what is missing. */
async function askForRest() {
  const { active } = await navigator.serviceWorker.ready;
  active?.postMessage('bring the rest');
}

/**
 * @param {{state: {update: {value: boolean}}}} store `state.update` turns true when a version waits
 */
export async function watchUpdates(store) {
  if (!navigator.serviceWorker) return;
  answerTabs();
  reloadOnce();
  const options = /** @type {const} */ ({ updateViaCache: 'none' });
  try {
    registration = await navigator.serviceWorker.register('/sw.js', options);
  } catch (error) {
    reportError(error);
    return;
  }
  askForRest();
  addEventListener('online', askForRest);
  watch(registration, () => {
    store.state.update.value = true;
  });
  setInterval(() => registration?.update().catch(() => undefined), ASK_AGAIN_MS);
}

/**
 * @returns {Promise<'going'|'unsaved'|'none'>} unsaved: this tab or another holds something that a
 *   reload would lose, so nothing was done
 */
export async function takeUpdate() {
  if (!registration?.waiting) return 'none';
  if (unsaved.size || (await othersHold())) return 'unsaved';
  registration.waiting.postMessage('take over');
  return 'going';
}
