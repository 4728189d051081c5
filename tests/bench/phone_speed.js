// Measured in the page itself: runs as one function with what to do as its argument.
async (ask, { wait, heading, goTo }) => {
  // The whole answer, not the name alone: what it is, may I use it, how is it tightened.
  const answered = ({ name, joint }) =>
    heading() === name &&
    document.querySelector('.verdict') !== null &&
    (!joint || document.querySelector('.joint .values') !== null);

  function watchShifts() {
    const seen = [];
    const watch = new PerformanceObserver((list) => {
      for (const { value } of list.getEntries()) seen.push(value);
    });
    watch.observe({ type: 'layout-shift', buffered: false });
    return seen;
  }

  async function records() {
    const times = [];
    const bare = [];
    const shifts = watchShifts();
    for (const part of ask.parts) {
      bare.push(await goTo('/nowhere', () => !ask.parts.some(({ name }) => heading() === name)));
      times.push(await goTo(part[ask.way], () => answered(part)));
    }
    return { times, bare, shifts };
  }

  async function emptyTransactions(count) {
    const base = await new Promise((done) => {
      const asked = indexedDB.open('bench-empty', 1);
      asked.onupgradeneeded = () => asked.result.createObjectStore('row');
      asked.onsuccess = () => done(asked.result);
    });
    const took = [];
    for (let i = 0; i < count; i += 1) {
      const begun = performance.now();
      await new Promise((kept) => {
        const change = base.transaction('row', 'readwrite', { durability: 'strict' });
        change.objectStore('row').put(i, i);
        change.oncomplete = kept;
      });
      took.push(performance.now() - begun);
      await wait(ask.rest);
    }
    base.close();
    return took;
  }

  async function kept() {
    const { openStore } = await import('/store/index.js');
    const store = await openStore();
    const times = [];
    for (const draft of ask.drafts) {
      const begun = performance.now();
      await store.keep([draft]);
      times.push(performance.now() - begun);
      await wait(ask.rest);
    }
    return { times, bare: await emptyTransactions(ask.drafts.length), shifts: [] };
  }

  return ask.what === 'records' ? records() : kept();
};
