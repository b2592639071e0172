// What the page shows stands in the fragment of its address, so that it can be sent to somebody and survives a reload.

/** All that the fragment says, such as `{view: 'past', room: 'r2'}`. */
export const shown = () => Object.fromEntries(new URLSearchParams(location.hash.slice(1)));

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
