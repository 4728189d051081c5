/**
 * Serves the page from one precached version, with or without a network. It never touches what the
 * computer says under /api: entries live in the store, not here. The two constants are written by
 * tests/pwa/list_page_files.py, and a test compares them with the folder.
 */

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

const VERSION = 'c48886a229a7';

/** @type {string[]} */
const FILES = [
  '/app/app.js',
  '/app/dates.js',
  '/app/draft.js',
  '/app/drawing/casting.js',
  '/app/drawing/heads.js',
  '/app/drawing/joint_drawing.js',
  '/app/drawing/place.js',
  '/app/feedback.js',
  '/app/frame/act.js',
  '/app/frame/code_found.js',
  '/app/frame/demo.js',
  '/app/frame/facts.js',
  '/app/frame/html.js',
  '/app/frame/index.js',
  '/app/frame/inspections.js',
  '/app/frame/joint_card.js',
  '/app/frame/live.js',
  '/app/frame/note_sheet.js',
  '/app/frame/notes.js',
  '/app/frame/outlines.js',
  '/app/frame/page.js',
  '/app/frame/photo.js',
  '/app/frame/row.js',
  '/app/frame/scanner.js',
  '/app/frame/sheet.js',
  '/app/frame/store.js',
  '/app/frame/sync_mark.js',
  '/app/frame/told.js',
  '/app/frame/typed_code.js',
  '/app/frame/wait.js',
  '/app/frame/ways.js',
  '/app/fresh_id.js',
  '/app/glass.js',
  '/app/icons.js',
  '/app/keeping.js',
  '/app/look/desk.css',
  '/app/look/figures-600.woff2',
  '/app/look/figures-700.woff2',
  '/app/look/forms.css',
  '/app/look/frame.css',
  '/app/look/holder.css',
  '/app/look/inspect.css',
  '/app/look/keypad.css',
  '/app/look/print.css',
  '/app/look/record.css',
  '/app/look/run.css',
  '/app/look/scan.css',
  '/app/look/tokens.css',
  '/app/main.js',
  '/app/press.js',
  '/app/press_rules.js',
  '/app/reduce_photo.js',
  '/app/router.js',
  '/app/routes.js',
  '/app/run/actions.js',
  '/app/run/asking.js',
  '/app/run/awake.js',
  '/app/run/begin.js',
  '/app/run/between.js',
  '/app/run/drafts.js',
  '/app/run/elsewhere.js',
  '/app/run/figure.js',
  '/app/run/figures.js',
  '/app/run/flagged.js',
  '/app/run/frame.js',
  '/app/run/keeping.js',
  '/app/run/keypad.js',
  '/app/run/keys.js',
  '/app/run/ready.js',
  '/app/run/reason.js',
  '/app/run/sitting.js',
  '/app/run/typed.js',
  '/app/run/use_joint.js',
  '/app/run/use_run.js',
  '/app/screens/choose.js',
  '/app/screens/code.js',
  '/app/screens/holder.js',
  '/app/screens/joint.js',
  '/app/screens/part.js',
  '/app/screens/reading.js',
  '/app/screens/scan.js',
  '/app/screens/strike.js',
  '/app/settings.js',
  '/app/texts/errors.js',
  '/app/texts/forms.js',
  '/app/texts/frame.js',
  '/app/texts/index.js',
  '/app/texts/inspect.js',
  '/app/texts/record.js',
  '/app/texts/run.js',
  '/app/texts/scan.js',
  '/app/texts/units.js',
  '/app/values.js',
  '/app/words.js',
  '/changes.json',
  '/errors.js',
  '/icons/any-192.png',
  '/icons/any-512.png',
  '/icons/maskable-512.png',
  '/icons/touch-180.png',
  '/',
  '/log/clean.js',
  '/log/digest.js',
  '/log/entry.js',
  '/log/heading.js',
  '/log/headings/accept.js',
  '/log/headings/add.js',
  '/log/headings/begin.js',
  '/log/headings/build.js',
  '/log/headings/donor.js',
  '/log/headings/fitted.js',
  '/log/headings/holder.js',
  '/log/headings/index.js',
  '/log/headings/inspection.js',
  '/log/headings/joint.js',
  '/log/headings/kind.js',
  '/log/headings/label.js',
  '/log/headings/loosening.js',
  '/log/headings/note.js',
  '/log/headings/onward.js',
  '/log/headings/part.js',
  '/log/headings/photo.js',
  '/log/headings/place.js',
  '/log/headings/pull.js',
  '/log/headings/purchase.js',
  '/log/headings/reading.js',
  '/log/headings/sheet.js',
  '/log/headings/step.js',
  '/log/headings/strike_out.js',
  '/log/headings/take.js',
  '/log/headings/touch.js',
  '/log/headings/unsourced.js',
  '/log/headings/verdict.js',
  '/log/headings/wrench.js',
  '/log/ids.js',
  '/log/links.js',
  '/log/merge.js',
  '/log/sha256.js',
  '/log/shapes.js',
  '/log/stamp.js',
  '/log/trouble.js',
  '/log/values.js',
  '/log/workshop.js',
  '/manifest.webmanifest',
  '/scan/answer.js',
  '/scan/camera.js',
  '/scan/codes.js',
  '/scan/decipher.js',
  '/scan/expected.js',
  '/scan/eye.js',
  '/scan/galois.js',
  '/scan/index.js',
  '/scan/layout.js',
  '/scan/nearest.js',
  '/scan/reader.js',
  '/scan/readers.js',
  '/scan/watch.js',
  '/scan/wedge.js',
  '/scan/worker.js',
  '/store/absorb.js',
  '/store/ask.js',
  '/store/browser.js',
  '/store/clock.js',
  '/store/core.js',
  '/store/crc32.js',
  '/store/database.js',
  '/store/file.js',
  '/store/fold.js',
  '/store/index.js',
  '/store/keep.js',
  '/store/names.js',
  '/store/outgoing.js',
  '/store/pairing.js',
  '/store/photo_rows.js',
  '/store/photo_sync.js',
  '/store/photos.js',
  '/store/place.js',
  '/store/reader.js',
  '/store/ready.js',
  '/store/recover.js',
  '/store/refused.js',
  '/store/schedule.js',
  '/store/schema.js',
  '/store/settings.js',
  '/store/settle.js',
  '/store/slices.js',
  '/store/state.js',
  '/store/store.js',
  '/store/sync.js',
  '/store/transaction.js',
  '/store/types.js',
  '/store/update.js',
  '/store/wire.js',
  '/store/workshops.js',
  '/store/zip.js',
  '/trade/label.js',
  '/trade/sequence.js',
  '/trade/torque.js',
  '/trade/unit_errors.js',
  '/trade/units.js',
  '/trade/wrench.js',
  '/vendor/htm/htm.js',
  '/vendor/htm/preact.js',
  '/vendor/idb/index.js',
  '/vendor/preact/hooks.js',
  '/vendor/preact/preact.js',
  '/vendor/signals-core/signals-core.js',
  '/vendor/signals/signals.js',
  '/vendor/zxing-wasm/es/reader/index.js',
  '/vendor/zxing-wasm/es/share.js',
  '/vendor/zxing-wasm/reader/zxing_reader.wasm',
];

