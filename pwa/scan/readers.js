/** The two readers: a fast one for every picture, a slow one for whatever is newest. */

/** @typedef {import('./watch.js').Answer} Answer */
/** @typedef {import('./answer.js').Question} Question */
/**
 * @typedef {object} Reader
 * @property {() => boolean} busy
 * @property {(question: Promise<Question>) => Promise<Answer | null>} ask null when there is no answer
 * @property {() => void} end
 */

/**
 * @param {'fast' | 'slow'} manner
 * @returns {Reader}
 */
export function openReader(manner) {
  const worker = new Worker(new URL('./worker.js', import.meta.url), {
    type: 'module',
    name: manner,
  });
  /** @type {Map<number, (answer: Answer | null) => void>} */
  const waiting = new Map();
  let count = 0;

  /**
   * @param {number} id
   * @param {Answer | null} answer
   */
  const answerWith = (id, answer) => {
    waiting.get(id)?.(answer);
    waiting.delete(id);
  };
  worker.onmessage = ({ data }) => answerWith(data.id, data.answer ?? null);
  const giveUp = () => {
    for (const done of waiting.values()) done(null);
    waiting.clear();
  };
  worker.onerror = giveUp;

  return {
    busy: () => waiting.size > 0,
    ask: (coming) =>
      new Promise((done) => {
        count += 1;
        const id = count;
        // It counts as busy from here on, though the picture is still on its way.
        waiting.set(id, done);
        coming.then(
          (question) => {
            const moved = question.bitmap ?? question.picture?.data.buffer;
            worker.postMessage({ id, question }, moved ? [moved] : []);
          },
          () => answerWith(id, null),
        );
      }),
    end: () => {
      giveUp();
      worker.terminate();
    },
  };
}

/**
 * The present picture of a video or an image file, in the form that travels to a worker best.
 * @param {HTMLVideoElement | Blob} source
 * @param {number} at
 * @returns {Promise<Question>}
 */
export async function grab(source, at) {
  const bitmap = await createImageBitmap(source, { imageOrientation: 'from-image' });
  if (typeof OffscreenCanvas === 'function') return { at, bitmap };
  const canvas = document.createElement('canvas');
  canvas.width = bitmap.width;
  canvas.height = bitmap.height;
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('no drawing surface');
  context.drawImage(bitmap, 0, 0);
  bitmap.close();
  return { at, picture: context.getImageData(0, 0, canvas.width, canvas.height) };
}
