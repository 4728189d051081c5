/** The object stores of one workshop's database, as data, so that tests can build the same. */

export const VERSION = 1;

/** @type {Record<string, {key?: string, indexes?: Record<string, {path: string, many?: boolean}>}>} */
export const TABLES = {
  entry: { key: 'id', indexes: { subject: { path: 'subject' } } },
  outbox: { key: 'id' },
  orphan: { key: 'id', indexes: { target: { path: 'target' } } },
  subject: {
    key: 'id',
    indexes: {
      heading: { path: 'heading' },
      links: { path: 'links', many: true },
      wants: { path: 'wants', many: true },
    },
  },
  dirty: { key: 'id' },
  name: { key: 'id' },
  photo: { key: 'sha', indexes: { state: { path: 'state' } } },
  blob: {},
  refused: { key: 'id' },
  setting: {},
  draft: {},
  meta: {},
};

/** What a kept entry may touch, in one transaction. */
export const KEEPING = [
  'entry',
  'outbox',
  'orphan',
  'subject',
  'dirty',
  'name',
  'photo',
  'refused',
  'meta',
];
