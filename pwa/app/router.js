/** Where the person is: the address decides the screen; going back finds the place again. */
import { signal } from '@preact/signals';

/**
 * What an address asks for.
 * @typedef {{path: string, query: Record<string, string>, key: string}} Place
 */

/** @type {Map<string, {y: number, focus: string | null}>} */
const places = new Map();
let count = 0;
/** Which way was asked for last; an older one that was still reading is dropped. */
let turn = 0;

/** @returns {Place} */
function here() {
  const query = Object.fromEntries(new URLSearchParams(location.search));
  return { path: location.pathname, query, key: history.state?.key ?? 'first' };
}

/** The place shown now. */
export const place = signal(here());

/** A way to find the pressed element again after coming back. @param {Element | null} element */
function nameOf(element) {
  if (!element || element === document.body) return null;
  const href = element.getAttribute('href');
  if (href) return `[href="${CSS.escape(href)}"]`;
  return element.id ? `#${CSS.escape(element.id)}` : null;
}

function leave() {
  const focus = nameOf(document.activeElement);
  places.set(place.peek().key, { y: scrollY, focus });
}

/**
 * Goes to another screen.
 * @param {string} path
 * @param {{replace?: boolean}} [how]
 */
export function go(path, { replace = false } = {}) {
  leave();
  turn += 1;
  count += 1;
  const depth = (history.state?.depth ?? 0) + (replace ? 0 : 1);
  const from = replace ? history.state?.from : document.title.replace(' · Witnessmark', '');
  const state = { key: `${Date.now()}-${count}`, depth, from };
  if (replace) history.replaceState(state, '', path);
  else history.pushState(state, '', path);
  place.value = here();
}

/** @type {(path: string) => Promise<string> | null} */
let readFirst = () => null;

/**
 * What has to be read before a pressed address is shown, and where it leads then.
 * @param {(path: string) => Promise<string> | null} read null when there is nothing to wait for
 */
export function readBeforeShown(read) {
  readFirst = read;
}

/**
 * Goes to another screen once what it shows has been read; until then the one before stays.
 * @param {string} path
 */
export function open(path) {
  const reading = readFirst(path);
  if (!reading) {
    go(path);
    return;
  }
  turn += 1;
  const mine = turn;
  reading.then((to) => {
    if (mine === turn) go(to);
  });
}

/** Goes back to the screen this one was opened from. @param {string} [otherwise] */
export function back(otherwise = '/') {
  if (history.state?.depth > 0) history.back();
  else go(otherwise, { replace: true });
}

/** The longest name that stands beside the arrow; a longer one would push the sync mark away. */
const LONGEST = 16;

/** A name that fits beside the arrow, or an empty text. @param {string} name */
export const fits = (name) => (name.length <= LONGEST ? name : '');

/** What the screen before this one is called, or an empty text. */
export const cameFrom = () => fits(history.state?.from ?? '');

/** Whether there is a screen before this one. */
export const canGoBack = () => history.state?.depth > 0;

/** What was kept of a place: how far it was scrolled and what had the focus. */
export function remembered() {
  return places.get(place.peek().key) ?? null;
}

/** @param {MouseEvent} click */
function isPlain(click) {
  return click.button === 0 && !(click.metaKey || click.ctrlKey || click.shiftKey || click.altKey);
}

/** The link of ours that was pressed, if it was one. @param {MouseEvent} click */
function linkOf(click) {
  if (click.defaultPrevented || !isPlain(click)) return null;
  const link = /** @type {Element} */ (click.target).closest('a[href]');
  if (!(link instanceof HTMLAnchorElement)) return null;
  const away = link.origin !== location.origin || link.target || link.hasAttribute('download');
  return away || link.pathname.startsWith('/api/') ? null : link;
}

/** Takes over links inside the page and the browser's own back. */
export function startRouter() {
  history.scrollRestoration = 'manual';
  if (!history.state?.key) history.replaceState({ key: 'first', depth: 0 }, '');
  place.value = here();
  addEventListener('popstate', () => {
    turn += 1;
    leave();
    place.value = here();
  });
  document.addEventListener('click', (click) => {
    const link = linkOf(click);
    if (!link || link.hash.length > 1) return;
    click.preventDefault();
    open(link.pathname + link.search);
  });
}
