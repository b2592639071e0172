// Asks for a technique: live first, else from the pack that this workstation keeps. Only the newest question is ever answered.
import * as api from '/pages/api.js';

const PATIENCE_MS = 1500;

/** The address of a question: `{bodyPart, projection, patientGroup, support, thicknessCm, sidCm, grid, adjust}`. */
export function address(room, question) {
  const query = new URLSearchParams();
  for (const name of ['bodyPart', 'projection', 'patientGroup', 'support', 'thicknessCm', 'sidCm', 'grid']) {
    if (question[name] !== null && question[name] !== undefined) query.set(name, question[name]);
  }
  for (const adjustment of question.adjust) query.append('adjust', adjustment);
  return `/rooms/${encodeURIComponent(room)}/technique?${query}`;
}

/**
 * One asker for a page. `show(answer)` is called with `{kind: 'waiting' | 'technique' | 'refusal', question, …}`; an answer that
 * comes after another question was asked is dropped. `source()` gives `{room, token, pack}` as they are now; `heard(word)` is told
 * 'live', 'lost', 'unknown-token' or 'other-room', and `chart`, `equipment` of a live answer.
 */
export function asker({ source, show, heard }) {
  let newest = 0;
  let running = null;
  let lost = false;

  function forget() {
    newest += 1;
    running?.abort();
    running = null;
  }

  async function ask(question) {
    forget();
    const mine = newest;
    running = new AbortController();
    const { signal } = running;
    const answer = (kind) => {
      if (mine === newest) show({ ...kind, question });
    };
    if (lost) answer(await kept(source().pack, question, 'lost'));
    else show({ kind: 'waiting', question });
    try {
      const { data } = await api.get(address(source().room, question), { token: source().token, timeoutMs: PATIENCE_MS, signal });
      lost = false;
      if (mine !== newest) return;
      answer({ kind: 'technique', technique: data, source: 'live' });
      heard('live', data);
    } catch (failed) {
      if (mine !== newest) return;
      if (failed instanceof api.Problem && failed.status < 500 && failed.status !== 401 && failed.status !== 403) {
        lost = false;
        answer({ kind: 'refusal', problem: failed.body, source: 'live' });
        heard('live');
      } else if (failed instanceof api.Problem || failed instanceof api.Unreachable) {
        const word = reason(failed);
        lost = word === 'lost';
        answer(await kept(source().pack, question, word));
        heard(word);
      } else {
        throw failed;
      }
    }
  }

  return { ask, forget, back: () => { lost = false; } };
}

const reason = ({ status }) => ({ 401: 'unknown-token', 403: 'other-room' })[status] ?? 'lost';

async function kept(pack, question, why) {
  if (!pack) return { kind: 'refusal', problem: NOTHING_KEPT, source: 'none', why };
  const found = await pack.find({ ...question });
  return { ...found, source: 'pack', why };
}

const NOTHING_KEPT = {
  code: 'unavailable',
  title: 'No answer',
  detail: 'The service does not answer and this workstation keeps no chart: use the sheet on the wall, and tell your administrator.',
};
