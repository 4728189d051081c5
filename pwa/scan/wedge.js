/** Keyboard-wedge readers: a device that types a whole label faster than hands can. */
import { codeOf } from './codes.js';

/** Longest gap between two signs that still counts as a wedge, in ms. */
const GAP = 35;
const LEAST = 6;
const FIELDS = 'input, textarea, [contenteditable]';

/** A wedge set to another keyboard types other signs for the strokes and colons, letters stay. */
const LABEL = /(?:^|[^0-9A-Z]L[^0-9A-Z])([0-9A-Z]{8})$/i;

/**
 * Call `onCode` when a wedge reader types one of our labels and ends with Enter. In a text field
 * the typed signs stay where they are, unless the whole burst is a label.
 * @param {EventTarget} target
 * @param {(code: string) => void} onCode
 * @returns {() => void} stops listening
 */
export function readWedge(target, onCode) {
  const take = collect();
  /** @param {Event} happening */
  const hear = (happening) => {
    const burst = take(/** @type {KeyboardEvent} */ (happening));
    const code = burst === null ? null : codeOf(`/L/${LABEL.exec(burst)?.[1]}`);
    if (burst === null || code === null) return;
    happening.preventDefault();
    happening.stopPropagation();
    takeOut(/** @type {Element | null} */ (happening.target), burst);
    onCode(code);
  };
  target.addEventListener('keydown', hear, true);
  return () => target.removeEventListener('keydown', hear, true);
}

/**
 * Gathers signs that follow each other faster than hands can type.
 * @returns {(stroke: Pick<KeyboardEvent, 'key' | 'timeStamp'>) => string | null} the whole burst
 *   when the stroke ends one, else null
 */
export function collect() {
  let burst = '';
  let last = Number.NEGATIVE_INFINITY;
  return ({ key, timeStamp }) => {
    if (key === 'Shift' || key === 'CapsLock') return null;
    const whole = timeStamp - last > GAP ? '' : burst;
    last = timeStamp;
    burst = key.length === 1 ? whole + key : '';
    return key === 'Enter' && whole.length >= LEAST ? whole : null;
  };
}

/**
 * The label that landed in a text field is not what the person is writing there.
 * @param {Element | null} field
 * @param {string} typed
 */
function takeOut(field, typed) {
  if (!(field instanceof HTMLElement) || !field.matches(FIELDS)) return;
  if ('value' in field && typeof field.value === 'string' && field.value.endsWith(typed)) {
    field.value = field.value.slice(0, -typed.length);
    field.dispatchEvent(new InputEvent('input', { bubbles: true }));
  }
}
