/** Paths of what good and worn look like, without a word: the first good, the second not. */

/**
 * Paths of one drawing: `steel` filled, `hole` filled lighter, `thin` lines, `dashed` lines.
 * @typedef {{steel?: string, hole?: string, thin?: string, dashed?: string}} Paths
 */

/** Teeth of a thread from x on, `pitch` apart. @param {number[]} xs */
const thread = (xs) => xs.map((x) => `M${x} 24l5 5M${x} 56l5 -5M${x + 2.5} 27v26`).join('');

/** Coils of a spring that leans by `lean` at each half turn. @param {number} lean */
const coils = (lean) =>
  `M64 60${[1, 2, 3, 4, 5].map((n) => `L${(n % 2 ? 114 : 64) + lean * n} ${60 - n * 8}`).join('')}h-50`;

const plate = 'M24 22h130v36H24z';
const round = 'M73.500 40a15.500 15.500 0 1 0 31 0a15.500 15.500 0 1 0 -31 0z';
const journal = 'M18 16h20v48H18zM140 16h20v48H140zM38 24h102v32H38z';
const shell = 'M25 62a64 48 0 0 1 128 0h-14a50 36 0 0 0 -100 0z';
const shaft = 'M65 40a24 24 0 0 1 16 -22.600v8.600h16v-8.600a24 24 0 1 1 -32 22.600z';
const block = 'M24 38h130v26H24z';
const rule = 'M16 20h146v10H16z';
const valve = 'M84 14h10v20l8 8q12 8 30 10v8H46v-8q18 -2 30 -10l8 -8z';

/** Good and bad by the word a criterion carries. @type {Record<string, [Paths, Paths]>} */
export const DRAWN = {
  'ball-end': [
    {
      steel: 'M24 26h96v26H24z',
      hole: 'M120 26c8 -10 30 -8 34 13c-4 21 -26 23 -34 13z',
      dashed: 'M24 39h112',
    },
    {
      steel: 'M24 26h96v26H24z',
      hole: 'M120 26c6 -8 16 -9 24 -5l5 8v19l-5 8c-8 4 -18 3 -24 -4z',
      dashed: 'M24 39h112',
      thin: 'M138 28l8 3M138 36l10 2M138 44l9 1',
    },
  ],
  scored: [
    { steel: journal },
    { steel: journal, thin: 'M58 25v30M62 25v30M84 25v30M106 25v30M110 25v30M114 25v30' },
  ],
  crack: [
    { steel: plate, hole: round },
    { steel: plate, hole: round, thin: 'M104 36l9 -6l5 5l9 -8l6 3l8 -7' },
  ],
  keyway: [
    { steel: shaft },
    { steel: 'M65 40a24 24 0 0 1 11 -20q8 0 7 6h12q0 -7 8 -6a24 24 0 1 1 -38 20z' },
  ],
  thread: [
    {
      steel: 'M14 18h22v44H14zM36 24h120v32H36z',
      thin: thread([72, 80, 88, 96, 104, 112, 120, 128, 136, 144]),
    },
    {
      steel: 'M14 18h22v44H14zM36 24h46q16 8 32 0h42v32h-42q-16 -8 -32 0H36z',
      thin: `${thread([62, 70, 122, 130, 138, 146])}M92 30v20M104 30v20`,
    },
  ],
  bent: [
    { steel: 'M20 34h138v12H20z', dashed: 'M10 40h158' },
    { steel: 'M20 34q69 26 138 0l2 12q-71 26 -142 0z', dashed: 'M10 40h158' },
  ],
  warped: [
    { steel: `${block}`, hole: 'M16 27h146v10H16z' },
    { steel: 'M24 32q65 24 130 0v32H24z', hole: rule, thin: 'M89 32v10M86 39l3 4l3 -4' },
  ],
  lobe: [
    { steel: 'M66 48a23 18 0 0 0 46 0q-2 -14 -14 -30q-9 -9 -18 0q-12 16 -14 30z' },
    {
      steel: 'M66 48a23 18 0 0 0 46 0q0 -14 -8 -20q-15 -6 -30 0q-8 6 -8 20z',
      dashed: 'M70 34q4 -8 10 -16q9 -9 18 0q6 8 10 16',
    },
  ],
  dished: [
    { steel: 'M56 64V32q33 -9 66 0v32z', hole: 'M36 16h106v10H36z' },
    {
      steel: 'M56 64V28q33 22 66 0v36z',
      hole: 'M36 16h106v10H36z',
      thin: 'M89 28v8M86 33l3 4l3 -4',
    },
  ],
  copper: [
    { steel: shell },
    { steel: shell, thin: 'M62 26l8 6M70 22l9 7M79 18l10 9M90 16l10 10M101 18l8 8M112 21l5 8' },
  ],
  spring: [
    { thin: coils(0), dashed: 'M128 14v52', steel: 'M54 60h70v5H54z' },
    { thin: coils(7), dashed: 'M128 14v52', steel: 'M54 60h70v5H54z' },
  ],
  'valve-edge': [
    { steel: valve },
    {
      steel: 'M84 14h10v20l8 8q5 3 8 5l4 7l6 -2l4 8H46v-8q18 -2 30 -10l8 -8z',
      dashed: 'M110 47q10 4 22 5v8h-8',
    },
  ],
  rust: [
    { steel: plate },
    {
      steel: plate,
      hole: 'M44 34a4 4 0 1 0 8 0a4 4 0 1 0 -8 0zM62 46a5 5 0 1 0 10 0a5 5 0 1 0 -10 0zM84 32a3 3 0 1 0 6 0a3 3 0 1 0 -6 0zM98 44a6 5 0 1 0 12 0a6 5 0 1 0 -12 0zM122 34a4 4 0 1 0 8 0a4 4 0 1 0 -8 0zM134 48a3 3 0 1 0 6 0a3 3 0 1 0 -6 0z',
    },
  ],
  teeth: [
    { steel: 'M20 64V48h8l6 -24h10l6 24h12l6 -24h10l6 24h12l6 -24h10l6 24h12l6 -24h10l6 24h8v16z' },
    {
      steel:
        'M20 64V48h8l14 -24q8 0 6 6l2 18h12l14 -20q8 -2 6 4l2 16h12l4 -10l6 3l4 -5l4 12h12l14 -24q8 0 6 6l2 18h8v16z',
    },
  ],
  tip: [
    { steel: 'M30 20h118v20q-20 24 -59 24q-39 0 -59 -24z' },
    { steel: 'M30 20h118v20q-16 20 -36 23q-4 -9 -23 -9q-19 0 -23 9q-20 -3 -36 -23z' },
  ],
  lands: [
    { steel: 'M40 14h98v8h-8v6h8v8h-8v6h8v24H40V42h8v-6h-8v-8h8v-6h-8z' },
    {
      steel: 'M40 14h98v8h-8v6h1l-4 4l2 4h1v6h8v24H40V42h8v-6h-8v-8h8v-6h-8z',
      dashed: 'M131 28h7v8h-9',
    },
  ],
  ridge: [
    { steel: 'M24 14h30v52H24zM124 14h30v52h-30z' },
    { steel: 'M24 14h30v10l-9 5v37H24zM124 14h30v52h-21V29l-9 -5z' },
  ],
};

/** The words of all drawings. */
export const WORN = Object.freeze(Object.keys(DRAWN));
