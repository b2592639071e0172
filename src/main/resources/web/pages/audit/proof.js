// Whether the ledger is sound. Nothing is green here that was not just found out.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { instant } from '/pages/audit/instants.js';

/** A million events take a quarter of a minute; a slow disk more. */
const PATIENCE_MS = 600_000;

const proof = { state: 'unknown', found: null, failed: null, doubted: null, seconds: 0, run: 0 };

/** Asks for the whole check and draws meanwhile; `doubted` is what the service says of the ledger, where that is why. */
export async function verify(draw, doubted = null) {
  const run = proof.run + 1;
  Object.assign(proof, { state: 'running', found: null, failed: null, doubted, seconds: 0, run });
  draw();
  const ticking = setInterval(() => {
    if (proof.run === run) proof.seconds += 1;
    draw();
  }, 1000);
  const known = (what) => { if (proof.run === run) Object.assign(proof, what); };
  try {
    known({ state: 'found', found: (await api.get('/audit/verification', { timeoutMs: PATIENCE_MS })).data });
  } catch (failed) {
    known({ state: 'failed', failed: failed.message });
  } finally {
    clearInterval(ticking);
    draw();
  }
}

/** Whatever was asked: an answer that the ledger is in doubt ends what was found before, and what is still being found. */
export function heedDoubts(draw) {
  api.whenRefused((problem) => { if (problem.code === 'ledger-in-doubt') verify(draw, problem.message); });
}

/** What was found last; null while nothing is known. */
export const found = () => proof.found;

export const proofPanel = (draw) => html`
  <section class="panel proof" aria-labelledby="proof-heading">
    <div class="row spread">
      <h2 id="proof-heading">Is the ledger sound?</h2>
      <button type="button" ?disabled=${proof.state === 'running'} @click=${() => verify(draw)}>Verify now</button>
    </div>
    <div role="status">${verdict()}</div>
    ${proof.found ? facts(proof.found) : notYet()}
  </section>`;

function verdict() {
  if (proof.state === 'failed') return html`<p class="tell caution"><strong>Not known.</strong>It was not verified: ${proof.failed}.</p>`;
  if (!proof.found && proof.doubted) {
    return html`<p class="tell blocking"><strong>In doubt.</strong>The service says: ${proof.doubted}. Every event is read again to find
      out what it is about.</p>`;
  }
  if (!proof.found) {
    return html`<p class="tell"><strong>Not known yet.</strong>Every event is read and hashed again, and held against the signed checkpoints
      and the records it speaks of.</p>`;
  }
  const { sound, stopped, firstBad } = proof.found;
  return html`
    ${sound ? soundness(proof.found) : doubt(firstBad)}
    ${stopped ? html`<p class="tell blocking"><strong>Stopped.</strong>Nothing is entered or signed any more, because: ${stopped}.</p>`
      : nothing}
    ${sound && !stopped ? nothing : whatToDo()}`;
}

const soundness = ({ events, stopped, checkpoint }) => html`
  <p class="tell ${stopped ? '' : 'good'}"><strong>Sound${stopped ? ' as it stands now' : ''}.</strong>All ${events} events are as they were
    entered, one follows the other, and they agree with ${checkpoint ? 'the signed checkpoints and ' : ''}the records they speak of.
    ${checkpoint ? nothing : 'No checkpoint is signed yet: nothing outside the database speaks for them.'}</p>`;

const doubt = (firstBad) => html`
  <p class="tell blocking"><strong>In doubt${firstBad.seq ? ` from event ${firstBad.seq} on` : ''}.</strong>${firstBad.what}.</p>`;

const whatToDo = () => html`
  <div class="tell caution"><strong>What to do.</strong>Rooms go on being answered. Sign and enter nothing until it is explained.
    <ul>
      <li>Tell the medical physicist and the administrator, and keep the database and the folder of checkpoints as they are: copy both.</li>
      <li>Compare with the newest export that was kept elsewhere, and with the backup, from the event named above on.</li>
      <li>A record that differs from its event is restored from the backup.
        Where chain or checkpoints are in doubt, a medical physicist goes on
        with the command <code>ledger resume</code>, under their password and with a reason; the doubt stays on record.</li>
    </ul>
  </div>`;

/** As tall as what stands here of a sound ledger, so that nothing below moves away from whoever is about to click it. */
const notYet = () => html`
  <dl class="facts">
    <dt>Verified</dt><dd>${proof.state === 'running' ? html`<progress aria-label="Verifying"></progress>
      <span aria-hidden="true">${proof.seconds} s</span>` : 'no'}</dd>
    <dt>First checkpoint</dt><dd>not looked at</dd>
    <dt>Last checkpoint</dt><dd>not looked at</dd>
  </dl>
  <p class="later">Hashes follow.</p>`;

const facts = (known) => html`
  <dl class="facts">
    <dt>Verified</dt><dd>${instant(known.checkedAt)}${known.events === null ? nothing : `, ${known.events} events`}</dd>
    <dt>First checkpoint</dt>
    <dd>${known.checkpointsSince ? since(known.checkpointsSince) : known.sound ? 'none is signed yet' : 'not looked for'}</dd>
    <dt>Last checkpoint</dt>
    <dd>${known.checkpoint ? checkpoint(known) : known.sound ? 'none is signed yet' : 'not looked for: the doubt comes first'}</dd>
  </dl>
  ${known.sound ? hashes(known) : nothing}
  ${known.notes.length ? html`<h3>To be looked at</h3><ul>${known.notes.map((note) => html`<li>${note}</li>`)}</ul>` : nothing}`;

/** A folder of checkpoints that was lost, or emptied, begins anew: whoever knows how old the ledger is sees it here. */
const since = ({ seq, at }) => html`event ${seq}; signed ${instant(at)}`;

const checkpoint = ({ checkpoint: signed, events }) => html`
  event ${signed.seq}${events > signed.seq ? `, ${events - signed.seq} entered since` : ', the newest'}; signed ${instant(signed.at)},
  key <code>${signed.keyId}</code>`;

const hashes = ({ head, events, checkpoint: signed }) => html`
  <details>
    <summary>Hashes, to be compared with a printed sheet or a kept export</summary>
    ${signed ? html`<p>What was rewritten before the first checkpoint was signed shows in none of them. Where the service ran before
      that day, earlier ones were lost or removed: compare with an export from then.</p>` : nothing}
    <dl class="facts">
      <dt>Newest event, ${events}</dt><dd><code>${head}</code></dd>
      ${signed ? html`<dt>Checkpoint, event ${signed.seq}</dt>
        <dd>${signed.hash === head ? 'the same' : html`<code>${signed.hash}</code>`}</dd>
        <dt>Signature (Ed25519)</dt><dd><code>${signed.signature}</code></dd>` : nothing}
    </dl>
  </details>`;
