// Measured in the page itself: runs as one function with what to do as its argument.
async (ask, { wait, heading, clocked, goTo }) => {
  const ready = () => heading() && !document.querySelector('main[aria-busy="true"]');

  const nowhere = () => {
    const was = heading();
    return goTo('/nowhere', () => ready() && heading() !== was);
  };

  async function opened(path, shows) {
    const times = [];
    const bare = [];
    await goTo(path, shows);
    for (let i = 0; i < ask.samples; i += 1) {
      bare.push(await nowhere());
      times.push(await goTo(path, shows));
    }
    return { times, bare };
  }

  const button = (place, words) =>
    [...document.querySelectorAll(place)].find((one) => one.textContent.includes(words));

  async function inspected(which) {
    const bare = [];
    const times = { verdict: [], next: [] };
    for (let i = 0; i < ask.samples; i += 1) {
      await goTo('/more', () => ready() && rows() > 5);
      bare.push(await nowhere());
    }
    await goTo(`/inspect/${ask.bag}`, () => ready() && button('.looks button', 'Yes'));
    for (let i = 0; i < ask.samples; i += 1) {
      const was = heading();
      const act = () => document.querySelector('.act');
      times.verdict.push(
        await clocked(
          () => button('.looks button', 'Yes').click(),
          () => act() && !act().disabled,
        ),
      );
      times.next.push(
        await clocked(
          () => act().click(),
          () => heading() !== was && button('.looks button', 'Yes'),
        ),
      );
    }
    return { times: times[which], bare };
  }

  async function found() {
    const bare = [];
    const times = [];
    await goTo('/find', () => ready() && document.querySelector('main input'));
    await wait(ask.rest);
    for (let i = 0; i < ask.samples; i += 1) {
      const name = `Piece ${String((i * 97 + 11) % ask.pieces).padStart(4, '0')}`;
      const field = document.querySelector('main input');
      times.push(
        await clocked(
          () => {
            field.value = name;
            field.dispatchEvent(new Event('input', { bubbles: true }));
          },
          () => [...document.querySelectorAll('.row b')].some((one) => one.textContent === name),
        ),
      );
    }
    for (let i = 0; i < ask.samples; i += 1) {
      await goTo('/more', () => ready() && rows() > 5);
      bare.push(await nowhere());
    }
    return { times, bare };
  }

  const rows = () => document.querySelectorAll('.row').length;
  const says = (what) => what.test(document.querySelector('main')?.textContent ?? '');
  const ways = {
    verdict: () => inspected('verdict'),
    next: () => inspected('next'),
    pool: () => opened(`/set/new?kind=${ask.pool}`, () => document.querySelector('.set-plot svg')),
    'pool, whole': () => opened(`/set/new?kind=${ask.pool}`, () => document.querySelector('.set-pieces .row')),
    away: () => opened('/away', () => ready() && heading() === 'Machine shop'),
    shelf: () => opened('/shelf', () => ready() && rows() > 2),
    'shelf, whole': () => opened('/shelf', () => ready() && rows() > 2 * ask.kinds && says(/[0-9] pieces?,/)),
    sets: () => opened('/sets', () => ready() && rows() > 6),
    'sets, whole': () => opened('/sets', () => ready() && rows() >= ask.kinds),
    kind: () => opened(`/kind/${ask.pool}`, () => ready() && document.querySelector('main a[href^="/set/new"]')),
    'kind, whole': () => opened(`/kind/${ask.pool}`, () => ready() && says(/[0-9]+ on the shelf/)),
    history: () => opened(`/history/kind/${ask.pool}`, () => heading().includes('kind 0') || heading().includes('kind 1')),
    'history, whole': () => opened(`/history/kind/${ask.pool}`, () => ready() && document.querySelector('.over-time')),
    find: found,
  };
  return ways[ask.what]();
};
