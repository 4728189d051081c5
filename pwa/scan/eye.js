/** The open camera and its video: one picture after the other until it is closed. */
import { adjust, closeCamera, openCamera } from './camera.js';

/**
 * @typedef {object} Eye
 * @property {HTMLVideoElement} video
 * @property {string} [lens]
 * @property {boolean} [torch]
 * @property {(state: 'starting' | 'refused' | 'no-camera') => void} say
 * @property {(current: () => boolean) => void} onPicture
 * @property {MediaStream | null} stream
 * @property {number} turn counts openings, so that what an earlier one brings late is dropped
 */

/**
 * @param {HTMLVideoElement} video
 * @param {Omit<Eye, 'video' | 'stream' | 'turn'>} wishes
 * @returns {Eye}
 */
export function makeEye(video, { lens, torch, say, onPicture }) {
  return { video, lens, torch, say, onPicture, stream: null, turn: 0 };
}

/**
 * @param {Eye} eye
 * @returns {Promise<void>}
 */
export async function openEye(eye) {
  closeEye(eye);
  const mine = eye.turn;
  const current = () => mine === eye.turn;
  eye.say('starting');
  const got = await openCamera(eye.lens);
  if (typeof got === 'string') {
    if (current()) eye.say(got);
    return;
  }
  if (!current()) {
    closeCamera(got);
    return;
  }
  eye.stream = got;
  eye.video.srcObject = got;
  if (eye.torch) adjust(got, { torch: true });
  await eye.video.play().catch(() => undefined);
  look(eye, current);
}

/**
 * @param {Eye} eye
 * @returns {void}
 */
export function closeEye(eye) {
  eye.turn += 1;
  closeCamera(eye.stream);
  eye.stream = null;
  eye.video.srcObject = null;
}

/**
 * @param {Eye} eye
 * @param {() => boolean} current
 */
function look(eye, current) {
  if (!current()) return;
  if (eye.video.videoWidth > 0) eye.onPicture(current);
  const again = () => look(eye, current);
  if ('requestVideoFrameCallback' in eye.video) eye.video.requestVideoFrameCallback(again);
  else requestAnimationFrame(again);
}
