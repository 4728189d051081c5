/**
 * Serves the page from one precached version, with or without a network. It never touches what the
 * computer says under /api: entries live in the store, not here. The lists and their marks are
 * written by tests/pwa/list_page_files.py, and a test compares them with the folder.
 */

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

const VERSION = 'd7984c31e30c';

/** What the page needs to start. @type {string[]} */
const SHELL_FILES = [
  '/app/app.js',
  '/app/asking.js',
  '/app/dates.js',
  '/app/device_names.js',
  '/app/feedback.js',
  '/app/frame/act.js',
  '/app/frame/camera.js',
  '/app/frame/demo.js',
  '/app/frame/foot.js',
  '/app/frame/html.js',
  '/app/frame/index.js',
  '/app/frame/live.js',
  '/app/frame/outlines.js',
  '/app/frame/page.js',
  '/app/frame/photo.js',
  '/app/frame/scan_ways.js',
  '/app/frame/scanner.js',
  '/app/frame/sheet.js',
  '/app/frame/store.js',
  '/app/frame/sync_mark.js',
  '/app/frame/told.js',
  '/app/frame/typed_code.js',
  '/app/frame/wait.js',
  '/app/glass.js',
  '/app/icons.js',
  '/app/keeping.js',
  '/app/look/desk.css',
  '/app/look/figures-600.woff2',
  '/app/look/figures-700.woff2',
  '/app/look/forms.css',
  '/app/look/frame.css',
  '/app/look/history.css',
  '/app/look/holder.css',
  '/app/look/inspect.css',
  '/app/look/keypad.css',
  '/app/look/photo.css',
  '/app/look/print.css',
  '/app/look/record.css',
  '/app/look/run.css',
  '/app/look/scan.css',
  '/app/look/sets.css',
  '/app/look/strip.css',
  '/app/look/tokens.css',
  '/app/look/workings.css',
  '/app/main.js',
  '/app/one_line.js',
  '/app/press.js',
  '/app/press_rules.js',
  '/app/router.js',
  '/app/routes.js',
  '/app/settings.js',
  '/app/start.js',
  '/app/texts/desk.js',
  '/app/texts/edit.js',
  '/app/texts/errors.js',
  '/app/texts/find.js',
  '/app/texts/forms.js',
  '/app/texts/frame.js',
  '/app/texts/index.js',
  '/app/texts/inspect.js',
  '/app/texts/joint.js',
  '/app/texts/kinds.js',
  '/app/texts/reasons.js',
  '/app/texts/record.js',
  '/app/texts/run.js',
  '/app/texts/scan.js',
  '/app/texts/sync.js',
  '/app/texts/tonight.js',
  '/app/texts/units.js',
  '/app/texts/workings.js',
  '/app/texts/workings_bolts.js',
  '/app/words.js',
  '/errors.js',
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
  '/log/headings/instrument.js',
  '/log/headings/joint.js',
  '/log/headings/kind.js',
  '/log/headings/label.js',
  '/log/headings/loosening.js',
  '/log/headings/note.js',
  '/log/headings/onward.js',
  '/log/headings/part.js',
  '/log/headings/photo.js',
  '/log/headings/place.js',
  '/log/headings/pointed.js',
  '/log/headings/pull.js',
  '/log/headings/purchase.js',
  '/log/headings/reading.js',
  '/log/headings/returned.js',
  '/log/headings/sent.js',
  '/log/headings/set.js',
  '/log/headings/sheet.js',
  '/log/headings/step.js',
  '/log/headings/strike_out.js',
  '/log/headings/study.js',
  '/log/headings/take.js',
  '/log/headings/touch.js',
  '/log/headings/trial.js',
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
  '/log/workshop.js',
  '/manifest.webmanifest',
  '/scan/camera.js',
  '/scan/codes.js',
  '/scan/eye.js',
  '/scan/index.js',
  '/scan/readers.js',
  '/scan/watch.js',
  '/scan/wedge.js',
  '/store/absorb.js',
  '/store/ask.js',
  '/store/browser.js',
  '/store/clock.js',
  '/store/core.js',
  '/store/crc32.js',
  '/store/database.js',
  '/store/file.js',
  '/store/fold.js',
  '/store/held.js',
  '/store/index.js',
  '/store/keep.js',
  '/store/mended.js',
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
  '/store/set_slices.js',
  '/store/settings.js',
  '/store/settle.js',
  '/store/slices.js',
  '/store/state.js',
  '/store/store.js',
  '/store/sync.js',
  '/store/transaction.js',
  '/store/update.js',
  '/store/wire.js',
  '/store/workshops.js',
  '/store/written.js',
  '/store/zip.js',
  '/trade/label.js',
  '/vendor/htm/htm.js',
  '/vendor/htm/preact.js',
  '/vendor/idb/index.js',
  '/vendor/preact/hooks.js',
  '/vendor/preact/preact.js',
  '/vendor/signals-core/signals-core.js',
  '/vendor/signals/signals.js',
];

