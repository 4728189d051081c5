/** Starts the page. A file that did not come is asked for again before the person has to be told. */

/** How often the page is opened again by itself, and where that is counted. */
const MOST = 2;
const COUNT = 'opened again';
const PAUSE_MS = 400;

async function start() {
  const times = Number(sessionStorage.getItem(COUNT) ?? 0);
  try {
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
