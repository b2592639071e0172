// The room token of this workstation: asked once, kept at this screen for this room.
import * as api from '/pages/api.js';

const PATIENCE_MS = 5000;

const key = (room) => `wallchart.token.${room}`;

export const token = (room) => localStorage.getItem(key(room));

export function keep(room, given) {
  localStorage.setItem(key(room), given);
}

/** What is said of a token that is not taken, by the status of the answer. */
export const TROUBLE = {
  401: { title: 'That token is not accepted.', text: 'It is mistyped or was revoked. Ask your administrator for this room’s token.' },
  403: { title: 'That token is for another room.', text: 'Each workstation has the token of its own room. Ask your administrator for this one’s.' },
};

const UNCHECKED = { title: 'That token could not be checked.', text: 'The service does not answer. Everything here stays as it was: try again.' };

/** What is wrong with a token, as the service says; null where it takes it. */
export async function findTrouble(room, given) {
  try {
    await api.get(`/rooms/${encodeURIComponent(room)}`, { token: given, timeoutMs: PATIENCE_MS });
    return null;
  } catch (failed) {
    return TROUBLE[failed.status] ?? (failed.status < 500 ? { ...UNCHECKED, text: `${failed.message}. Everything here stays as it was.` } : UNCHECKED);
  }
}

/**
 * Takes a token out of the address (`#token=…`), where it must not stay for the next who looks. Where none is kept it is kept; one that
 * differs from the kept one is only returned, since whoever wrote the link may not choose it for this workstation.
 */
export function fromAddress(room) {
  const given = new URLSearchParams(location.hash.slice(1)).get('token');
  if (given === null) return null;
  history.replaceState(null, '', location.pathname);
  const text = given.trim();
  if (text === '' || text === token(room)) return null;
  if (token(room) !== null) return text;
  keep(room, text);
  return null;
}
