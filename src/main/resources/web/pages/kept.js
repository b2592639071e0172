// What somebody is writing and has not sent. It stands in this browser's storage under their name, so that whoever signs in here next
// neither sees nor sends it. Nothing here holds a password.
import { person } from '/pages/shell.js';

/** A text, such as a reason: kept while it is typed, forgotten when it was sent. It stays whose it was when this was called. */
export function keptText(name) {
  const key = `wallchart.text|${person()?.personId}|${name}`;
  const forget = () => localStorage.removeItem(key);
  return {
    read: () => localStorage.getItem(key) ?? '',
    keep: (text) => (text ? localStorage.setItem(key, text) : forget()),
    forget,
  };
}

/** The same for a form: `read()` gives null where nothing is kept. */
export function keptForm(name) {
  const text = keptText(`form|${name}`);
  return {
    read: () => {
      try {
        return JSON.parse(text.read());
      } catch {
        return null;
      }
    },
    keep: (fields) => text.keep(JSON.stringify(fields)),
    forget: text.forget,
  };
}

/** Something of its own for each person who signs in at this page: `made()` makes it when they are first here. */
export function ownOfEach(made) {
  const all = new Map();
  return () => {
    const id = person()?.personId;
    if (!all.has(id)) all.set(id, made());
    return all.get(id);
  };
}