/** The screens, and what only they load. @type {string[]} */
const SCREEN_FILES = [
  '/app/counted/counted.js',
  '/app/counted/entries.js',
  '/app/draft.js',
  '/app/drawing/casting.js',
  '/app/drawing/heads.js',
  '/app/drawing/joint_drawing.js',
  '/app/drawing/place.js',
  '/app/drawing/window.js',
  '/app/drawing/worn.js',
  '/app/drawing/worn_paths.js',
  '/app/edit/fields.js',
  '/app/edit/inputs.js',
  '/app/fit/entries.js',
  '/app/forms_fields.js',
  '/app/frame/asks.js',
  '/app/frame/before.js',
  '/app/frame/choices.js',
  '/app/frame/code_found.js',
  '/app/frame/contact.js',
  '/app/frame/facts.js',
  '/app/frame/grid.js',
  '/app/frame/inspections.js',
  '/app/frame/joint_card.js',
  '/app/frame/label_form.js',
  '/app/frame/maker.js',
  '/app/frame/many.js',
  '/app/frame/matrix.js',
  '/app/frame/note_sheet.js',
  '/app/frame/notes.js',
  '/app/frame/refused_pull.js',
  '/app/frame/repair.js',
  '/app/frame/row.js',
  '/app/frame/save_file.js',
  '/app/frame/ways.js',
  '/app/fresh_id.js',
  '/app/history/in_slices.js',
  '/app/history/lines.js',
  '/app/history/many.js',
  '/app/history/plot.js',
  '/app/history/says.js',
  '/app/history/share.js',
  '/app/history/sizes.js',
  '/app/inspect/deck.js',
  '/app/inspect/instrument.js',
  '/app/inspect/judging.js',
  '/app/inspect/measures.js',
  '/app/inspect/piece.js',
  '/app/inspect/pieces.js',
  '/app/inspect/plate.js',
  '/app/inspect/read.js',
  '/app/inspect/readings.js',
  '/app/inspect/says.js',
  '/app/inspect/sign.js',
  '/app/inspect/take_photo.js',
  '/app/instruments/edit.js',
  '/app/instruments/fields.js',
  '/app/instruments/form.js',
  '/app/instruments/says.js',
  '/app/joint_form/adapter.js',
  '/app/joint_form/bolt.js',
  '/app/joint_form/fasteners.js',
  '/app/joint_form/lubricant.js',
  '/app/joint_form/model.js',
  '/app/joint_form/parts.js',
  '/app/joint_form/passes.js',
  '/app/joint_form/plausible.js',
  '/app/joint_form/shape.js',
  '/app/joint_form/tool.js',
  '/app/kinds/example.js',
  '/app/kinds/fields.js',
  '/app/kinds/form.js',
  '/app/kinds/ready.js',
  '/app/kinds/rows.js',
  '/app/later.js',
  '/app/lubricants.js',
  '/app/new_thing/choice.js',
  '/app/new_thing/entries.js',
  '/app/new_thing/named.js',
  '/app/photo/arrows.js',
  '/app/photo/choose.js',
  '/app/photo/hands.js',
  '/app/photo/marks.js',
  '/app/photo/pane.js',
  '/app/photo/says.js',
  '/app/photo/use_mark.js',
  '/app/photo/use_views.js',
  '/app/photo/view.js',
  '/app/photo/zoom.js',
  '/app/quantities.js',
  '/app/read_ahead.js',
  '/app/read_all.js',
  '/app/reduce_photo.js',
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
  '/app/run/half_typed.js',
  '/app/run/keeping.js',
  '/app/run/keypad.js',
  '/app/run/keys.js',
  '/app/run/marks.js',
  '/app/run/ready.js',
  '/app/run/reason.js',
  '/app/run/setting_now.js',
  '/app/run/sitting.js',
  '/app/run/source_line.js',
  '/app/run/typed.js',
  '/app/run/use_digits.js',
  '/app/run/use_joint.js',
  '/app/run/use_run.js',
  '/app/screens/away.js',
  '/app/screens/back.js',
  '/app/screens/back_all.js',
  '/app/screens/bind.js',
  '/app/screens/builds.js',
  '/app/screens/calibrate.js',
  '/app/screens/choose.js',
  '/app/screens/code.js',
  '/app/screens/devices.js',
  '/app/screens/donor.js',
  '/app/screens/donors.js',
  '/app/screens/edit.js',
  '/app/screens/even.js',
  '/app/screens/find.js',
  '/app/screens/fit.js',
  '/app/screens/history_donor.js',
  '/app/screens/history_kind.js',
  '/app/screens/history_part.js',
  '/app/screens/holder.js',
  '/app/screens/home.js',
  '/app/screens/inspect.js',
  '/app/screens/instrument.js',
  '/app/screens/instrument_edit.js',
  '/app/screens/joint.js',
  '/app/screens/joint_edit.js',
  '/app/screens/kind.js',
  '/app/screens/kinds.js',
  '/app/screens/label.js',
  '/app/screens/labels.js',
  '/app/screens/lost.js',
  '/app/screens/more.js',
  '/app/screens/move.js',
  '/app/screens/new.js',
  '/app/screens/pair.js',
  '/app/screens/part.js',
  '/app/screens/photo.js',
  '/app/screens/reading.js',
  '/app/screens/refused.js',
  '/app/screens/scan.js',
  '/app/screens/send.js',
  '/app/screens/set.js',
  '/app/screens/sets.js',
  '/app/screens/settings.js',
  '/app/screens/shelf.js',
  '/app/screens/shells.js',
  '/app/screens/strike.js',
  '/app/screens/strip.js',
  '/app/screens/studies.js',
  '/app/screens/study.js',
  '/app/screens/sync.js',
  '/app/screens/tonight.js',
  '/app/screens/working.js',
  '/app/screens/workings.js',
  '/app/screens/wrench.js',
  '/app/screens/wrench_edit.js',
  '/app/screens/wrenches.js',
  '/app/sets/accept.js',
  '/app/sets/choose.js',
  '/app/sets/even_entries.js',
  '/app/sets/even_model.js',
  '/app/sets/even_places.js',
  '/app/sets/for_build.js',
  '/app/sets/kinds.js',
  '/app/sets/listed.js',
  '/app/sets/model.js',
  '/app/sets/pieces.js',
  '/app/sets/places.js',
  '/app/sets/plot.js',
  '/app/sets/read.js',
  '/app/sets/ready.js',
  '/app/sets/says.js',
  '/app/sets/shells_entries.js',
  '/app/sets/shells_form.js',
  '/app/sets/shells_model.js',
  '/app/sets/shells_readings.js',
  '/app/sets/shells_stock.js',
  '/app/sets/standing.js',
  '/app/shelf/batches.js',
  '/app/shelf/came_back.js',
  '/app/shelf/entries.js',
  '/app/shelf/on_shelf.js',
  '/app/shelf/read.js',
  '/app/shelf/says.js',
  '/app/shelf/whole.js',
  '/app/strip/bagged.js',
  '/app/strip/entries.js',
  '/app/strip/label.js',
  '/app/strip/place.js',
  '/app/strip/which.js',
  '/app/study/form.js',
  '/app/study/hand.js',
  '/app/study/plot.js',
  '/app/study/read.js',
  '/app/study/run.js',
  '/app/study/says.js',
  '/app/study/standing.js',
  '/app/study/table.js',
  '/app/texts/builds.js',
  '/app/texts/even.js',
  '/app/texts/history.js',
  '/app/texts/inspect_measures.js',
  '/app/texts/instruments.js',
  '/app/texts/photo.js',
  '/app/texts/quantities.js',
  '/app/texts/ready_around.js',
  '/app/texts/ready_block.js',
  '/app/texts/ready_crank.js',
  '/app/texts/ready_valves.js',
  '/app/texts/sets.js',
  '/app/texts/shelf.js',
  '/app/texts/shells.js',
  '/app/texts/strip.js',
  '/app/texts/study.js',
  '/app/texts/workings_engine.js',
  '/app/until_changed.js',
  '/app/values.js',
  '/app/workings/draw_adapter.js',
  '/app/workings/draw_bring.js',
  '/app/workings/draw_clearance.js',
  '/app/workings/draw_preload.js',
  '/app/workings/draw_ratio.js',
  '/app/workings/draw_ring_gap.js',
  '/app/workings/draw_set.js',
  '/app/workings/draw_stretch.js',
  '/app/workings/drawing.js',
  '/app/workings/fields.js',
  '/app/workings/first.js',
  '/app/workings/keep.js',
  '/app/workings/marks.js',
  '/app/workings/note.js',
  '/app/workings/outcome.js',
  '/app/workings/told.js',
  '/app/workings/use_working.js',
  '/app/workings/words.js',
  '/changes.json',
  '/trade/adapter.js',
  '/trade/alike.js',
  '/trade/amounts.js',
  '/trade/assemblies.js',
  '/trade/assignment.js',
  '/trade/beta.js',
  '/trade/both_ends.js',
  '/trade/choosing.js',
  '/trade/compression_ratio.js',
  '/trade/dimension.js',
  '/trade/even_totals.js',
  '/trade/exact.js',
  '/trade/fit.js',
  '/trade/gauge_errors.js',
  '/trade/gauge_study.js',
  '/trade/geometry.js',
  '/trade/interaction.js',
  '/trade/limits.js',
  '/trade/lubricant.js',
  '/trade/money.js',
  '/trade/money_codes.js',
  '/trade/money_errors.js',
  '/trade/narrowest.js',
  '/trade/number.js',
  '/trade/plausibility.js',
  '/trade/preload.js',
  '/trade/rule_of_thumb.js',
  '/trade/sequence.js',
  '/trade/set_bounds.js',
  '/trade/set_errors.js',
  '/trade/set_limits.js',
  '/trade/set_pick.js',
  '/trade/set_search.js',
  '/trade/set_window.js',
  '/trade/sets.js',
  '/trade/shape.js',
  '/trade/strength.js',
  '/trade/stretch.js',
  '/trade/thread.js',
  '/trade/thread_errors.js',
  '/trade/thread_inches.js',
  '/trade/thread_tables.js',
  '/trade/thread_text.js',
  '/trade/together.js',
  '/trade/torque.js',
  '/trade/torque_form.js',
  '/trade/typed.js',
  '/trade/unit_errors.js',
  '/trade/unit_spelled.js',
  '/trade/unit_spellings.js',
  '/trade/unit_words.js',
  '/trade/units.js',
  '/trade/workings/adapter.js',
  '/trade/workings/bolts.js',
  '/trade/workings/bring.js',
  '/trade/workings/cautions.js',
  '/trade/workings/clearance.js',
  '/trade/workings/convert.js',
  '/trade/workings/errors.js',
  '/trade/workings/given.js',
  '/trade/workings/lines.js',
  '/trade/workings/preload.js',
  '/trade/workings/ratio.js',
  '/trade/workings/reading.js',
  '/trade/workings/registry.js',
  '/trade/workings/ring_gap.js',
  '/trade/workings/rows.js',
  '/trade/workings/sets.js',
  '/trade/workings/stretch.js',
  '/trade/workings/working.js',
  '/trade/wrench.js',
  '/trade/yield_series.js',
  '/trade/yields.js',
  '/views/applied.js',
  '/views/away.js',
  '/views/calibration.js',
  '/views/chosen.js',
  '/views/code.js',
  '/views/counted.js',
  '/views/course.js',
  '/views/donor.js',
  '/views/find.js',
  '/views/find_row.js',
  '/views/held.js',
  '/views/history.js',
  '/views/history_counts.js',
  '/views/history_lines.js',
  '/views/history_points.js',
  '/views/holder.js',
  '/views/holder_rows.js',
  '/views/how_many.js',
  '/views/instrument.js',
  '/views/joint.js',
  '/views/joint_asks.js',
  '/views/joint_lines.js',
  '/views/joint_state.js',
  '/views/judging.js',
  '/views/kind_of.js',
  '/views/measured.js',
  '/views/moments.js',
  '/views/near.js',
  '/views/next_piece.js',
  '/views/next_place.js',
  '/views/out_of_round.js',
  '/views/own_place.js',
  '/views/part.js',
  '/views/pictures.js',
  '/views/plain.js',
  '/views/pool.js',
  '/views/programme.js',
  '/views/progress.js',
  '/views/pulls.js',
  '/views/reading.js',
  '/views/runs.js',
  '/views/setting.js',
  '/views/shelf.js',
  '/views/sizes.js',
  '/views/study.js',
  '/views/study_plan.js',
  '/views/study_result.js',
  '/views/summary.js',
  '/views/things.js',
  '/views/told.js',
  '/views/tonight.js',
  '/views/wrenches.js',
];

