/** A refused pull in the words of the person: which bolt of which joint, and what it was pulled to. */
import { value } from '../../log/workshop.js';
import { joint as jointView } from '../../views/joint.js';
import { t } from '../texts/index.js';
import { inOther, local } from '../values.js';
import { capital } from '../words.js';

/** A value in its unit and the other. @param {any} target */
function targetWords(target) {
  if (!target?.value) return '';
  const other = inOther(target);
  const mine = `${local(target.value)} ${target.unit}`;
  return other ? `${mine} (${local(other.value)} ${other.unit})` : mine;
}

/** @param {any} joint @param {any} body @param {any} workshop */
function placeOf(joint, body, workshop) {
  const bolt = joint.fasteners.find((/** @type {any} */ one) => one.id === body.fastener);
  const pass = joint.passes.find((/** @type {any} */ one) => one.id === body.pass);
  return {
    bolt: bolt ? `${joint.noun ?? t('card.noun')} ${bolt.number}` : '',
    joint: joint.name ?? '',
    pass: pass?.number ? String(pass.number) : '',
    target: targetWords(body.target),
    wrench: value(workshop.subject(body.wrench ?? ''), 'name') ?? '',
  };
}

/** One row; a pull is given its place, and its inner names are put in words. @param {any} store @param {any} row */
async function withPlace(store, row) {
  if (row.entry?.heading !== 'pull') return row;
  const { about, body } = row.entry;
  const workshop = await store.jointSlice(about);
  const place = placeOf(jointView(workshop, about), body, workshop);
  const says = place.bolt ? row.says.replace(`fastener ${body.fastener}`, place.bolt) : row.says;
  return { ...row, says, place };
}

/** The refused rows, each with its place where it is a pull. @param {any} store @returns {Promise<any[]>} */
export async function refusedRows(store) {
  const rows = await store.refused();
  return Promise.all(rows.map((/** @type {any} */ row) => withPlace(store, row)));
}

/** "Bolt 2, head bolts". @param {any} place */
export const placeTitle = ({ bolt, joint }) => capital([bolt, joint].filter(Boolean).join(', '));

/** What stands of it, name and words. @param {any} place @returns {[string, string][]} */
export const placeLines = ({ pass, target, wrench }) =>
  /** @type {[string, string][]} */ ([
    [t('refused.pass'), pass],
    [t('refused.target'), target],
    [t('refused.wrench'), wrench],
  ]).filter(([, words]) => words);
