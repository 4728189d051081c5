/** Answers a tap three ways at once: sight, sound, vibration. Each can be off alone; none is the only carrier. */

/** Below speech, so that it is heard beside the work and not across the house. */
const LOUDNESS = 0.09;

/**
 * Notes are [hertz, from second, for seconds]; buzz is what navigator.vibrate takes.
 * @typedef {[number, number, number]} Note
 * @type {Record<'kept' | 'passDone' | 'flag' | 'notKept' | 'read' | 'wrong', {notes: Note[], buzz: number[]}>}
 */
const ANSWERS = {
  kept: { notes: [[1320, 0, 0.07]], buzz: [40] },
  passDone: {
    notes: [
      [880, 0, 0.1],
      [1320, 0.13, 0.14],
    ],
    buzz: [40, 80, 40],
  },
  flag: {
    notes: [
      [294, 0, 0.12],
      [294, 0.18, 0.12],
    ],
    buzz: [80, 80, 80],
  },
  notKept: { notes: [[147, 0, 0.7]], buzz: [400] },
  read: { notes: [[2200, 0, 0.02]], buzz: [30] },
  wrong: {
    notes: [
      [660, 0, 0.12],
      [392, 0.15, 0.18],
    ],
    buzz: [200],
  },
};

const chosen = { sight: true, sound: true, vibration: true };
/** @type {AudioContext | null} */
let audio = null;
let sightTimer = 0;

/**
 * Switches a way of answering on or off.
 * @param {Partial<typeof chosen>} choice
 */
export function chooseFeedback(choice) {
  Object.assign(chosen, choice);
}

/**
 * Phones let sound start only inside a tap, so the first one makes the context ready.
 * @param {Document} page
 */
export function armSound(page) {
  const arm = () => {
    if (!chosen.sound) return;
    audio ??= new AudioContext();
    if (audio.state === 'suspended') audio.resume();
  };
  page.addEventListener('pointerup', arm, { capture: true, passive: true });
  page.addEventListener('keyup', arm, { capture: true, passive: true });
}

/**
 * Answers what just happened.
 * @param {'kept' | 'passDone' | 'flag' | 'notKept' | 'read' | 'wrong'} what
 */
export function feedback(what) {
  const answer = ANSWERS[what];
  if (chosen.sight) sight(what);
  if (chosen.sound) sound(answer.notes);
  // iOS has no vibration; the other two ways carry it there.
  if (chosen.vibration) navigator.vibrate?.(answer.buzz);
}

/**
 * The look of the moment is a style on the page's root; the lasting mark is drawn by the screen.
 * @param {string} what
 */
function sight(what) {
  const root = document.documentElement;
  root.dataset.sight = what;
  clearTimeout(sightTimer);
  sightTimer = window.setTimeout(() => delete root.dataset.sight, what === 'passDone' ? 4000 : 700);
}

/** @param {Note[]} notes */
function sound(notes) {
  if (audio?.state !== 'running') return;
  for (const [pitch, from, length] of notes) {
    const start = audio.currentTime + from;
    const tone = audio.createOscillator();
    const swell = audio.createGain();
    tone.frequency.value = pitch;
    swell.gain.setValueAtTime(0, start);
    swell.gain.linearRampToValueAtTime(LOUDNESS, start + 0.008);
    swell.gain.setValueAtTime(LOUDNESS, start + length * 0.7);
    swell.gain.linearRampToValueAtTime(0, start + length);
    tone.connect(swell).connect(audio.destination);
    tone.start(start);
    tone.stop(start + length + 0.02);
  }
}