const DECODER = '5ffb59ba87b8';

/** What only the readers of labels load, in workers of their own. @type {string[]} */
const DECODER_FILES = [
  '/scan/align.js',
  '/scan/answer.js',
  '/scan/believe.js',
  '/scan/corner_squares.js',
  '/scan/decipher.js',
  '/scan/deep.js',
  '/scan/expected.js',
  '/scan/first_guess.js',
  '/scan/galois.js',
  '/scan/grid.js',
  '/scan/homography.js',
  '/scan/layout.js',
  '/scan/locate.js',
  '/scan/nearest.js',
  '/scan/planes.js',
  '/scan/reader.js',
  '/scan/single_guess.js',
  '/scan/square_fit.js',
  '/scan/symbol_guess.js',
  '/scan/worker.js',
  '/vendor/zxing-wasm/es/reader/index.js',
  '/vendor/zxing-wasm/es/share.js',
  '/vendor/zxing-wasm/reader/zxing_reader.wasm',
];

/** @typedef {{cache: string, pack: string, files: string[]}} Part */
/**
 * What a pack says first: lengths in the order of the part's list, null for a file that is not in
 * it; types by ending; sheets that were joined into one, and where that one lies.
 * @typedef {{lengths: (number|null)[], types: Record<string, string>, joined?: string[],
 *   beside?: string[]}} Told
 */

