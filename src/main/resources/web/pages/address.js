// What the page shows stands in the fragment of its address, so that it can be sent to somebody and survives a reload.

/** All that the fragment says, such as `{view: 'past', room: 'r2'}`. */
export const shown = () => Object.fromEntries(new URLSearchParams(location.hash.slice(1)));

/** The room that an address names, as the service names rooms; else an empty text, since nothing is asked with anything else in it. */
export function roomIn(path = location.pathname) {
  const named = path.split('/')[2] ?? '';
  return /^[a-z0-9]([a-z0-9-]{0,30}[a-z0-9])?$/.test(named) ? named : '';
}

/** A fragment of what is shown now with changes; what is null or empty is left out. */
export function fragment(changes, base = shown()) {
  const all = new URLSearchParams();
  Object.entries({ ...base, ...changes }).forEach(([name, text]) => {
    if (text !== null && text !== undefined && text !== '') all.set(name, text);
  });
  return `#${all}`;
}

/** A query string of what is there. */
export function query(parameters) {
  return fragment(parameters, {}).replace('#', '?');
}
