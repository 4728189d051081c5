/** The camera as a screen sees it: its state, the labels in the picture, what else was seen. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { startScan } from '../../scan/index.js';

/** @typedef {{code: string, box: number[][]}} Found */

/** An outline or remark older than this is past; a label unseen this long has left, in ms. */
const LAPSE = { outline: 600, label: 1000, remark: 4000 };

/** The middle of a box. @param {number[][]} box @returns {[number, number]} */
export function middle(box) {
  const sum = (/** @type {number} */ axis) =>
    box.reduce((total, point) => total + (point[axis] ?? 0), 0) / box.length;
  return [sum(0), sum(1)];
}

/** Labels nearest to the middle of the picture first. @param {Found[]} codes @param {HTMLVideoElement} video */
function nearestFirst(codes, video) {
  const away = (/** @type {Found} */ { box }) => {
    const [x, y] = middle(box);
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
 * A value that goes back to what it was before after a while.
 * @template T
 * @param {T} rest
 * @param {number} after
 * @returns {[T, (value: T) => void]}
 */
function useLapsing(rest, after) {
  const [value, setValue] = useState(rest);
  const timer = useRef(0);
  const set = (/** @type {T} */ next) => {
    setValue(next);
    clearTimeout(timer.current);
    timer.current = window.setTimeout(() => setValue(rest), after);
  };
  useEffect(() => () => clearTimeout(timer.current), []);
  return [value, set];
}

/**
 * Watches through the camera and says what it read.
 * @param {(codes: string[], how: string) => void} onCodes
 */
export function useCamera(onCodes) {
  const video = useRef(/** @type {HTMLVideoElement | null} */ (null));
  const scan = useRef(/** @type {any} */ (null));
  const [state, setState] = useState('starting');
  const [seen, setSeen] = useLapsing(/** @type {Found[]} */ ([]), LAPSE.outline);
  const [remark, setRemark] = useLapsing('', LAPSE.remark);
  const hear = useRef(onCodes);
  hear.current = onCodes;
  useEffect(() => {
    const eye = /** @type {HTMLVideoElement} */ (video.current);
    const recent = makeRecent();
    const onRead = (/** @type {{codes: any[]}} */ read) => {
      const codes = nearestFirst(recent(read.codes, performance.now()), eye);
      const names = codes.map(({ code }) => code);
      setSeen(codes);
      hear.current(names, 'camera');
    };
    const onOther = (/** @type {{why: string}} */ { why }) => setRemark(why);
    scan.current = startScan(eye, { onRead, onState: setState, onOther });
    return () => scan.current.stop();
  }, []);
  return { video, scan, state, seen, remark, setRemark };
}
