/** Makes a phone's photo small enough to keep and to send: upright, JPEG, at most 2 MiB. */

export const PHOTO_BYTES = 2 * 1024 * 1024;
const LONGEST_SIDE = 2048;
const LEAST_SIDE = 320;

/** The file is no picture this phone can open. */
export class NotAPicture extends Error {
  code = 'photo-not-a-picture';
}

/**
 * The picture as kept; its digest is reckoned by the store.
 * @param {Blob} file
 * @returns {Promise<Blob>}
 */
export async function reducePhoto(file) {
  const picture = await open(file);
  let side = LONGEST_SIDE;
  let quality = 0.86;
  try {
    for (;;) {
      const blob = await draw(picture, side, quality);
      if (blob.size <= PHOTO_BYTES || side <= LEAST_SIDE) return blob;
      if (quality > 0.6) quality -= 0.13;
      else side = Math.round(side * 0.75);
    }
  } finally {
    picture.close();
  }
}

/** @param {Blob} file */
async function open(file) {
  try {
    // The turn written in EXIF is applied here, because a re-drawn picture no longer carries it.
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch (cause) {
    throw new NotAPicture('not a picture', { cause });
  }
}

/**
 * @param {ImageBitmap} picture
 * @param {number} side
 * @param {number} quality
 * @returns {Promise<Blob>}
 */
async function draw(picture, side, quality) {
  const shrink = Math.min(1, side / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * shrink));
  canvas.height = Math.max(1, Math.round(picture.height * shrink));
  const pen = canvas.getContext('2d');
  if (!pen) throw new NotAPicture('no canvas');
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new NotAPicture('no JPEG'))),
      'image/jpeg',
      quality,
    ),
  );
}
