/** The camera with its outlines, and the three other ways to say a code: type it, light, photo. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { readImage, startScan } from '../../scan/index.js';
import { feedback } from '../feedback.js';
import { whenStill } from '../press.js';
import { t } from '../texts/index.js';
import { Act, Key } from './act.js';
import { html } from './html.js';
import { say } from './live.js';
import { Outlines } from './outlines.js';
import { TypedCode } from './typed_code.js';

/** @typedef {{code: string, box: number[][]}} Found */

/** An outline older than this is no longer where the label is; a label unseen this long has left, in ms. */
const LAPSE = { outline: 600, label: 1000 };

/** Labels nearest to the middle of the picture first. @param {Found[]} codes @param {HTMLVideoElement} video */
function nearestFirst(codes, video) {
  const away = (/** @type {Found} */ { box }) => {
    const x = box.reduce((sum, point) => sum + (point[0] ?? 0), 0) / box.length;
    const y = box.reduce((sum, point) => sum + (point[1] ?? 0), 0) / box.length;
    return (x - video.videoWidth / 2) ** 2 + (y - video.videoHeight / 2) ** 2;
  };
  return [...codes].sort((a, b) => away(a) - away(b));
}

/** Labels of the last moment together: one that one picture missed has not left. */
function makeRecent() {
  /** @type {Map<string, Found & {at: number}>} */
  const kept = new Map();
  return (/** @type {Found[]} */ codes, /** @type {number} */ now) => {
    for (const found of codes) kept.set(found.code, { ...found, at: now });
    for (const [code, { at }] of kept) if (now - at > LAPSE.label) kept.delete(code);
    return [...kept.values()];
  };
}

/**
 * Watches through the camera and says what it read.
 * @param {(codes: string[], how: string) => void} onCodes
 */
function useCamera(onCodes) {
  const video = useRef(/** @type {HTMLVideoElement | null} */ (null));
  const scan = useRef(/** @type {any} */ (null));
  const [state, setState] = useState('starting');
  const [seen, setSeen] = useState(/** @type {Found[]} */ ([]));
  const [other, setOther] = useState('');
  const hear = useRef(onCodes);
  hear.current = onCodes;
  useEffect(() => {
    const eye = /** @type {HTMLVideoElement} */ (video.current);
    let lapse = 0;
    const recent = makeRecent();
    const onRead = (/** @type {{codes: any[]}} */ read) => {
      const codes = nearestFirst(recent(read.codes, performance.now()), eye);
      setSeen(codes);
      setOther('');
      clearTimeout(lapse);
      lapse = window.setTimeout(() => setSeen([]), LAPSE.outline);
      hear.current(
        codes.map(({ code }) => code),
        'camera',
      );
    };
    scan.current = startScan(eye, {
      onRead,
      onState: setState,
      onOther: ({ why }) => setOther(why),
    });
    return () => {
      clearTimeout(lapse);
      scan.current.stop();
    };
  }, []);
  return { video, scan, state, seen, other };
}

/** The light, where the lens has one. @param {{scan: any, main: boolean}} props */
function Light({ scan, main }) {
  const [on, setOn] = useState(false);
  const turn = async () => {
    const has = await scan.current?.setTorch(!on);
    if (has) setOn(!on);
    else say(t('scan.no-light'));
  };
  if (main)
    return html`<${Act} label=${t('scan.light')} second=${t('scan.dark')} onPress=${turn} />`;
  return html`<${Key} className="press" icon="i-light" label=${t('scan.light')} pressed=${on} onPress=${turn} />`;
}

/** Reads a label from a photo. @param {{onCodes: (codes: string[], how: string) => void}} props */
function FromPhoto({ onCodes }) {
  const input = useRef(/** @type {HTMLInputElement | null} */ (null));
  const read = async () => {
    const file = input.current?.files?.[0];
    if (!file) return;
    const found = await readImage(file);
    if (input.current) input.current.value = '';
    if (found.length === 0) say(t('scan.photo.none'));
    if (found.length === 0) feedback('wrong');
    onCodes(
      found.map(({ code }) => code),
      'photo',
    );
  };
  return html`<${Key} className="press" icon="i-photo" label=${t('scan.photo')} onPress=${() => input.current?.click()} />
    <input ref=${input} type="file" accept="image/*" hidden onChange=${read} />`;
}

