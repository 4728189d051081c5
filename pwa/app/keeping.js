/** Keeps entries and says so; what could not be kept is said at once and stays on the screen. */
import { signal } from '@preact/signals';
import { feedback } from './feedback.js';
import { say } from './frame/live.js';
import { t } from './texts/index.js';

/** The sentence of what was not kept, until the person has answered it. */
export const notKept = signal('');

/** @param {any} error */
function sentence(error) {
  if (error.code === 'not-kept-full') return t('not-kept');
  if (error.code === 'not-kept-closed') return t('not-kept.closed');
  return error.says
    ? t('not-kept.because', { says: error.says, next: error.next ?? '' })
    : t('not-kept');
}

/**
 * @param {any} store
 * @param {any[]} drafts
 * @param {string} [words] what is said when kept
 * @returns {Promise<any[] | false>} the entries, or false when the disk did not take them
 */
export async function keepAll(store, drafts, words = t('kept')) {
  try {
    const entries = await store.keep(drafts);
    feedback('kept');
    say(words);
    return entries;
  } catch (error) {
    feedback('notKept');
    notKept.value = sentence(error);
    say(notKept.value, true);
    return false;
  }
}
