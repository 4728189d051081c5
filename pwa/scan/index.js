/** Scanning: labels from the camera, from a photo, from a keyboard-wedge reader. */
import { abilities, adjust, lenses } from './camera.js';
import { closeEye, makeEye, openEye } from './eye.js';
import { grab, openReader } from './readers.js';
import { makeWatch } from './watch.js';

export { readWedge } from './wedge.js';

/** @typedef {import('./codes.js').Found} Found */
/** @typedef {import('./watch.js').State} State */
/** @typedef {import('./watch.js').Hearers & {torch?: boolean, lens?: string}} Wishes */
/**
 * @typedef {object} Scan
 * @property {() => void} stop
 * @property {(on: boolean) => Promise<boolean>} setTorch whether the lens has a light
 * @property {(times: number) => Promise<boolean>} setZoom whether the lens can zoom
 * @property {() => ReturnType<typeof abilities>} abilities
 * @property {() => Promise<import('./camera.js').Lens[]>} lenses
 * @property {(id: string) => Promise<void>} useLens
 * @property {(photo: Blob) => Promise<Found[]>} readImage
 */

/**
 * Look for labels through the camera until stopped. The fast reader never waits for the slow one.
 * @param {HTMLVideoElement} video wants playsinline and muted
 * @param {Wishes} wishes
 * @returns {Scan}
 */
export function startScan(video, wishes) {
  const watch = makeWatch(wishes);
  const readers = [openReader('fast'), openReader('slow')];
  const eye = makeEye(video, { ...wishes, say: watch.say, onPicture: show });

  /** @param {() => boolean} current whether an answer is still wanted */
  function show(current) {
    for (const reader of readers) {
      if (reader.busy()) continue;
      const coming = grab(video, performance.now());
      reader.ask(coming).then((answer) => {
        if (answer && current()) watch.take(answer);
      });
    }
  }

  const turnWithPage = () => (document.hidden ? closeEye(eye) : openEye(eye));
  document.addEventListener('visibilitychange', turnWithPage);
  openEye(eye);

  return {
    stop: () => {
      document.removeEventListener('visibilitychange', turnWithPage);
      closeEye(eye);
      for (const reader of readers) reader.end();
    },
    setTorch: (on) => {
      eye.torch = on;
      return adjust(eye.stream, { torch: on });
    },
    setZoom: (times) => adjust(eye.stream, { zoom: times }),
    abilities: () => abilities(eye.stream),
    lenses,
    useLens: (id) => {
      eye.lens = id;
      return openEye(eye);
    },
    readImage,
  };
}

/**
 * The labels on a photo, by the slow reader, as it has the time.
 * @param {Blob} photo
 * @returns {Promise<Found[]>}
 */
export async function readImage(photo) {
  const reader = openReader('slow');
  try {
    const answer = await reader.ask(grab(photo, performance.now()));
    return answer?.codes ?? [];
  } finally {
    reader.end();
  }
}
