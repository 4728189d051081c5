/** Texts of measuring a piece. */
import { addTexts } from './index.js';

export const texts = {
  'measure.read': 'Read',
  'measure.again': 'Again',
  'measure.limits': '{least} to {most} {unit}',
  'measure.limits.least': 'at least {least} {unit}',
  'measure.limits.most': 'at most {most} {unit}',
  'measure.limits.none': 'no limit yet',
  'measure.unsourced': 'unsourced',
  'measure.far': '{read} of {of} places read',
  'measure.inside': 'inside',
  'measure.outside': 'outside',
  'measure.too-close-to-call': 'too close to call: measure again',
  'measure.mean': 'mean of {n}',
  'measure.spoken': 'Read {name}',
  'measure.back': 'Back',
  'measure.keep': 'Keep',
  'measure.take-back': 'Take back {value}',
};
addTexts(texts);
