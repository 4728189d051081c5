/** Questions to the computer; a refusal becomes an error with its sentence and next step. */

/**
 * @param {any} store
 * @param {string} method
 * @param {string} path
 * @param {any} [body]
 * @returns {Promise<any>}
 */
export async function asked(store, method, path, body) {
  const { status, body: answer } = await store.ask(method, path, body);
  if (status < 400) return answer;
  const { title, next, code } = answer ?? {};
  throw Object.assign(new Error(title ?? `answer ${status}`), { says: title, next, code });
}
