// The one way in which pages talk to the service: JSON over its interface, problems as RFC 9457 has them.

const BASE = '/api/v1';
const CSRF = 'wallchart.csrf';
const PATIENCE_MS = 30_000;

/**
 * The service said no: `status`, stable `code`, `detail` for people, `errors` with JSON Pointers, `body` with all members,
 * `retryAfter` in seconds where it asks to come again.
 */
export class Problem extends Error {
  constructor(status, body, retryAfter = null) {
    super(body.detail ?? body.title ?? `the service answered ${status}`);
    this.status = status;
    this.code = body.code ?? 'fault';
    this.detail = this.message;
    this.errors = body.errors ?? [];
    this.body = body;
    this.retryAfter = /^[0-9]{1,4}$/.test(retryAfter ?? '') ? Number(retryAfter) : null;
  }
}

/** The service did not answer: the network, the service or its patience is gone. Nothing is known about what became of a write. */
export class Unreachable extends Error {
  constructor(cause) {
    super('the service cannot be reached: check the network, then try again', { cause });
  }
}

/** Another person signed in while the request waited for it. */
export class SomebodyElse extends Error {
  constructor() {
    super('somebody else signed in: what the person before them typed was not sent');
  }
}

let signInAgain = null;

/** Pages for people hand in here what asks for name and password; a request that meets 401 waits for it and is sent once more. */
export function whenSignInIsNeeded(ask) {
  signInAgain = ask;
}

export function keepCsrfToken(token) {
  if (token) localStorage.setItem(CSRF, token);
  else localStorage.removeItem(CSRF);
}

/**
 * One request. Resolves to `{status, data, etag}`; `data` is null where the answer has no JSON.
 * Options: `body` (sent as JSON), `ifMatch` (an ETag as it was received), `token` (of a room; else the session counts),
 * `timeoutMs`, `signal`; `mayRepeat` is asked after a sign-in in between whether the request is still to be sent, because somebody else
 * may have signed in: where it says no, `SomebodyElse` is thrown and nothing was sent.
 */
export async function call(method, path, options = {}) {
  const answer = await send(method, path, options);
  if (answer.status === 401 && !options.token && signInAgain && !path.startsWith('/session')) {
    await signInAgain();
    if (options.mayRepeat && !options.mayRepeat()) throw new SomebodyElse();
    return read(await send(method, path, options));
  }
  return read(answer);
}

export const get = (path, options) => call('GET', path, options);
export const post = (path, body, options) => call('POST', path, { ...options, body });
export const put = (path, body, options) => call('PUT', path, { ...options, body });
export const remove = (path, options) => call('DELETE', path, options);

async function send(method, path, { body, ifMatch, token, timeoutMs = PATIENCE_MS, signal }) {
  const headers = { Accept: 'application/json' };
  if (body !== undefined) headers['Content-Type'] = 'application/json';
  if (ifMatch) headers['If-Match'] = ifMatch;
  if (token) headers.Authorization = `Bearer ${token}`;
  else if (method !== 'GET') headers['X-CSRF-Token'] = localStorage.getItem(CSRF) ?? '';
  const enough = AbortSignal.timeout(timeoutMs);
  try {
    return await fetch(BASE + path, {
      method,
      headers,
      body: body === undefined ? undefined : JSON.stringify(body),
      credentials: token ? 'omit' : 'same-origin',
      cache: 'no-store',
      signal: signal ? AbortSignal.any([signal, enough]) : enough,
    });
  } catch (failed) {
    if (signal?.aborted) throw failed;
    throw new Unreachable(failed);
  }
}

async function read(answer) {
  let data = null;
  try {
    const text = await answer.text();
    data = text === '' ? null : JSON.parse(text);
  } catch (failed) {
    if (answer.ok) throw new Unreachable(failed); // cut off, or something on the way answered instead
  }
  if (!answer.ok) throw new Problem(answer.status, data ?? {}, answer.headers.get('Retry-After'));
  return { status: answer.status, data, etag: answer.headers.get('ETag') };
}