/** @type {Part} */
const SHELL = { cache: `shell ${VERSION}`, pack: `/pack/${VERSION}/shell`, files: SHELL_FILES };

/** @type {Part} */
const SCREENS = {
  cache: `screens ${VERSION}`,
  pack: `/pack/${VERSION}/screens`,
  files: SCREEN_FILES,
};

/** Has a mark of its own: a new version of the page need not fetch the same decoder. @type {Part} */
const READER = {
  cache: `decoder ${DECODER}`,
  pack: `/pack/${DECODER}/decoder`,
  files: DECODER_FILES,
};

/** Kept last: a cache without it was interrupted. */
const WHOLE = '/whole';

/** Paths that are the computer's, not the page's. */
const NOT_OURS = /^\/(?:api|demo)(?:\/|$)|^\/ca\.crt$/;

/** What says how one answer was sent, not what it is. */
const OF_THE_WAY = ['Content-Encoding', 'Content-Length', 'ETag', 'Vary', 'Cache-Control', 'Date'];

/**
 * One stream with all files of a part; null where the computer has none and sends them singly.
 * @param {Part} part
 */
async function packOf(part) {
  const answer = await fetch(part.pack);
  const kind = answer.headers.get('Content-Type') ?? '';
  if (!answer.ok || !kind.startsWith('application/octet-stream')) return null;
  const body = new Uint8Array(await answer.arrayBuffer());
  const end = body.indexOf(10);
  /** @type {Told} */
  const told = JSON.parse(new TextDecoder().decode(body.subarray(0, end)));
  const length = told.lengths.reduce((/** @type {number} */ sum, one) => sum + (one ?? 0), end + 1);
  if (length !== body.length || told.lengths.length !== part.files.length)
    throw new TypeError('a pack that is not whole');
  const headers = new Headers(answer.headers);
  for (const name of OF_THE_WAY) headers.delete(name);
  return { told, body: body.subarray(end + 1), headers };
}

