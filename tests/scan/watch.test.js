/** What the answers of the readers become for the person, and what a wedge reader types. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { makeWatch } from '../../pwa/scan/watch.js';
import { collect } from '../../pwa/scan/wedge.js';

const BOX = [[0, 0]];
const FOUND = [{ code: '7K3MQ2RJ', box: BOX }];

/** @param {object[]} answers */
function statesOf(answers) {
  const states = [];
  const watch = makeWatch({ onRead: () => undefined, onState: (state) => states.push(state) });
  for (const answer of answers) {
    watch.take({ codes: [], others: [], unread: [], light: 120, ...answer });
  }
  return states;
}

/** @param {string} text */
function burst(text, gap) {
  const take = collect();
  const keys = [...text, 'Enter'];
  return keys.map((key, i) => take({ key, timeStamp: 1000 + i * gap })).at(-1);
}

test('a label in view and unread for three seconds is hard', () => {
  const seen = [0, 500, 1000, 1500, 2000, 2500].map((at) => ({ at, unread: [BOX] }));
  assert.deepEqual(['looking'], statesOf(seen));
  assert.deepEqual(['looking', 'hard'], statesOf([...seen, { at: 3000, unread: [BOX] }]));
});

test('the fast reader, which sees nothing, does not hide what the slow one sees', () => {
  const mixed = Array.from({ length: 13 }, (_, i) => ({
    at: i * 250,
    unread: i % 3 === 0 ? [BOX] : [],
  }));
  assert.deepEqual(['looking', 'hard'], statesOf(mixed));
});

test('a label that leaves the view or is read begins a new try', () => {
  const away = [0, 800, 2500, 3300].map((at) => ({ at, unread: [BOX] }));
  assert.deepEqual(['looking'], statesOf(away));
  const read = [0, 900, 1800, 2700].map((at) => ({ at, unread: [BOX] }));
  read.splice(3, 0, { at: 2000, codes: FOUND });
  assert.deepEqual(['looking'], statesOf([...read, { at: 3400, unread: [BOX] }]));
});

test('a dark picture is told, and not taken back for a flicker', () => {
  const lights = [120, 30, 45, 60].map((light, i) => ({ at: i * 100, light }));
  assert.deepEqual(['looking', 'dark', 'looking'], statesOf(lights));
});

test('what comes faster than hands is a burst, what comes slower is typing', () => {
  assert.equal('7K3MQ2RJ', burst('7K3MQ2RJ', 10));
  assert.equal(null, burst('7K3MQ2RJ', 80));
  assert.equal(null, burst('7K3', 10));
});
