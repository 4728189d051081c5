/** Sentences about spares and about parts that are out. */
import { day, daysSince } from '../dates.js';
import { t } from '../texts/index.js';
import '../texts/shelf.js';
import { local } from '../values.js';

/** Verdict, rank, place, origin, age of the inspection. @param {any} row */
export const spareSays = (row) =>
  [
    t(`mark.${row.verdict}`),
    row.rank && rankSays(row),
    row.build && t('shelf.for', { build: row.build_name ?? t('fact.build') }),
    ...row.lies.map((/** @type {any} */ at) =>
      [at.name, at.where, ...at.chain].filter(Boolean).join(', '),
    ),
  ]
    .filter(Boolean)
    .join(' · ');

/** Only what was judged a spare is called one. @param {any} row */
const rankSays = ({ verdict, rank, set }) =>
  t(verdict === 'spare' ? 'shelf.rank' : 'shelf.rank.use', { rank, set: set.name ?? '' });

/** What is known of it besides. @param {any} row */
export function moreSays(row) {
  const from = [row.donor, row.from].filter(Boolean).join(', ');
  return [
    ...row.sizes.map(
      (/** @type {any} */ one) =>
        `${one.name ?? ''} ${local(one.size.toFixed(one.decimals))} ${one.unit ?? ''}`,
    ),
    row.reason,
    from && t('shelf.from', { from }),
    row.inspected ? t('shelf.seen', { n: daysSince(row.inspected) ?? 0 }) : t('shelf.unseen'),
  ]
    .filter(Boolean)
    .join(' · ');
}

/** With whom, for what, since when, due when. @param {any} line */
export const outSays = (line) =>
  [
    t('away.to', { to: line.to }),
    line.for,
    t('away.since', { day: day(line.made) }),
    dueSays(line),
    line.price && `${local(line.price.value)} ${line.price.unit}`,
    line.note,
  ]
    .filter(Boolean)
    .join(' · ');

/** @param {any} line */
export const dueSays = ({ due, days }) => {
  if (!due) return '';
  const said = t('away.due', { day: day(due) || due });
  return days > 0 ? `${said}, ${t('away.over', { n: days })}` : said;
};
