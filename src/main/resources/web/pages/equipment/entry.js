// What is alike wherever somebody enters equipment: a draft that survives, trying out first, then in force with a reason; and whoever
// entered something meanwhile is named.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { keptForm, ownOfEach } from '/pages/kept.js';
import { trouble } from '/pages/shell.js';
import { moment } from '/pages/words.js';

const entries = ownOfEach(() => new Map());

/** One thing that whoever is signed in is entering. `empty()` makes a new draft; it is kept at this screen under its name and theirs. */
export function entryOf(name, empty) {
  const own = entries();
  if (!own.has(name)) own.set(name, begun(keptForm(`equipment.${name}`), empty));
  return own.get(name);
}

const begun = (kept, empty) => ({
  kept, empty, draft: { ...empty(), ...kept.read() }, busy: '', tried: null, etag: null, failed: null, meanwhile: null, entered: null,
  said: {},
});

/** Whoever changes what was tried has to try again: the answer was about something else. */
export function keep(entry, draw) {
  entry.kept.keep(entry.draft);
  Object.assign(entry, { tried: null, failed: null, entered: null });
  draw();
}

/** As {@link keep}, for what does not change the answer: the reason. */
export function keepReason(entry, reason, draw) {
  entry.draft.reason = reason;
  entry.kept.keep(entry.draft);
  draw();
}

export async function tryOut(entry, address, body, draw) {
  Object.assign(entry, { busy: 'trying', failed: null, tried: null, entered: null, meanwhile: null });
  draw();
  try {
    const { data, etag } = await api.post(address, body, { timeoutMs: 120_000 });
    Object.assign(entry, { tried: data, etag });
  } catch (failed) {
    entry.failed = failed;
  }
  entry.busy = '';
  draw();
  document.getElementById('outcome')?.focus();
}

/** Puts in force what was tried, if nobody entered anything since; `done()` reads the room anew. */
export async function putInForce(entry, room, address, body, draw, done) {
  Object.assign(entry, { busy: 'entering', failed: null, meanwhile: null });
  draw();
  try {
    entry.entered = (await api.put(address, body, { ifMatch: entry.etag, timeoutMs: 120_000 })).data;
    entry.kept.forget();
    Object.assign(entry, { tried: null, said: {} });
    await done();
    draw(); // so that an empty draft is one of what is in force now
    entry.draft = entry.empty();
  } catch (failed) {
    entry.failed = failed;
    if (failed.status === 412) await whoWasBefore(entry, room, done);
  }
  entry.busy = '';
  draw();
  document.getElementById('outcome')?.focus();
}

async function whoWasBefore(entry, room, reload) {
  entry.tried = null;
  await reload();
  [entry.meanwhile] = (await api.get(`/rooms/${room}/equipment/revisions`)).data.revisions;
}

/** What came of it; what is entered stays typed until it is in force. */
export const outcome = (entry, asked) => html`
  <div id="outcome" tabindex="-1" role="status">
    ${entry.busy ? html`<p>${entry.busy === 'trying' ? 'Each row of the charts is being worked out' : 'It is being entered'} … <progress
      aria-label="Working"></progress></p>` : nothing}
    ${entry.meanwhile ? meanwhile(entry.meanwhile) : entry.failed ? asked(entry.failed) ?? trouble(entry.failed) : nothing}
    ${entry.entered ? html`<p class="tell good"><strong>In force.</strong>${entry.entered.changed
      ? `It is revision ${entry.entered.revision}; rooms are answered by it from now on.
        Rows to look at: ${entry.entered.effects.affectedRows}.`
      : 'It said what was in force already: nothing was entered.'}</p>` : nothing}
  </div>`;

const meanwhile = (newest) => html`
  <p class="tell blocking"><strong>Somebody was before you.</strong>${newest.installedBy} entered revision ${newest.revision}
    on ${moment(newest.inForceFrom)}:
    “${newest.reason}”. What you typed is still here. Look at that revision under “History”,
      then try yours again: it is compared with it.</p>`;

/** Reason and button; only what was tried can be put in force. */
export const reasonAndEnter = (entry, mayEnter, enter, draw) => (mayEnter ? html`
  <form class="enter" @submit=${enter}>
    <label class="field">Reason, as the ledger will have it; at least 10 characters; line breaks become spaces
      <textarea name="reason" maxlength="2000" required .value=${entry.draft.reason ?? ''}
        @input=${(event) => keepReason(entry, event.target.value, draw)}></textarea></label>
    <p><button class="first" ?disabled=${!entry.tried || entry.busy !== ''}>Put in force</button>
      <span class="small">${entry.tried
        ? 'From now on rooms are answered by it. The revision before stays on record.'
          : 'Try it first: you see what it does to each row.'}</span></p>
  </form>` : html`<p class="tell"><strong>Only tried.</strong>A medical physicist puts it in force.</p>`);
