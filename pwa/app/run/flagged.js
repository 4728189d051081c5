/** What a flag means, in one line: some count, some leave the pass open. */

import { html, Icon } from '../frame/index.js';
import { t } from '../texts/index.js';
import { namedFirst, written } from './figures.js';

const IN_DOUBT = ['short', 'too-far', 'wrong-range', 'stale', 'loosened-meanwhile'];

/** The flag that weighs most. @param {string[]} flags */
const heaviest = (flags) => IN_DOUBT.find((flag) => flags.includes(flag)) ?? flags[0];

/** @param {any} view @param {any} pull */
export function flagSays(view, pull) {
  const { number, accepted } = pull;
  if (accepted) return t('run.flag.accepted', { number, reason: accepted });
  return t(`run.flag.${heaviest(pull.flags)}`, {
    number,
    name: namedFirst(view, number),
    reading: readingSays(pull),
    target: pull.target ? written(pull.target) : '',
  });
}

/** A reading with an adapter on says where it was read. @param {any} pull */
function readingSays({ reading, read_at }) {
  if (!reading) return '';
  const value = written(reading);
  return read_at === 'set' ? t('reading.target.set', { value }) : value;
}

/** @param {{view: any, pull: any}} props */
export const FlagLine = ({ view, pull }) =>
  html`<p class="caption flagged"><${Icon} name="i-caution" /><span>${flagSays(view, pull)}</span></p>`;
