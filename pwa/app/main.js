/** The page starts here: settings, store, screens, then everything that may come later. */
import { effect } from '@preact/signals';
import { render } from 'preact';
import { openStore } from '../store/index.js';
import { watchUpdates } from '../store/update.js';
import { App, Broken } from './app.js';
import { watchDeviceNames } from './device_names.js';
import { armSound, chooseFeedback } from './feedback.js';
import { watchDemo } from './frame/demo.js';
import { html } from './frame/html.js';
import { watchGlass } from './press.js';
import { readBeforeShown, startRouter } from './router.js';
import { loadAhead } from './routes.js';
import { readSettings, settings, wearSettings } from './settings.js';

/** Comes with the screens; until it is here, each screen reads for itself. @param {any} store */
function readAhead(store) {
  import('./read_ahead.js').then(
    ({ aheadOf }) => readBeforeShown((path) => aheadOf(store, path)),
    () => undefined,
  );
}

async function start() {
  const page = /** @type {HTMLElement} */ (document.getElementById('page'));
  wearSettings();
  startRouter();
  watchGlass(document);
  armSound(document);
  effect(() => {
    chooseFeedback({ sound: settings.sound.value, vibration: settings.vibration.value });
  });
  try {
    const store = await openStore();
    await readSettings(store);
    await watchDemo(store);
    await watchDeviceNames(store);
    page.replaceChildren();
    render(html`<${App} store=${store} />`, page);
    readAhead(store);
    watchUpdates(store);
    loadAhead();
  } catch (error) {
    page.replaceChildren();
    render(html`<${Broken} what="store" />`, page);
    reportError(error);
  }
}

start();
