// The export, and the reviews that medical physicists record.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { person, trouble } from '/pages/shell.js';
import { fragment } from '/pages/address.js';
import { keptForm, ownOfEach } from '/pages/kept.js';
import { endOfDay, instant, toUtc } from '/pages/audit/instants.js';
import { actorName, knownActs, people, roomName, rooms } from '/pages/audit/acts.js';
import { found } from '/pages/audit/proof.js';

const FIELDS = ['from', 'to', 'room', 'actor', 'action', 'findings'];
const past = { earlier: null, failed: null };
/** The review that whoever is signed in is writing. */
const writing = ownOfEach(() => {
  const kept = keptForm('audit.review');
  return { kept, draft: kept.read() ?? {}, refused: null, recorded: null, sending: false };
});

export async function load(draw, anew = false) {
  if (past.earlier && !anew) return;
  try {
    past.earlier = (await api.get('/audit/events?action=audit-reviewed&order=newest&limit=50')).data.events;
    past.failed = null;
  } catch (failed) {
    past.failed = failed;
  }
  draw();
}

function typed(event) {
  const review = writing();
  review.draft = { ...review.draft, [event.target.name]: event.target.value };
  review.kept.keep(review.draft);
}

async function record(event, draw) {
  event.preventDefault();
  const review = writing();
  const form = event.target.elements;
  const body = Object.fromEntries(FIELDS.map((name) => [name, form[name].value.trim()]).filter(([, text]) => text));
  body.from = toUtc(body.from ?? '');
  body.to = endOfDay(body.to ?? '');
  Object.assign(review, { sending: true, refused: null, recorded: null });
  draw();
  try {
    review.recorded = (await api.post('/audit/reviews', body)).data;
    review.draft = {};
    review.kept.forget();
    await load(draw, true);
  } catch (failed) {
    review.refused = failed;
  }
  review.sending = false;
  draw();
  document.getElementById('review-outcome')?.focus();
}

export const reviewPanel = (draw) => html`${exportPanel()}${recording(draw)}${earlier()}`;

const exportPanel = () => html`
  <section class="panel" aria-labelledby="export-heading">
    <h2 id="export-heading">Take the ledger with you</h2>
    <p>All events, one a line (NDJSON), oldest first. Each line is the canonical JSON (RFC 8785) of an event:
      take the member <code>hash</code> out, and the
      SHA-256 of what is left is that hash; <code>prev</code> is the hash of the line before.
        So anybody can check it without this program.</p>
    <p>A cut end does not show in the lines themselves. Keep with the file how many events there were, and the hash of the newest:
      ${found()?.events ? html`${found().events} events, <code>${found().head}</code>, found sound ${instant(found().checkedAt)}.`
        : 'see above, once the ledger was found sound.'}</p>
    <p><a class="button" href="/api/v1/audit/export" download="ledger.ndjson" @click=${stillSignedIn}>Download ledger.ndjson</a></p>
  </section>`;

/** A session that is over would be saved as a file: so it is asked for first. */
async function stillSignedIn(event) {
  event.preventDefault();
  const { href } = event.currentTarget;
  await api.get('/rooms');
  Object.assign(document.createElement('a'), { href, download: 'ledger.ndjson' }).click();
}

const recording = (draw) => html`
  <section class="panel" aria-labelledby="review-heading">
    <h2 id="review-heading">Record a review</h2>
    ${person().role === 'physicist' ? form(writing(), draw) : html`<p>Medical physicists record what they looked at in the ledger and what they found.
      You can read their reviews below.</p>`}
  </section>`;

const form = (review, draw) => html`
  <div id="review-outcome" tabindex="-1" role="alert">
    ${review.refused ? trouble(review.refused) : nothing}
    ${review.recorded ? html`<p class="tell good"><strong>Recorded</strong>
      as <a href=${fragment({ event: review.recorded.seq }, {})}>event ${review.recorded.seq}</a>.</p>` : nothing}
  </div>
  <form class="review" @submit=${(event) => record(event, draw)} @input=${typed}>
    <div class="row">
      <label class="field">Looked at from the day<input type="date" name="from" required .value=${review.draft.from ?? ''}></label>
      <label class="field">To the day, included<input type="date" name="to" required .value=${review.draft.to ?? ''}></label>
      <label class="field">Room<select name="room" .value=${review.draft.room ?? ''}><option value="">all</option>
        ${rooms().map(([id, name]) => html`<option value=${id} ?selected=${id === review.draft.room}>${name}</option>`)}</select></label>
      <label class="field">Person<select name="actor" .value=${review.draft.actor ?? ''}><option value="">all</option>
        ${people().map((one) => html`<option value=${one.name}
          ?selected=${one.name === review.draft.actor}>${one.printedName}</option>`)}</select></label>
      <label class="field">What was done<select name="action" .value=${review.draft.action ?? ''}><option value="">anything</option>
        ${knownActs().map(([slug, words]) => html`<option value=${slug}
          ?selected=${slug === review.draft.action}>${words}</option>`)}</select></label>
    </div>
    <label class="field">What you found, also where nothing is to be remarked; line breaks become spaces
      <textarea name="findings" required maxlength="4000" .value=${review.draft.findings ?? ''}></textarea></label>
    <p><button class="first" ?disabled=${review.sending}>Record the review</button>
      <span class="small">It becomes an event of the ledger, with your name and the newest hash, and cannot be taken back.</span></p>
  </form>`;

const earlier = () => html`
  <section class="panel" aria-labelledby="earlier-heading">
    <h2 id="earlier-heading">Earlier reviews</h2>
    ${past.failed ? trouble(past.failed) : nothing}
    ${past.earlier === null ? html`<p>Reading …</p>` : past.earlier.length === 0 ? html`<p>Nobody has recorded a review yet.</p>`
      : html`
      <ul class="plain">${past.earlier.map(line)}</ul>`}
  </section>`;

const line = (event) => html`
  <li><a href=${fragment({ event: event.seq }, {})}><strong>${actorName(event.actor)}</strong>, ${instant(event.at)}</a><br>
    <span class="small">Looked at ${instant(event.details.from)} up to ${instant(event.details.to)}${
      event.details.room ? `, ${roomName(event.details.room)}` : ''}${
      event.details.actor ? `, ${actorName(event.details.actor)}` : ''}${event.details.action ? `, ${event.details.action}` : ''};
      newest event then ${event.details.headSeq}</span>
    <blockquote>${event.details.findings}</blockquote></li>`;
