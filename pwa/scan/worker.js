/** A reading worker: its name says in which manner it reads. */
import { makeAnswerer } from './answer.js';

// Most labels carry the address from which this page came.
const answer = makeAnswerer(self.name === 'slow' ? 'slow' : 'fast', self.location.origin);

self.onmessage = async ({ data }) => {
  try {
    self.postMessage({ id: data.id, answer: await answer(data.question) });
  } catch (error) {
    self.postMessage({ id: data.id, trouble: String(error) });
  }
};
