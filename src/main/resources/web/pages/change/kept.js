// What somebody typed and the service has not confirmed yet. It stands in this browser's storage under change, person, window and row,
// goes there before anything is sent, and leaves when the service has said that it has it. Nothing here holds a password.

const PREFIX = 'wallchart.unsent';

/** The keeper of one change for one person in one window. */
export class Kept {
  constructor(change, person, window) {
    this.own = `${PREFIX}|${change}|${person}|${window}|`;
    this.all = `${PREFIX}|${change}|${person}|`;
  }

  /** Keeps what is typed in a row: `{op, fields, seen, isNew, at}`. */
  keep(row, record) {
    localStorage.setItem(this.own + row, JSON.stringify({ ...record, at: new Date().toISOString() }));
  }

  forget(row) {
    localStorage.removeItem(this.own + row);
  }

  /** Everything that windows left behind which are closed by now, and takes it over into this one: `[[row, record], …]`. */
  takeOver(isOpen) {
    const found = new Map();
    for (const name of Object.keys(localStorage).filter((one) => one.startsWith(this.all)).sort()) {
      const [window, row] = parts(name.slice(this.all.length));
      const mine = name.startsWith(this.own);
      if (!mine && isOpen(window)) continue;
      const record = read(name);
      if (record && !(found.has(row) && found.get(row).at > record.at)) found.set(row, record);
      if (!mine) localStorage.removeItem(name);
    }
    found.forEach((record, row) => localStorage.setItem(this.own + row, JSON.stringify(record)));
    return [...found];
  }
}

function parts(rest) {
  const at = rest.indexOf('|');
  return [rest.slice(0, at), rest.slice(at + 1)];
}

function read(name) {
  try {
    return JSON.parse(localStorage.getItem(name));
  } catch {
    return null; // written by hand: nothing that anybody typed here
  }
}

/**
 * The name of this window, which outlives a reload, and a test whether another one is still open. A lock tells them apart; where the
 * browser has none (plain HTTP from another machine), every other window counts as closed, and what it sends is compared anyway.
 */
export async function thisWindow() {
  let name = sessionStorage.getItem('wallchart.window') ?? crypto.getRandomValues(new Uint32Array(2)).join('-');
  let open = new Set();
  if (navigator.locks) {
    if (!(await hold(name))) {
      name = crypto.getRandomValues(new Uint32Array(2)).join('-'); // a copy of another window
      await hold(name);
    }
    open = new Set((await navigator.locks.query()).held.map((lock) => lock.name));
  }
  sessionStorage.setItem('wallchart.window', name);
  return { name, isOpen: (other) => other !== name && open.has(lockOf(other)) };
}

const lockOf = (name) => `wallchart.window.${name}`;

/** Holds the lock until the page goes; says whether it was free, or became so: the page before a reload lets go of it late. */
function hold(name) {
  return new Promise((done) => {
    navigator.locks.request(lockOf(name), { signal: AbortSignal.timeout(500) }, () => {
      done(true);
      return new Promise(() => {});
    }).catch(() => done(false));
  });
}
