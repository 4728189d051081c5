// Measured in the page itself: runs as one function with what to do as its argument.
async (ask) => {
  const wait = (ms) => new Promise((done) => setTimeout(done, ms));
  const heading = () => document.querySelector('h1')?.textContent ?? '';

  // The frame that holds a change is laid out and painted before the message behind it is heard.
  const painted = () =>
    new Promise((done) => {
      requestAnimationFrame(() => {
        const line = new MessageChannel();
        line.port1.onmessage = () => done(performance.now());
        line.port2.postMessage(null);
      });
    });

  const changed = (shows) =>
    new Promise((done) => {
      const look = () => {
        if (!shows()) return;
        watch.disconnect();
        done();
      };
      const watch = new MutationObserver(look);
      watch.observe(document.body, { childList: true, subtree: true, characterData: true });
      look();
    });

  // As the page itself goes when a label was read: an address inside it, nothing is loaded anew.
  async function goTo(path, shows) {
    const link = document.createElement('a');
    link.href = path;
    document.body.append(link);
    await painted();
    const begun = performance.now();
    link.click();
    await changed(shows);
    const took = (await painted()) - begun;
    link.remove();
    await wait(ask.rest);
    return took;
  }

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
