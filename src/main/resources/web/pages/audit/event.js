// One event in full: who, when, what, why, what it says beside, the text that its hash covers, its neighbours, and what it changed.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { trouble } from '/pages/shell.js';
import { fragment, shown } from '/pages/address.js';
import { instant } from '/pages/audit/instants.js';
import { actorName, objectNumber, people, roomName, sentence } from '/pages/audit/acts.js';
import { differencePanel, findDifference } from '/pages/audit/difference.js';

const open = { seq: null, whole: null, failed: null, difference: null };

/** Loads the event that the fragment names, and what it changed; the heading gets the focus once it is there. */
export async function load(draw) {
  const seq = shown().event ?? null;
  if (seq === open.seq) return;
  Object.assign(open, { seq, whole: null, failed: null, difference: null });
  if (!seq) return;
  draw();
  try {
    const whole = (await api.get(`/audit/events/${encodeURIComponent(seq)}`)).data;
    if (seq !== open.seq) return;
    open.whole = whole;
    draw();
    document.getElementById('event-heading')?.focus();
    const difference = await findDifference(whole.event);
    if (seq === open.seq) open.difference = difference;
  } catch (failed) {
    if (seq === open.seq) open.failed = failed;
  }
  draw();
}

/** The event beside the time line; nothing while none is open. */
export const eventPanel = () => (open.seq ? html`
  <section class="panel event" aria-labelledby="event-heading">
    <div class="row spread">
      <h2 id="event-heading" tabindex="-1">Event ${open.seq}</h2>
      <a class="button" href=${fragment({ event: null })}>Close</a>
    </div>
    <div role="alert">${open.failed ? trouble(open.failed) : nothing}</div>
    ${open.whole ? inFull(open.whole) : open.failed ? nothing : html`<p>Reading …</p>`}
  </section>` : nothing);

const inFull = (whole) => html`
  <p class="sentence">${sentence(whole.event)}</p>
  ${whole.event.reason ? html`<blockquote>${whole.event.reason}</blockquote>` : nothing}
  ${fits(whole)}
  ${neighbours(whole)}
  ${members(whole.event)}
  ${whole.event.room ? html`<p><a class="button"
    href=${past(whole.event)}>What was ${roomName(whole.event.room)} told from then on?</a></p>` : nothing}
  ${open.difference ? differencePanel(open.difference) : open.failed ? nothing : html`<p>Reading what it changed …</p>`}
  ${saidBeside(whole.event.details)}
  ${proofOf(whole)}`;

const fits = ({ hashFits }) => (hashFits
  ? html`<p><span class="mark good">Its hash fits</span> <span class="small">What stands here is what was hashed when it was entered.
    Whether it is
      still in its place, “Verify now” says.</span></p>`
  : html`<p class="tell blocking"><strong>Its hash does not fit.</strong>
    What stands here is not what was entered: somebody changed it afterwards.
      See “What to do” above.</p>`);

const neighbours = ({ before, next }) => html`
  <p class="row">
    ${before ? html`<a class="button" href=${fragment({ event: before })}>Event ${before}, before it</a>`
      : html`<span>It is the first.</span>`}
    ${next ? html`<a class="button" href=${fragment({ event: next })}>Event ${next}, after it</a>` : html`<span>It is the newest.</span>`}
  </p>`;

const members = (event) => html`
  <dl class="facts">
    <dt>When</dt><dd>${instant(event.at)}</dd>
    <dt>Who</dt><dd>${printed(event.actor)}, as ${event.role}; signed in as <code>${event.actor}</code></dd>
    <dt>What</dt><dd><code>${event.action}</code></dd>
    <dt>To what</dt><dd>${object(event)}</dd>
    <dt>Room</dt><dd>${event.room ? html`${roomName(event.room)} <code>${event.room}</code>` : 'none'}</dd>
    <dt>Request</dt><dd>${event.requestId ? html`<code>${event.requestId}</code>` : 'none: entered by the program or a command'}</dd>
  </dl>`;

const printed = (actor) => people().find((person) => person.name === actor)?.printedName ?? actorName(actor);

const past = (event) => fragment({ view: 'past', room: event.room, at: event.details.inForceFrom ?? event.at }, {});

function object(event) {
  if (event.object.startsWith('sheet/')) return html`<a href="/sheets/${event.object.slice('sheet/'.length)}">${event.object}</a>`;
  const number = objectNumber(event);
  const [kind] = event.object.split('/').slice(-2);
  const to = { change: `/changes/${number}`, version: `/charts/${event.room}`, equipment: `/equipment/${event.room}` }[kind];
  return to && number ? html`<a href=${to}>${event.object}</a>` : html`<code>${event.object}</code>`;
}

/** Details of the event; what is long or nested is shown as it is written. */
const saidBeside = (details) => html`
  <details>
    <summary>All details of the event</summary>
    <dl class="facts wide">${Object.entries(details).map(([name, text]) => html`
      <dt>${name}</dt><dd>${typeof text === 'object' ? html`<pre class="code">${JSON.stringify(text, null, 2)}</pre>`
        : html`<span class="code">${text}</span>`}</dd>`)}
    </dl>
  </details>`;

const proofOf = ({ event, text, before }) => html`
  <details>
    <summary>Hash and text</summary>
    <dl class="facts">
      <dt>Hash</dt><dd><code>${event.hash}</code></dd>
      <dt>Hash of the event before</dt><dd>${before ? html`<a href=${fragment({ event: before })}><code>${event.prev}</code></a>`
        : html`<code>${event.prev}</code>`}</dd>
    </dl>
    <p class="small">The hash is the SHA-256 of this text, the canonical JSON (RFC 8785) of all other members:</p>
    ${text === null ? html`<p class="tell blocking"><strong>There is none.</strong>Its details are no JSON.</p>`
      : html`<pre class="code" tabindex="0" aria-label="Canonical text">${text}</pre>`}
  </details>`;
