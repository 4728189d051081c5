// What the benches of taps share: the clock from a tap to the painted frame that answers it.
(rest) => {
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
      watch.observe(document.body, {
        attributes: true,
        childList: true,
        subtree: true,
        characterData: true,
      });
      look();
    });

  async function clocked(tap, shows) {
    await painted();
    const begun = performance.now();
    tap();
    await changed(shows);
    const took = (await painted()) - begun;
    await wait(rest);
    return took;
  }

  // As the page itself goes: an address inside it, nothing is loaded anew.
  async function goTo(path, shows) {
    const link = document.createElement('a');
    link.href = path;
    document.body.append(link);
    const took = await clocked(() => link.click(), shows);
    link.remove();
    return took;
  }

  return { wait, heading, clocked, goTo };
};
