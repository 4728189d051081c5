/**
 * Starts the page. At the very first opening the service worker comes first: it brings what starts
 * the page in one piece, then the screens, and the modules come from it. A file that did not come is asked for again
 * before the person has to be told.
 */

/** How often the page is opened again by itself, and where that is counted. */
const MOST = 2;
const COUNT = 'opened again';
const PAUSE_MS = 400;

/** After this long the modules are asked for one by one, whatever became of the worker. */
const PATIENCE_MS = 20_000;

/**
 * Waits until a worker that is being installed has taken this page, or has been dropped.
 * @param {ServiceWorkerContainer} workers @param {ServiceWorker} coming
 */
function taken(workers, coming) {
  return new Promise((resolve) => {
    workers.addEventListener('controllerchange', resolve);
    coming.addEventListener('statechange', () => {
      if (coming.state === 'redundant') resolve(null);
    });
    setTimeout(resolve, PATIENCE_MS);
  });
}

/** The worker first; without one the page comes file by file, as it lies on the computer. */
async function bringPage() {
  const workers = navigator.serviceWorker;
  if (!workers || workers.controller) return;
  try {
    const found = await workers.register('/sw.js', { updateViaCache: 'none' });
    // One that is active already was passed by on purpose: the page was opened past all caches.
    const coming = found?.installing ?? found?.waiting;
    if (coming && !workers.controller && !found.active) await taken(workers, coming);
  } catch {
    // No worker here, a door without a trusted certificate for one; store/update.js says so.
  }
}

async function start() {
  const times = Number(sessionStorage.getItem(COUNT) ?? 0);
  try {
    await bringPage();
    await import('./main.js');
    sessionStorage.removeItem(COUNT);
  } catch (error) {
    // A module that failed once stays failed until the page is opened anew.
    if (times < MOST) {
      sessionStorage.setItem(COUNT, String(times + 1));
      setTimeout(() => location.reload(), PAUSE_MS * (times + 1));
    } else {
      sessionStorage.removeItem(COUNT);
      reportError(error);
    }
  }
}

start();
