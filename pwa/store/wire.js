/** Speaks to the computer: bounded in time, compressed, and never mistaking a stranger's page for an answer. */

/**
 * What came of a request. `none`: no answer that could be the computer's (no network, time-out, a
 * server in trouble); `problem`: the computer refused the whole request and says why.
 * @typedef {{kind: 'ok', status: number, body: any}
 *   | {kind: 'none', after: number, slow: boolean, code: string}
 *   | {kind: 'problem', status: number, code: string, says: string, next: string, after: number}} Outcome
 * @typedef {{fetch: typeof fetch, url: string, key: string|null}} Line
 */

/** A home server that sleeps hangs rather than refuses; after this it counts as not there. */
const PATIENCE_MS = 30_000;
const BYTES_PER_MS = 20;
const WORTH_PACKING = 1024;

/** @param {string} text @returns {Promise<{body: BodyInit, packed: boolean}>} */
async function packed(text) {
  if (typeof CompressionStream !== 'function' || text.length < WORTH_PACKING)
    return { body: text, packed: false };
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream('gzip'));
  return { body: await new Response(stream).arrayBuffer(), packed: true };
}

/** Whether batches may be larger because they travel compressed. */
export const packs = () => typeof CompressionStream === 'function';

/** @param {Response} response */
function pause(response) {
  const seconds = Number(response.headers.get('Retry-After'));
  return Number.isFinite(seconds) && seconds > 0 ? seconds * 1000 : 0;
}

/** @param {number} after @param {string} code @param {boolean} [slow] @returns {Outcome} */
const none = (after, code, slow = false) => ({ kind: 'none', after, slow, code });

/** @param {string} text */
function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** @param {Response} response @returns {Promise<Outcome>} */
async function heard(response) {
  const after = pause(response);
  const body = parsed(await response.text());
  if (response.ok)
    return body === undefined ? none(0, 'stranger') : { kind: 'ok', status: response.status, body };
  const said = { code: '', title: '', next: '', ...(typeof body === 'object' ? body : {}) };
  if (response.status >= 500) return none(after, String(said.code || 'server-trouble'));
  const { code, title, next } = said;
  return { kind: 'problem', status: response.status, code, says: title, next, after };
}

/**
 * What fetch throws when the line breaks or time is up; anything else is a fault of ours.
 * @param {unknown} error
 */
function lost(error) {
  if (!(error instanceof TypeError || error instanceof DOMException)) throw error;
  return none(0, 'no-contact', error.name === 'TimeoutError');
}

/**
 * @param {Line} line @param {string} path below /api/v1
 * @param {{method?: string, body?: BodyInit|null, headers?: Record<string, string>, size?: number}} request
 */
function ask(line, path, { method = 'GET', body = null, headers = {}, size = 0 }) {
  const sent = new Headers(headers);
  if (line.key) sent.set('Authorization', `Bearer ${line.key}`);
  return line.fetch(`${line.url}/api/v1${path}`, {
    method,
    body,
    headers: sent,
    cache: 'no-store',
    credentials: 'omit',
    redirect: 'error',
    signal: AbortSignal.timeout(PATIENCE_MS + Math.ceil(size / BYTES_PER_MS)),
  });
}

/**
 * @param {Line} line @param {string} path @param {string} text JSON
 * @returns {Promise<Outcome>}
 */
export async function post(line, path, text) {
  const { body, packed: small } = await packed(text);
  const type = { 'Content-Type': 'application/json' };
  const headers = small ? { ...type, 'Content-Encoding': 'gzip' } : type;
  try {
    const size = text.length;
    return await heard(await ask(line, path, { method: 'POST', body, headers, size }));
  } catch (error) {
    return lost(error);
  }
}

/** @param {Line} line @param {string} path @param {Blob} blob @returns {Promise<Outcome>} */
export async function putFile(line, path, blob) {
  const headers = { 'Content-Type': blob.type || 'application/octet-stream' };
  try {
    const request = { method: 'PUT', body: blob, headers, size: blob.size };
    const response = await ask(line, path, request);
    if (response.ok) return { kind: 'ok', status: response.status, body: null };
    return await heard(response);
  } catch (error) {
    return lost(error);
  }
}

/** @param {Line} line @param {string} path @returns {Promise<Outcome>} `body` is a Blob */
export async function getFile(line, path) {
  try {
    const response = await ask(line, path, { size: 2 ** 21 });
    if (!response.ok) return await heard(response);
    return { kind: 'ok', status: response.status, body: await response.blob() };
  } catch (error) {
    return lost(error);
  }
}

/** @param {Line} line @param {string} path @returns {Promise<Outcome>} */
export async function getJson(line, path) {
  try {
    return await heard(await ask(line, path, {}));
  } catch (error) {
    return lost(error);
  }
}