const CACHE = `page ${VERSION}`;

/** Paths that are the computer's, not the page's. */
const NOT_OURS = /^\/(?:api|demo)(?:\/|$)|^\/ca\.crt$/;

async function fill() {
  const cache = await caches.open(CACHE);
  try {
    await cache.addAll(FILES.map((path) => new Request(path, { cache: 'reload' })));
  } catch (error) {
    await caches.delete(CACHE);
    throw error;
  }
}

async function sweep() {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/** @param {Request} request */
async function answer(request) {
  const cache = await caches.open(CACHE);
  const path = request.mode === 'navigate' ? '/' : new URL(request.url).pathname;
  return (await cache.match(path)) ?? fetch(request);
}

async function wakePages() {
  const pages = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  for (const page of pages) page.postMessage('sync');
}

worker.addEventListener('install', (event) => event.waitUntil(fill()));

worker.addEventListener('activate', (event) => event.waitUntil(sweep()));

worker.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== location.origin || NOT_OURS.test(pathname)) return;
  event.respondWith(answer(event.request));
});

// The page asks for this only when nothing is unsaved in any tab.
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') worker.skipWaiting();
});

worker.addEventListener('sync', (event) => {
  /** @type {ExtendableEvent} */ (event).waitUntil(wakePages());
});
