/** A reading worker: its name says in which manner it reads, its address whose labels are usual. */
import { makeAnswerer } from './answer.js';

const address = new URL(self.location.href).searchParams.get('address') ?? undefined;
const answer = makeAnswerer(self.name === 'slow' ? 'slow' : 'fast', address);

self.onmessage = async ({ data }) => {
  try {
    self.postMessage({ id: data.id, answer: await answer(data.question) });
  } catch (error) {
    self.postMessage({ id: data.id, trouble: String(error) });
  }
};
