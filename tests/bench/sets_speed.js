// The pools and the clock of sets_speed.py; run in the page.
(() => {
  let best;
  let warmed;
  let pools = [];
  const measures = [
    { name: 'load', scale: 10 },
    { name: 'height', scale: 0.5 },
  ];

  /** Loads the rule and draws ten pools, so that every run measures the same ones. */
  window.prepare = async (from) => {
    ({ best } = await import('/trade/sets.js'));
    warmed = () => import('/app/sets/ready.js').then(({ warm }) => warm());
    let seed = from;
    const drawn = () => {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      return seed / 2147483648;
    };
    const bell = () => drawn() + drawn() + drawn() + drawn() - 2;
    pools = Array.from({ length: 10 }, () =>
      Array.from({ length: 64 }, (_, at) => ({
        name: String(at + 1),
        sizes: [300 + 6 * bell(), 44 + 0.2 * bell()],
      })),
    );
  };

  /** What the screen does in idle time before anybody asks. */
  window.warm = () => warmed();

  window.bare = () => performance.now() - performance.now();

  window.call = (turn) => {
    const begin = performance.now();
    best(pools[turn], measures, 16);
    return performance.now() - begin;
  };
})();
