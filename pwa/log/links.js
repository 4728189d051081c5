/**
 * Where a subject points: label to thing, part to holder, joint to the parts it clamps.
 *
 * @typedef {import('./values.js').Subject} Subject
 * @typedef {import('./values.js').Link} Link
 */

/** @type {Readonly<Record<string, string[][]>>} */
const FIELD_ROLES = Object.freeze({
  part: [
    ['kind', 'of-kind'],
    ['donor', 'from-donor'],
    ['build', 'for-build'],
  ],
  holder: [['build', 'for-build']],
  joint: [
    ['build', 'for-build'],
    ['fastener_part', 'holds-with'],
    ['wrench', 'uses'],
  ],
  step: [['build', 'for-build']],
});

const FACT_ROLES = Object.freeze([
  ['label', 'marks', 'marks'],
  ['place', 'in', 'lies-in'],
  ['fitted', 'build', 'fitted-in'],
]);

/**
 * Links of what stands, each once, by role and id; a hidden thing points nowhere.
 * @param {Subject} subject
 * @returns {Link[]} source: definition
 */
export function links(subject) {
  if (subject.hidden) return [];
  const all = [
    ...described(subject),
    ...standing(subject),
    ...left(subject),
    ...clamped(subject),
    ...taken(subject),
  ];
  const once = new Map(
    all
      .filter(([, to]) => typeof to === 'string' && to !== '')
      .map(([role, to]) => [`${role} ${to}`, { role: String(role), to: String(to) }]),
  );
  return [...once].sort(([one], [other]) => (one < other ? -1 : 1)).map(([, link]) => link);
}

/** @param {Subject} subject */
function described(subject) {
  const roles = FIELD_ROLES[subject.heading ?? ''] ?? [];
  return roles.map(([name, role]) => [role, subject.fields[String(name)]?.value]);
}

/** @param {Subject} subject */
function left({ facts }) {
  return facts
    .filter(({ heading, stands, struck }) => heading === 'place' && !stands && !struck)
    .map(({ body }) => ['lay-in', body.in]);
}

/** @param {Subject} subject */
function standing(subject) {
  return FACT_ROLES.flatMap(([heading, key, role]) =>
    subject.facts
      .filter((fact) => fact.heading === heading && fact.stands)
      .map((fact) => [role, fact.body[String(key)]]),
  );
}

/** Single pieces that were taken from a counted part. @param {Subject} subject */
function taken({ facts }) {
  return facts
    .filter(({ heading, struck }) => heading === 'take' && !struck)
    .flatMap(({ body }) => (body.pieces ?? []).map((/** @type {string} */ to) => ['piece', to]));
}

/** @param {Subject} subject */
function clamped({ heading, fields }) {
  if (heading !== 'joint') return [];
  /** @type {any[]} */
  const fasteners = fields.fasteners?.value ?? [];
  /** @type {any[]} */
  const parts = fields.parts?.value ?? [];
  return [
    ...parts.map((part) => ['clamps', part]),
    ...fasteners.map((fastener) => ['holds-with', fastener.part]),
  ];
}