/**
 * Lays the files of a pack into a cache, each as if it had come alone; gives what is left to fetch.
 * @param {Cache} cache
 * @param {Part} part
 */
async function unpack(cache, part) {
  const pack = await packOf(part);
  if (!pack) return part.files;
  const { told, body, headers } = pack;
  const there = new Set(told.joined);
  const laid = [];
  let at = 0;
  for (const [number, path] of part.files.entries()) {
    const length = told.lengths[number] ?? null;
    if (length === null) continue;
    const own = new Headers(headers);
    own.set('Content-Type', told.types[path.slice(path.lastIndexOf('.'))] ?? '');
    laid.push(cache.put(path, new Response(body.subarray(at, at + length), { headers: own })));
    there.add(path);
    at += length;
  }
  await Promise.all(laid);
  await cache.addAll(told.beside ?? []);
  return part.files.filter((path) => !there.has(path));
}

/** Files that came singly are of one version only if the computer still has this one afterwards. */
async function stillThisVersion() {
  const now = await fetch('/sw.js', { cache: 'no-cache' });
  if (!(await now.text()).includes(VERSION)) throw new TypeError('another version by now');
}

/** Parts found whole, so that each is looked for once in a worker's life. @type {Set<string>} */
const foundWhole = new Set();

/** @param {string} cacheName */
async function isWhole(cacheName) {
  if (!foundWhole.has(cacheName) && (await caches.match(WHOLE, { cacheName })))
    foundWhole.add(cacheName);
  return foundWhole.has(cacheName);
}

