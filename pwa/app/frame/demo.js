/** Whether the whole workshop on this device was made up to look around in. */
import { signal } from '@preact/signals';

/** True when every joint of the workshop is an invented one. */
export const demo = signal(false);

/**
 * Looks again whenever entries come, as long as it may still change.
 * @param {any} store
 */
export function watchDemo(store) {
  const look = async () => {
    const joints = (await store.allOf('joint')).all('joint');
    demo.value = joints.length > 0 && joints.every(isInvented);
  };
  store.onChange(look);
  return look();
}

/** @param {any} joint */
const isInvented = ({ fields }) =>
  fields.invented?.value === true || fields.programme?.value?.invented === true;
