// From the last release of the thumb, or a picture taken, until each answer is painted; in ms.
async (ask, { clocked }) => {
  let begun = performance.now();
  const felt = ({ timeStamp }) => {
    begun = timeStamp;
  };
  for (const name of ['pointerup', 'change']) addEventListener(name, felt, true);

  const says = (place, word) => document.querySelector(place)?.textContent.includes(word);
  const pressed = () =>
    [...document.querySelectorAll('.strip [aria-pressed="true"]')].some(
      ({ textContent }) => textContent === ask.word,
    );
  const shows = {
    scene: () => document.querySelector('main.scene'),
    said: () => says('.strip .seen', ask.word),
    chosen: () => pressed() && says('.strip .act', ask.word),
  };
  const took = [];
  for (const what of ask.shows) {
    await clocked(() => {}, shows[what]);
    took.push(performance.now() - begun);
  }
  for (const name of ['pointerup', 'change']) removeEventListener(name, felt, true);
  return took;
};
