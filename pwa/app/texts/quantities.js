/** Words of what a bench measures. */
import { addTexts } from './index.js';

export const texts = {
  'quantity.length': 'length',
  'quantity.mass': 'weight',
  'quantity.volume': 'volume',
  'quantity.pressure': 'pressure',
  'quantity.torque': 'torque',
  'quantity.force': 'force',
  'quantity.flow': 'flow',
  'quantity.angle': 'angle',
  'quantity.temperature': 'temperature',
};
addTexts(texts);
