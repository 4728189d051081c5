/** Questions only the computer can answer: devices, pairing codes, label sheets. */

import { NotPaired } from './pairing.js';

const PATIENCE_MS = 10_000;

/** @param {Response} response */
async function bodyOf(response) {
  const type = response.headers.get('Content-Type') ?? '';
  if (/^application\/([a-z]+\+)?json\b/.test(type)) return response.json();
  return response.status === 204 ? null : response.blob();
}

/**
 * @param {import('./core.js').Core} core @param {string} method
 * @param {string} path below /api/v1 (which may stand before it)
 * @param {any} [body] sent as JSON
 * @returns {Promise<{status: number, body: any}>} body: JSON, or a Blob
 */
export async function ask(core, method, path, body) {
  const { url, key } = core.line();
  const headers = new Headers(key ? { Authorization: `Bearer ${key}` } : {});
  if (body !== undefined) headers.set('Content-Type', 'application/json');
  try {
    const response = await core.world.fetch(`${url}/api/v1${path.replace(/^\/api\/v1/, '')}`, {
      method,
      headers,
      body: body === undefined ? null : JSON.stringify(body),
      cache: 'no-store',
      credentials: 'omit',
      signal: AbortSignal.timeout(PATIENCE_MS),
    });
    return { status: response.status, body: await bodyOf(response) };
  } catch (error) {
    throw Object.assign(new NotPaired(), { cause: error });
  }
}
