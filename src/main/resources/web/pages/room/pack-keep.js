// Keeps each room's pack at this workstation, sealed as it came, with the key that the page got to know at its first visit.

const DATABASE = 'wallchart-packs';
const ROOMS = 'rooms';

function database() {
  return new Promise((done, failed) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(ROOMS, { keyPath: 'room' });
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
}

/** Runs `work` on the store and resolves, once all is written, to what the request it returns came to. */
async function inStore(mode, work) {
  const opened = await database();
  try {
    return await new Promise((done, failed) => {
      const transaction = opened.transaction(ROOMS, mode);
      const outcome = work(transaction.objectStore(ROOMS));
      transaction.oncomplete = () => done(outcome.result ?? outcome.value);
      transaction.onabort = () => failed(transaction.error);
    });
  } finally {
    opened.close();
  }
}

/** `{room, key, issuedAt, sealed, highest}`, `highest` the highest version that was ever kept; or undefined. */
export const read = (room) => inStore('readonly', (store) => store.get(room));

/** Keeps it unless a newer one, or one of another key, is kept already by another window, save the one given out at the instant
 * `replaces`; resolves to whether it was kept. */
export function keep(record, replaces = null) {
  return inStore('readwrite', (store) => {
    const outcome = { value: false };
    const known = store.get(record.room);
    known.onsuccess = () => {
      const before = known.result;
      const newer = before && before.issuedAt !== replaces && Date.parse(before.issuedAt) > Date.parse(record.issuedAt);
      if (newer || (before && before.key !== record.key)) return;
      store.put(record);
      outcome.value = true;
    };
    return outcome;
  });
}

/** Forgets pack and key of a room, for an installation from the beginning. */
export const forget = (room) => inStore('readwrite', (store) => store.delete(room));
