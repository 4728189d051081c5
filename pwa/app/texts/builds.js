/** Words of the list of builds. */
import { addTexts } from './index.js';

export const texts = {
  'builds.title': 'Builds',
  'builds.none': 'No build yet. A build is the work that makes one engine.',
  'builds.new': 'A new build',
  'builds.engine': 'Which engine',
  'builds.begin': 'Begin this build',
};
addTexts(texts);
