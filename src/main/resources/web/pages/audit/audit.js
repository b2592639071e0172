// The audit page: is the ledger sound, what happened, what would a room have been told, export and reviews.
import { html, nothing, render } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, trouble, whenPersonChanges } from '/pages/shell.js';
import { fragment, shown } from '/pages/address.js';
import { learnPeople, learnRooms } from '/pages/audit/acts.js';
import { heedDoubts, proofPanel, verify } from '/pages/audit/proof.js';
import * as timeline from '/pages/audit/timeline.js';
import * as event from '/pages/audit/event.js';
import * as past from '/pages/audit/past.js';
import * as review from '/pages/audit/review.js';

const place = document.getElementById('audit');
const AUDITORS = ['lead', 'physicist'];
const VIEWS = [['', 'Time line'], ['past', 'What a room was told'], ['reviews', 'Export and reviews']];
let auditor = null;
let failed = null;

const view = () => shown().view ?? '';

function draw() {
  if (auditor && AUDITORS.includes(auditor.role)) render(page(), place);
}

const page = () => html`
  ${proofPanel(draw)}
  <nav class="views" aria-label="Parts of the audit">${VIEWS.map(([name, words]) => html`
    <a href=${fragment({ view: name }, {})} aria-current=${view() === name ? 'page' : nothing}>${words}</a>`)}</nav>
  <div role="alert">${failed ? trouble(failed) : nothing}</div>
  ${view() === 'past' ? past.pastPanel(draw) : view() === 'reviews' ? review.reviewPanel(draw) : line()}`;

const line = () => html`<div class="side-by-side ${shown().event ? 'with-event'
  : ''}">${timeline.timeline(draw)}${event.eventPanel()}</div>`;

async function show() {
  draw();
  try {
    failed = null;
    if (view() === 'past') await past.load(draw);
    else if (view() === 'reviews') await review.load(draw);
    else await Promise.all([timeline.load(draw), event.load(draw)]);
  } catch (cannot) {
    failed = cannot;
  }
  draw();
}

async function welcome(person) {
  const known = auditor?.personId === person?.personId;
  auditor = person;
  if (!person || known) return;
  render(nothing, place); // what stands in the fields is the last one's
  if (!AUDITORS.includes(person.role)) {
    render(html`<p class="tell"><strong>Not for every role.</strong>The ledger is read by lead radiographers and medical physicists;
      you are signed in as ${person.role}.
      Ask one of them what you want to know.</p>`, place);
    return;
  }
  try {
    const [people, rooms] = await Promise.all([api.get('/people'), api.get('/rooms')]);
    learnPeople(people.data.people);
    learnRooms(rooms.data.rooms);
  } catch (cannot) {
    failed = cannot;
  }
  verify(draw);
  await show();
}

window.addEventListener('hashchange', () => auditor && show());
heedDoubts(draw);
whenPersonChanges(welcome);
start();
