// The room token of this workstation: asked once, kept at this screen for this room.

const key = (room) => `wallchart.token.${room}`;

export const token = (room) => localStorage.getItem(key(room));

export function keep(room, given) {
  localStorage.setItem(key(room), given);
}

/** Takes a token out of the address (`#token=…`), where it must not stay for the next who looks. */
export function fromAddress(room) {
  const given = new URLSearchParams(location.hash.slice(1)).get('token');
  if (given === null) return;
  history.replaceState(null, '', location.pathname);
  if (given.trim() !== '') keep(room, given.trim());
}
