// Measured in the page itself: runs as one function with what to do as its argument.
async (ask) => {
  const frame = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));

  async function goTo(path, shows) {
    const link = document.createElement('a');
    link.href = path;
    document.body.append(link);
    const begun = performance.now();
    link.click();
    while (!shows()) await new Promise((done) => requestAnimationFrame(done));
    await frame();
    link.remove();
    return performance.now() - begun;
  }

  const heading = () => document.querySelector('h1')?.textContent ?? '';

  if (ask.what === 'records') {
    const times = [];
    const bare = [];
    for (const { id, name } of ask.parts) {
      times.push(await goTo(`/part/${id}`, () => heading() === name));
      bare.push(await goTo('/nowhere', () => heading() !== name));
    }
    return { times, bare };
  }

  const { openStore } = await import('/store/index.js');
  const store = await openStore();
  const times = [];
  for (const draft of ask.drafts) {
    const begun = performance.now();
    await store.keep([draft]);
    times.push(performance.now() - begun);
    await frame();
  }
  const bare = await new Promise((done) => {
    const asked = indexedDB.open('bench-empty', 1);
    asked.onupgradeneeded = () => asked.result.createObjectStore('row');
    asked.onsuccess = async () => {
      const took = [];
      for (let i = 0; i < ask.drafts.length; i += 1) {
        const begun = performance.now();
        await new Promise((kept) => {
          const change = asked.result.transaction('row', 'readwrite', { durability: 'strict' });
          change.objectStore('row').put(i, i);
          change.oncomplete = kept;
        });
        took.push(performance.now() - begun);
      }
      done(took);
    };
  });
  return { times, bare };
};