/** Another lens, where there are several. @param {{scan: any, state: string}} props */
function Lens({ scan, state }) {
  const [lenses, setLenses] = useState(/** @type {{id: string, name: string}[]} */ ([]));
  const [at, setAt] = useState(0);
  useEffect(() => {
    if (state === 'looking') scan.current?.lenses().then(setLenses);
  }, [state]);
  if (lenses.length < 2) return null;
  const next = () => {
    const turn = (at + 1) % lenses.length;
    setAt(turn);
    return scan.current?.useLens(lenses[turn]?.id);
  };
  return html`<${Key} className="press" icon="i-scan" label=${t('scan.lens')} spoken=${t('scan.lens.spoken', { name: lenses[at]?.name ?? '' })} onPress=${next} />`;
}

/** Closer, where the lens can. @param {{scan: any, state: string}} props */
function Zoom({ scan, state }) {
  const [times, setTimes] = useState(1);
  const range = state === 'starting' ? null : scan.current?.abilities?.().zoom;
  if (!range || range.max < 2) return null;
  const next = times >= Math.min(4, range.max) ? Math.max(1, range.min) : times * 2;
  const turn = async () => (await scan.current.setZoom(next)) && setTimes(next);
  return html`<${Key} className="press" icon="i-find" label=${t('scan.zoom', { times: next })} onPress=${turn} />`;
}

/** What the camera says of itself, in one sentence. @param {string} state @param {string} other */
function sentence(state, other) {
  if (other) return t(`scan.other.${other}`);
  return t(`scan.state.${state}`);
}

/**
 * @param {{onCodes: (codes: string[], how: string) => void, title: string, hint?: string, found?: boolean, top?: any, children?: any}} props
 *   `found`: something to act on stands in children; `children`: the panel at the foot
 */
export function Scanner({ onCodes, title, hint, found = false, top, children }) {
  const last = useRef('');
  const begun = useRef(false);
  const [typing, setTyping] = useState(false);
  const tell = async (/** @type {string[]} */ codes, /** @type {string} */ how) => {
    const key = [...codes].sort().join(' ');
    if (key === last.current || codes.length === 0) return;
    last.current = key;
    // A label read by the camera takes over from a keypad nobody has used yet.
    if (!begun.current) setTyping(false);
    feedback('read');
    await whenStill();
    onCodes(codes, how);
  };
  const { video, scan, state, seen, other } = useCamera(tell);
  const blind = state === 'no-camera' || state === 'refused';
  useEffect(() => {
    if (state === 'hard') setTyping(true);
  }, [state]);
  const typed = (/** @type {string} */ code) => {
    setTyping(false);
    tell([code], 'typed');
  };
  const words = hint && state === 'looking' && !other ? hint : sentence(state, other);
  return html`<main class="scene"><div class="picture" aria-hidden="true"><video ref=${video} playsinline muted autoplay></video><${Outlines} seen=${seen} video=${video} /></div>
    ${top}<h1 class=${typing || (found && state === 'looking') ? 'gone' : 'says-what'} tabindex="-1"><span class="gone">${title}. </span>${words}</h1>
    <section class="found">${
      !typing &&
      html`<div class="ways"><${Key} className="press" icon="i-type" label=${t('scan.type')} onPress=${() => setTyping(true)} />
    <${Light} scan=${scan} main=${false} /><${FromPhoto} onCodes=${tell} /><${Lens} scan=${scan} state=${state} /><${Zoom} scan=${scan} state=${state} /></div>`
    }
    ${
      typing
        ? html`<${TypedCode} onCode=${typed} onClose=${() => setTyping(false)} onTyped=${(
            /** @type {string} */ words,
          ) => {
            begun.current = words !== '';
          }} />`
        : html`<div role="status">${children}</div>`
    }
    ${!typing && !found && state === 'dark' && html`<${Light} scan=${scan} main=${true} />`}
    ${!typing && !found && blind && html`<${Act} label=${t('scan.type')} second=${t('scan.type.second')} onPress=${() => setTyping(true)} />`}</section></main>`;
}
