// The one way in which pages talk to the service: JSON over its interface, problems as RFC 9457 has them.

const BASE = '/api/v1';
const SESSION = 'wallchart.session';
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

/** Another person is signed in than the one this page belongs to. Nothing was sent. */
export class SomebodyElse extends Error {}

let signInAgain = null;
let told = { elsewhere: () => {}, here: () => {} };
let noticed = () => {};
/** Whom this page belongs to, with the token that the service takes writes of theirs by; null while nobody is known. */
let owner = null;

/** Pages for people hand in here what asks for name and password; a request that meets 401 waits for it and is sent once more. */
export function whenSignInIsNeeded(ask) {
  signInAgain = ask;
}

/**
 * `elsewhere(stranger)`: another person than the owner of this page signed in at another window of this browser, or (null) is gone again.
 * `here(former)`: another person signed in at this page, and something that the former owner was sending was dropped.
 */
export function whenSomebodyElse(listeners) {
  told = listeners;
  window.addEventListener('storage', ({ key }) => { if (key === SESSION && owner) told.elsewhere(stranger()); });
}

/** `listener(problem)` hears of every refusal of the service, whoever asked. */
export function whenRefused(listener) {
  noticed = listener;
}

/** The answer of a sign-in at this page: it belongs to that person now, and other windows hear of it. */
export function begin(session) {
  localStorage.setItem(SESSION, JSON.stringify(session));
  owner = session;
}

/** Whom the service says is signed in when the page opens. What this browser keeps of anybody else's session is of no use any more. */
export function belongTo(person) {
  owner = person;
  if (stranger()) localStorage.removeItem(SESSION);
}

export const end = () => localStorage.removeItem(SESSION);

function kept() {
  try {
    return JSON.parse(localStorage.getItem(SESSION));
  } catch {
    return null;
  }
}

/** Who signed in at this browser after the owner of this page; null where nobody did. */
function stranger() {
  const here = kept();
  return here && here.personId !== owner?.personId ? here : null;
}

/** Throws `SomebodyElse` where what is done here would be done under another name than that of this page's owner. */
export function requireOwner(other = stranger()) {
  if (!other) return;
  told.elsewhere(other);
  throw new SomebodyElse(`somebody else (${other.printedName}) signed in at this browser: what you typed was not sent; sign in again `
    + 'as yourself');
}

/**
 * For an act of several requests: what comes back throws `SomebodyElse` once this page belongs to another person than now, because
 * somebody else signed in between two of them.
 */
export function sameOwner() {
  const before = owner;
  return () => {
    if (!before || before.personId === owner?.personId) return;
    told.here(before);
    throw new SomebodyElse('somebody else signed in: what the person before them typed was not sent');
  };
}

/** The token of the owner's newest session. Another person's is never sent: the service would take the write for theirs. */
function csrfToken() {
  requireOwner();
  return (owner && kept()?.csrfToken) || '';
}

/**
 * One request. Resolves to `{status, data, etag}`; `data` is null where the answer has no JSON.
 * Options: `body` (sent as JSON), `ifMatch` (an ETag as it was received), `token` (of a room; else the session counts),
 * `timeoutMs`, `signal`. What a person writes is sent for that person or not at all: where somebody else signed in, here or in another
 * window, `SomebodyElse` is thrown.
 */
export async function call(method, path, options = {}) {
  const requireSame = sameOwner();
  try {
    return await read(await send(method, path, options));
  } catch (failed) {
    if (options.token || !signInAgain || path === '/session') throw failed;
    if (failed.status === 403) await requireOwnSession();
    if (failed.status !== 401 && failed.code !== 'csrf-token') throw failed;
  }
  await signInAgain();
  if (method !== 'GET') requireSame();
  return read(await send(method, path, options));
}

/** The service refused the token, or the role: if the session is another person's by now, this page must not go on. */
async function requireOwnSession() {
  const here = (await call('GET', '/session')).data;
  if (here.personId !== owner?.personId) requireOwner(here);
}

export const get = (path, options) => call('GET', path, options);
export const post = (path, body, options) => call('POST', path, { ...options, body });
export const put = (path, body, options) => call('PUT', path, { ...options, body });
export const remove = (path, options) => call('DELETE', path, options);

const signsIn = (method, path) => method === 'POST' && path === '/session';

async function send(method, path, { body, ifMatch, token, timeoutMs = PATIENCE_MS, signal }) {
  const headers = { Accept: 'application/json' };
  if (body !== undefined) headers['Content-Type'] = 'application/json';
  if (ifMatch) headers['If-Match'] = ifMatch;
  if (token) headers.Authorization = `Bearer ${token}`;
  else if (method !== 'GET' && !signsIn(method, path)) headers['X-CSRF-Token'] = csrfToken();
  const enough = AbortSignal.timeout(timeoutMs);
  try {
    return await fetch(BASE + path, {
      method,
      headers,
      body: body === undefined ? undefined : JSON.stringify(body, paragraph),
      credentials: token ? 'omit' : 'same-origin',
      cache: 'no-store',
      signal: signal ? AbortSignal.any([signal, enough]) : enough,
    });
  } catch (failed) {
    if (signal?.aborted) throw failed;
    throw new Unreachable(failed);
  }
}

/** No text of the record is of several lines, so that it has one digest everywhere: what was typed in lines goes as one paragraph. */
const paragraph = (name, value) => (typeof value === 'string' && /[\r\n]/.test(value) ? value.trim().replace(/\s*[\r\n]+\s*/g, ' ')
  : value);

async function read(answer) {
  let data = null;
  try {
    const text = await answer.text();
    data = text === '' ? null : JSON.parse(text);
  } catch (failed) {
    if (answer.ok) throw new Unreachable(failed); // cut off, or something on the way answered instead
  }
  if (!answer.ok) {
    const problem = new Problem(answer.status, data ?? {}, answer.headers.get('Retry-After'));
    noticed(problem);
    throw problem;
  }
  return { status: answer.status, data, etag: answer.headers.get('ETag') };
}
