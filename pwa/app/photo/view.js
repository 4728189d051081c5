/**
 * How a picture lies in its pane, reckoned without any element: how often the fitting size it is
 * drawn, and which point of it stands in the middle, as shares of its width and height.
 *
 * @typedef {{k: number, x: number, y: number}} View
 * @typedef {{w: number, h: number}} Size
 * @typedef {{x: number, y: number}} Point in px from the middle of the pane, or as shares
 * @typedef {{pane: Size, picture: Size}} Room
 */

/** @type {View} */
export const WHOLE = Object.freeze({ k: 1, x: 0.5, y: 0.5 });
export const STEP = 1.5;
export const MOST = 8;

/** @param {number} n @param {number} least @param {number} most */
export const between = (n, least, most) => Math.min(Math.max(n, least), most);

/** The size at which the whole picture fits. @param {Room} room @returns {Size} */
export function fitting({ pane, picture }) {
  const by = Math.min(pane.w / picture.w, pane.h / picture.h);
  return { w: picture.w * by, h: picture.h * by };
}

/** No further out than the edge of the picture. @param {number} at @param {number} seen share of it that fits */
export const inside = (at, seen) => (seen >= 1 ? 0.5 : between(at, seen / 2, 1 - seen / 2));

/** @param {View} view @param {Room} room @returns {View} */
export function clamped(view, room) {
  const fit = fitting(room);
  const k = between(view.k, 1, MOST);
  return {
    k,
    x: inside(view.x, room.pane.w / (fit.w * k)),
    y: inside(view.y, room.pane.h / (fit.h * k)),
  };
}

/** Which point of the picture lies under a point of the pane. @param {View} view @param {Point} at @param {Room} room @returns {Point} */
export function pictured(view, at, room) {
  const fit = fitting(room);
  return { x: view.x + at.x / (fit.w * view.k), y: view.y + at.y / (fit.h * view.k) };
}

/** Where a point of the picture stands in the pane. @param {View} view @param {Point} spot @param {Room} room @returns {Point} */
export function placed(view, spot, room) {
  const fit = fitting(room);
  return { x: (spot.x - view.x) * fit.w * view.k, y: (spot.y - view.y) * fit.h * view.k };
}

/**
 * Larger or smaller, with the point under the finger staying where it is.
 * @param {View} view @param {number} by @param {Point} at @param {Room} room
 */
export function zoomed(view, by, at, room) {
  const spot = pictured(view, at, room);
  const k = between(view.k * by, 1, MOST);
  const fit = fitting(room);
  return clamped({ k, x: spot.x - at.x / (fit.w * k), y: spot.y - at.y / (fit.h * k) }, room);
}

/** The picture follows the finger. @param {View} view @param {Point} by @param {Room} room */
export function panned(view, by, room) {
  const fit = fitting(room);
  const { k } = view;
  return clamped({ k, x: view.x - by.x / (fit.w * k), y: view.y - by.y / (fit.h * k) }, room);
}

/** A point as an entry says it: two shares of four digits, never outside the picture. @param {Point} spot */
export const spotOf = ({ x, y }) => [x, y].map((n) => between(n, 0, 1).toFixed(4));

/** A kept place as a point. @param {string[]} spot @returns {Point} */
export const pointOf = ([x, y]) => ({ x: Number(x), y: Number(y) });