/** @param {Part} part */
async function fetchPart(part) {
  if (await isWhole(part.cache)) return;
  const cache = await caches.open(part.cache);
  try {
    const left = await unpack(cache, part);
    const singly = left.length === part.files.length;
    if (singly) await stillThisVersion();
    await cache.addAll(left.map((path) => new Request(path, { cache: 'no-cache' })));
    if (singly) await stillThisVersion();
    await cache.put(WHOLE, new Response());
  } catch (error) {
    await caches.delete(part.cache);
    throw error;
  }
}

/**
 * Brings a part unless it is here; whoever asks meanwhile, also another worker, waits for the same.
 * @param {Part} part
 */
async function fill(part) {
  if (await isWhole(part.cache)) return;
  await navigator.locks.request(part.cache, () => fetchPart(part));
}

/** Whether the version before this one has all its screens; until then it was named a page. */
async function earlierIsWhole() {
  for (const name of await caches.keys())
    if (name !== SCREENS.cache && /^(?:screens|page) /.test(name) && (await isWhole(name)))
      return true;
  return false;
}

/**
 * The first version of all opens with its shell, and the rest comes behind. A later one must be
 * whole. Its screens come last: where they are whole, all of their version is.
 */
async function install() {
  await fill(SHELL);
  if (!worker.registration.active) return;
  await fill(READER);
  await fill(SCREENS);
  // One that lacks screens cannot get them any more: the computer has only the new ones.
  if (!(await earlierIsWhole())) worker.skipWaiting();
}

/** What the first version opened without. What does not come is asked for at the next start. */
function bringRest() {
  return fill(SCREENS)
    .then(() => fill(READER))
    .catch(() => undefined);
}

async function sweep() {
  const ours = [SHELL, SCREENS, READER].map(({ cache }) => cache);
  const old = (await caches.keys()).filter((name) => !ours.includes(name));
  await Promise.all(old.map((name) => caches.delete(name)));
  await worker.clients.claim();
}

/**
 * A screen that is not here yet waits for all of them, never fetched alone: the computer may have
 * another version by now.
 * @param {Request} request
 */
async function answer(request) {
  const path = request.mode === 'navigate' ? '/' : new URL(request.url).pathname;
  const later = [SCREENS, READER].find(({ files }) => files.includes(path));
  if (later) await fill(later).catch(() => fill(later));
  const { cache } = later ?? SHELL;
  return (await caches.match(path, { cacheName: cache })) ?? fetch(request);
}

async function wakePages() {
  const pages = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
  for (const page of pages) page.postMessage('sync');
}

worker.addEventListener('install', (event) => event.waitUntil(install()));

worker.addEventListener('activate', (event) => {
  event.waitUntil(sweep());
  // Not waited for: the page opens meanwhile, and then asks for it in a way that is.
  bringRest();
});

worker.addEventListener('fetch', (event) => {
  const { method, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== location.origin || NOT_OURS.test(pathname)) return;
  event.respondWith(answer(event.request));
});

worker.addEventListener('message', (event) => {
  // The page asks for this only when nothing is unsaved in any tab.
  if (event.data === 'take over') worker.skipWaiting();
  // At each start; goes on when the page is closed.
  if (event.data === 'bring the rest') event.waitUntil(bringRest());
});

worker.addEventListener('sync', (event) => {
  /** @type {ExtendableEvent} */ (event).waitUntil(wakePages());
});
