/** The camera of the device: opening it, its light, its zoom, its lenses. */

/** @typedef {{id: string, name: string}} Lens */
/** @typedef {'refused' | 'no-camera'} NoPicture why there is no picture */

/**
 * @param {string} [lens] the id of one lens; without it the one at the back
 * @returns {Promise<MediaStream | NoPicture>}
 */
export async function openCamera(lens) {
  if (!navigator.mediaDevices?.getUserMedia) return 'no-camera';
  const which = lens ? { deviceId: { exact: lens } } : { facingMode: 'environment' };
  const video = { ...which, width: { ideal: 1280 }, height: { ideal: 720 } };
  try {
    return await navigator.mediaDevices.getUserMedia({ video, audio: false });
  } catch (error) {
    const name = error instanceof Error ? error.name : '';
    return name === 'NotAllowedError' || name === 'SecurityError' ? 'refused' : 'no-camera';
  }
}

/**
 * @param {MediaStream | null} stream
 * @returns {void}
 */
export function closeCamera(stream) {
  for (const track of stream?.getTracks() ?? []) track.stop();
}

/**
 * Lenses have names only once the person has allowed the camera.
 * @returns {Promise<Lens[]>}
 */
export async function lenses() {
  const devices = (await navigator.mediaDevices?.enumerateDevices()) ?? [];
  return devices
    .filter((device) => device.kind === 'videoinput')
    .map((device) => ({ id: device.deviceId, name: device.label }));
}

/**
 * What the open lens can do. A browser that does not say can do neither.
 * @param {MediaStream | null} stream
 * @returns {{torch: boolean, zoom: {min: number, max: number} | null}}
 */
export function abilities(stream) {
  const track = stream?.getVideoTracks()[0];
  const can = /** @type {Record<string, any>} */ (track?.getCapabilities?.() ?? {});
  return { torch: can.torch === true, zoom: can.zoom?.max > can.zoom?.min ? can.zoom : null };
}

/**
 * @param {MediaStream | null} stream
 * @param {{torch?: boolean, zoom?: number}} wish
 * @returns {Promise<boolean>} whether the lens obeyed
 */
export async function adjust(stream, wish) {
  const track = stream?.getVideoTracks()[0];
  const can = abilities(stream);
  if (!track || ('torch' in wish && !can.torch) || ('zoom' in wish && !can.zoom)) return false;
  const asked = { ...wish };
  if (asked.zoom !== undefined && can.zoom) {
    asked.zoom = Math.min(can.zoom.max, Math.max(can.zoom.min, asked.zoom));
  }
  try {
    // Torch and zoom are younger than the type of constraints that the compiler knows.
    await track.applyConstraints({ advanced: [/** @type {MediaTrackConstraintSet} */ (asked)] });
    return true;
  } catch {
    return false;
  }
}
