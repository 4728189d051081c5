/** Published facts of QR symbols, and what can be read from few of their modules. */
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { codeOf, sortSightings } from '../../pwa/scan/codes.js';
import { decipher } from '../../pwa/scan/decipher.js';
import { expectedBits, textOf } from '../../pwa/scan/expected.js';
import { correction, toBits } from '../../pwa/scan/galois.js';
import { blocksOf, formatBits, isTurned, layoutOf } from '../../pwa/scan/layout.js';

const TEXT = 'HTTPS://SHED1.LOCAL:8443/L/7K3MQ2RJ';

/** A symbol of version 3 at level H as beliefs: 1 dark, -1 light. */
function symbol(text, mask = 3) {
  const { side, fixed, path, format } = layoutOf(3);
  const bits = expectedBits(text, 26);
  const words = new Uint8Array(70);
  let at = 0;
  for (const { data, order } of blocksOf(3, 'H')) {
    const bytes = Uint8Array.from({ length: data }, (_, i) =>
      Number.parseInt(bits.slice((at + i) * 8, (at + i) * 8 + 8).join(''), 2),
    );
    at += data;
    const block = [...bytes, ...correction(bytes, order.length - data)];
    order.forEach((place, i) => {
      words[place] = block[i];
    });
  }
  const beliefs = Float32Array.from(fixed);
  const stream = toBits(words);
  path.forEach((place, i) => {
    beliefs[place] = (stream[i] ?? 0) === (isTurned(mask, place, side) ? 1 : 0) ? -1 : 1;
  });
  for (const places of format) {
    places.forEach((place, i) => {
      beliefs[place] = (formatBits((2 << 3) | mask) >> (14 - i)) & 1 ? 1 : -1;
    });
  }
  return beliefs;
}

/** The same numbers each time. */
function dice(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

test('the correction codewords are those of the worked example in ISO/IEC 18004, annex I', () => {
  const data = Uint8Array.from([
    0x10, 0x20, 0x0c, 0x56, 0x61, 0x80, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11, 0xec, 0x11,
  ]);
  const expected = [0xa5, 0x24, 0xd4, 0xc1, 0xed, 0x36, 0xc7, 0x87, 0x2c, 0x55];
  assert.deepEqual(expected, [...correction(data, 10)]);
});

test('the format bits are those of the worked example in ISO/IEC 18004, annex C', () => {
  assert.equal(0b100000011001110, formatBits(0b00101));
});

test('a symbol has the codewords and remainder bits of ISO/IEC 18004, table 1', () => {
  const expected = [359, 567, 807, 1079];
  assert.deepEqual(
    expected,
    [2, 3, 4, 5].map((version) => layoutOf(version).path.length),
  );
});

test('35 alphanumeric signs fill version 3 at level H and 36 do not fit (ISO/IEC 18004, table 7)', () => {
  assert.notEqual(null, expectedBits('A'.repeat(35), 26));
  assert.equal(null, expectedBits('A'.repeat(36), 26));
});

test('a text goes into bits and comes back', () => {
  for (const text of [TEXT, 'A', 'AC-42']) {
    assert.equal(text, textOf([...(expectedBits(text, 26) ?? [])]));
  }
});

test('a clean symbol is read at every mask', () => {
  for (let mask = 0; mask < 8; mask += 1) assert.equal(TEXT, decipher(symbol(TEXT, mask), 3));
});

test('a symbol of which half cannot be seen is read', () => {
  const half = symbol(TEXT).map((belief, i) => (i % 29 > 14 ? 0 : belief));
  assert.equal(TEXT, decipher(half, 3));
});

test('a symbol with every twelfth module wrong is read', () => {
  const roll = dice(7);
  const wrong = symbol(TEXT).map((belief) => (roll() < 1 / 12 ? -0.4 * belief : belief));
  assert.equal(TEXT, decipher(wrong, 3));
});

test('the grey of a blank surface and pure noise are no label', () => {
  const roll = dice(3);
  assert.equal(null, decipher(new Float32Array(841), 3));
  for (let i = 0; i < 20; i += 1) {
    assert.equal(
      null,
      decipher(
        new Float32Array(841).map(() => roll() * 2 - 1),
        3,
      ),
    );
  }
});

test('two labels laid over each other give neither a third', () => {
  const [one, two] = [symbol(TEXT), symbol('HTTPS://SHED1.LOCAL:8443/L/WTNSMRK4')];
  const roll = dice(5);
  for (let i = 0; i < 10; i += 1) {
    const both = one.map((belief, at) => (roll() < 0.5 ? belief : two[at]));
    assert.ok([null, TEXT, 'HTTPS://SHED1.LOCAL:8443/L/WTNSMRK4'].includes(decipher(both, 3)));
  }
});

test('only a text with our path and a right last sign is a code, whatever computer it names', () => {
  assert.equal('7K3MQ2RJ', codeOf(TEXT));
  assert.equal('7K3MQ2RJ', codeOf('https://other.test/L/7k3mq2rj'));
  assert.equal(null, codeOf('HTTPS://SHED1.LOCAL:8443/L/7K3MQ2RK'));
  assert.equal(null, codeOf('HTTPS://SHED1.LOCAL:8443/L/7K3MQ2RJ/MORE'));
  assert.equal(null, codeOf('7K3MQ2RJ'));
});

test('a twin counts once, an unread symbol and a stranger are told apart', () => {
  const box = [];
  const sorted = sortSightings([
    { text: TEXT, box },
    { text: TEXT, box },
    { text: '', box },
    { text: 'HELLO', box },
    { text: 'HTTPS://SHED1.LOCAL:8443/L/7K3MQ2RK', box },
  ]);
  assert.deepEqual(
    ['7K3MQ2RJ'],
    sorted.codes.map(({ code }) => code),
  );
  assert.equal(1, sorted.unread.length);
  assert.deepEqual(
    ['not-ours', 'last-sign-wrong'],
    sorted.others.map(({ why }) => why),
  );
});
