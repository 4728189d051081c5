/** All headings by their word; a browser cannot list a folder, so each has a line here. */
import { collected } from '../heading.js';
import { heading as accept } from './accept.js';
import { heading as add } from './add.js';
import { heading as begin } from './begin.js';
import { heading as build } from './build.js';
import { heading as donor } from './donor.js';
import { heading as fitted } from './fitted.js';
import { heading as holder } from './holder.js';
import { heading as inspection } from './inspection.js';
import { heading as instrument } from './instrument.js';
import { heading as joint } from './joint.js';
import { heading as kind } from './kind.js';
import { heading as label } from './label.js';
import { heading as loosening } from './loosening.js';
import { heading as note } from './note.js';
import { heading as onward } from './onward.js';
import { heading as part } from './part.js';
import { heading as photo } from './photo.js';
import { heading as place } from './place.js';
import { heading as pointed } from './pointed.js';
import { heading as pull } from './pull.js';
import { heading as purchase } from './purchase.js';
import { heading as reading } from './reading.js';
import { heading as returned } from './returned.js';
import { heading as sent } from './sent.js';
import { heading as set } from './set.js';
import { heading as sheet } from './sheet.js';
import { heading as step } from './step.js';
import { heading as strikeOut } from './strike_out.js';
import { heading as study } from './study.js';
import { heading as take } from './take.js';
import { heading as touch } from './touch.js';
import { heading as trial } from './trial.js';
import { heading as unsourced } from './unsourced.js';
import { heading as verdict } from './verdict.js';
import { heading as wrench } from './wrench.js';

export { spoken } from '../heading.js';

export const headings = collected([
  accept,
  add,
  begin,
  build,
  donor,
  fitted,
  holder,
  inspection,
  instrument,
  joint,
  kind,
  label,
  loosening,
  note,
  onward,
  part,
  photo,
  place,
  pointed,
  pull,
  purchase,
  reading,
  returned,
  sent,
  set,
  sheet,
  step,
  strikeOut,
  study,
  take,
  touch,
  trial,
  unsourced,
  verdict,
  wrench,
]);
