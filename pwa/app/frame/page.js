/** The frame of every screen: demo line, top, what it is, doors. */
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { Icon } from '../icons.js';
import { cameFrom, canGoBack, fits, back as goBack, place, remembered } from '../router.js';
import { settings } from '../settings.js';
import { t } from '../texts/index.js';
import { capital } from '../words.js';
import { demo } from './demo.js';
import { usePrintFoot } from './foot.js';
import { html } from './html.js';
import { SyncMark } from './sync_mark.js';

const doors = ['scan', 'tonight', 'find', 'more'];

/**
 * The four doors; the one for the thumb of a left hand stands last.
 * @param {{now?: string}} props
 */
export function Doors({ now }) {
  const order = settings.hand.value === 'left' ? [...doors.slice(1), 'scan'] : doors;
  return html`<nav class="doors" aria-label=${t('doors')}>${order.map(
    (door) => html`<a key=${door} href=${`/${door}`} class=${door === 'scan' ? 'scan' : ''}
      aria-current=${door === now ? 'page' : undefined}><${Icon} name=${`i-${door}`} /><span>${t(`doors.${door}`)}</span></a>`,
  )}</nav>`;
}

/** Back to where the person came from; `to` when they came from nowhere. @param {{to: string, says: string}} props */
function Back({ to, says }) {
  const words = (canGoBack() ? cameFrom() : fits(says)) || t('back');
  return html`<a class="press" href=${to} data-back onClick=${(/** @type {MouseEvent} */ click) => {
    click.preventDefault();
    goBack(to);
  }}><${Icon} name="i-back" />${capital(words)}</a>`;
}

/**
 * Back at the left, sync at the right.
 * @param {{back?: {to: string, says: string} | null, children?: any}} props
 */
export function Top({ back, children }) {
  const way = back && html`<${Back} ...${back} />`;
  return html`<div class="top">${way ?? children ?? html`<span></span>`}<${SyncMark} /></div>`;
}

/** The line that says that what is shown was made up. @param {{on?: boolean}} props */
export function DemoLine({ on }) {
  const shown = Boolean(on) || demo.value;
  const line = useRef(/** @type {HTMLElement | null} */ (null));
  // Before the first paint: a run, and the rail of doors, begin below this line, however high it is.
  useLayoutEffect(() => {
    const { dataset, style } = document.documentElement;
    dataset.demo = shown ? 'yes' : 'no';
    const measure = () =>
      style.setProperty('--demo', `${line.current?.getBoundingClientRect().height ?? 0}px`);
    measure();
    if (!line.current) return undefined;
    const watch = new ResizeObserver(measure);
    watch.observe(line.current);
    return () => watch.disconnect();
  }, [shown]);
  return shown ? html`<p class="demo" ref=${line}>${t('demo')}</p>` : null;
}

/** Names the page, and puts focus and scroll where the person left them. @param {string} title @param {boolean} ready */
export function useArrival(title, ready) {
  const arrived = useRef('');
  useEffect(() => {
    document.title = title ? `${title} · Witnessmark` : 'Witnessmark';
  }, [title]);
  const { key } = place.value;
  useEffect(() => {
    if (!ready || arrived.current === key) return;
    arrived.current = key;
    const was = remembered();
    const heading = document.querySelector('h1[tabindex]');
    const wanted = was?.focus ? document.querySelector(was.focus) : null;
    scrollTo(0, was?.y ?? 0);
    /** @type {HTMLElement | null} */ (wanted ?? heading)?.focus({ preventScroll: true });
  }, [key, ready]);
}

/**
 * @typedef {object} PageProps
 * @property {string} title
 * @property {string} [code] of what it shows, for the foot of a printed page
 * @property {{to: string, says: string} | null} [back]
 * @property {'scan' | 'tonight' | 'find' | 'more'} [now] the door this screen stands behind
 * @property {boolean} [demo] whether it shows an invented value
 * @property {boolean} [quiet] without doors
 * @property {boolean} [ready] whether what it is about has been read
 * @property {string} [className]
 * @property {any} [children] `.left`, what it is and the main action; `.right`, the long part
 */

/**
 * A screen.
 * @param {PageProps} props
 */
export function Page({
  title,
  code,
  back,
  now,
  demo: invented,
  quiet,
  ready = true,
  className = '',
  children,
}) {
  useArrival(title, ready);
  usePrintFoot(title, code);
  return html`<div class=${quiet ? 'quiet' : ''}><header><${DemoLine} on=${invented} /><${Top} back=${back} /></header>
    <main class=${`cols ${className}`} aria-busy=${String(!ready)}>${children}</main>${!quiet && html`<${Doors} now=${now} />`}</div>`;
}
