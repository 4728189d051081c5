// Reads histories, one a line, and answers every question about each, one a line.
import { createInterface } from 'node:readline';
import { find } from '../../pwa/views/find.js';
import { row } from '../../pwa/views/find_row.js';
import { measured } from '../../pwa/views/measured.js';
import { examples, pictures } from '../../pwa/views/pictures.js';
import { study } from '../../pwa/views/study.js';
import { historyViews } from '../pwa/vector_rules/history.js';
import { instrumentViews } from '../pwa/vector_rules/instruments.js';
import { views as others, workshop } from '../pwa/vector_rules/views.js';

const views = {
  ...others,
  ...instrumentViews,
  ...historyViews,
  measured: (w, g) => measured(w, g.id),
  study: (w, g) => study(w, g.id),
  pictures: (w, g) => pictures(w, g.id),
  'pictures.examples': (w, g) => examples(w.subject(g.id)),
};

function ordered(value) {
  if (Array.isArray(value)) return value.map(ordered);
  if (value === null || typeof value !== 'object') return value;
  const keys = Object.keys(value).sort();
  return new Map(keys.map((key) => [key, ordered(value[key])]));
}

function text(value) {
  if (Array.isArray(value)) return `[${value.map(text).join(',')}]`;
  if (!(value instanceof Map)) return JSON.stringify(value);
  return `{${[...value].map(([key, each]) => `${JSON.stringify(key)}:${text(each)}`).join(',')}}`;
}

function answers({ facts, odd, questions }) {
  const told = workshop({ facts, odd: structuredClone(odd) });
  const rows = questions.things.map((id) => row(told, id)).filter(Boolean);
  const asked = (list) => list.map(([name, given]) => views[name](told, given));
  return [
    ...asked(questions.asked),
    rows,
    ...questions.queries.map((query) => find(rows, query)),
    asked(questions.figures),
  ];
}

for await (const line of createInterface({ input: process.stdin })) {
  console.log(text(ordered(answers(JSON.parse(line)))));
}
