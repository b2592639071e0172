// What the page asks the service for. Versions never change, so what was read once is kept while the page is open.
import * as api from '/pages/api.js';

const COME_AGAIN_SECONDS = 3;
const MOST_TRIES = 20;
const LONG_MS = 120_000;

const kept = new Map();

/** The answer, read once; whoever asks for the same thing meanwhile waits for the same answer. A failure is not kept. */
function once(path, { whenBusy, signal } = {}) {
  if (!kept.has(path)) {
    const answer = patiently(path, whenBusy, signal);
    kept.set(path, answer);
    answer.catch(() => kept.delete(path));
  }
  return kept.get(path);
}

/** Comes again while the service says that it is busy with the long computations of others; `whenBusy` is told how often. */
async function patiently(path, whenBusy, signal) {
  for (let tries = 1; ; tries += 1) {
    try {
      return (await api.get(path, { timeoutMs: LONG_MS, signal })).data;
    } catch (failed) {
      if (!(failed instanceof api.Problem) || failed.code !== 'busy' || tries >= MOST_TRIES) throw failed;
      whenBusy?.(tries, failed.message);
      await pause((failed.retryAfter ?? COME_AGAIN_SECONDS) * 1000, signal);
    }
  }
}

const pause = (ms, signal) => new Promise((done, gone) => {
  const timer = setTimeout(done, ms);
  signal?.addEventListener('abort', () => {
    clearTimeout(timer);
    gone(signal.reason);
  });
});

const chart = (room) => `/charts/${encodeURIComponent(room)}`;
const version = (room, number) => `${chart(room)}/versions/${number}`;

function query(examination) {
  const [bodyPart, projection, patientGroup, support] = examination.split('/');
  return new URLSearchParams({ bodyPart, projection, patientGroup, support });
}

export const rooms = async () => (await api.get('/rooms')).data.rooms;
export const versions = async (room) => (await api.get(`${chart(room)}/versions`)).data.versions;
export const rows = (room, number) => once(`${version(room, number)}/rows`);
export const findings = (room, number, how) => once(`${version(room, number)}/findings`, how);
export const physics = (room, number, how) => once(`${version(room, number)}/physics`, how);
export const compare = (room, from, to) => once(`${chart(room)}/compare?from=${from}&to=${to}`);
export const courses = (room, number, examination, how) => once(`${version(room, number)}/courses?${query(examination)}`, how);
export const examinationPhysics = (room, number, examination, how) =>
  once(`${version(room, number)}/physics?${query(examination)}`, how);

/** Opens the change that brings a version back, and gives its number. */
export const bringBack = async (room, number, reason) =>
  (await api.post(`${chart(room)}/reverts`, { version: number, reason })).data.id;
