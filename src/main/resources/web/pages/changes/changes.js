// The list of changes: what waits for whoever is signed in, then for others, then what is closed.
import { html, render, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, person, whenPersonChanges, trouble } from '/pages/shell.js';
import { moment } from '/pages/words.js';
import { stateWords, KIND_WORDS } from '/pages/change/steps.js';
import { overLimits } from '/pages/change/impact.js';
import { openings, startOpenings } from '/pages/changes/opening.js';

const place = document.getElementById('changes');
const CLOSED = ['signed', 'declined', 'withdrawn'];
const STATES = ['drafting', 'submitted', 'returned', ...CLOSED];
const PAGE = 200;
const AT_ONCE = 4;
const asked = new URLSearchParams(location.hash.slice(1));

const state = {
  changes: null, next: null, reviews: [], rooms: [], needs: new Map(), failed: null,
  room: asked.get('room') ?? '', is: '', author: '',
};

async function load() {
  state.failed = null;
  try {
    const [page, reviews, rooms] = await Promise.all([
      api.get(`/changes?limit=${PAGE}`), api.get('/second-reviews'), api.get('/rooms'),
    ]);
    Object.assign(state, { changes: page.data.changes, next: page.data.next, reviews: reviews.data.changes, rooms: rooms.data.rooms });
    startOpenings({ rooms: state.rooms, room: state.room, draw });
  } catch (failed) {
    state.failed = failed;
  }
  draw();
  await learnNeeds();
}

/** Of each that waits, whether the physicist has to concur: the impact says so; a few are asked at a time. */
async function learnNeeds() {
  const waiting = (state.changes ?? []).filter((one) => one.state === 'submitted');
  const next = async () => {
    for (let change = waiting.shift(); change; change = waiting.shift()) {
      state.needs.set(change.id, await needOf(change));
      draw();
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, next));
}

async function needOf(change) {
  try {
    const impact = (await api.get(`/changes/${change.id}/impact`)).data;
    const concurred = change.concurrence?.impactDigest === impact.digest;
    if (!impact.needsPhysicist) return 'no';
    if (concurred) return 'concurred';
    return overLimits(impact).length > 0 ? 'needed' : 'early'; // of a version that waits below it, unless it starts with that
  } catch {
    return 'unknown';
  }
}

async function older() {
  try {
    const page = (await api.get(`/changes?limit=${PAGE}&before=${state.next}`)).data;
    state.changes.push(...page.changes);
    state.next = page.next;
  } catch (failed) {
    state.failed = failed;
  }
  draw();
}

const own = (change) => change.author.personId === person()?.personId;

/** Why a change waits for whoever is signed in; '' where it does not. */
function forMe(change) {
  const me = person();
  if (change.state === 'returned' && own(change)) return 'returned to you: mend it, then hand it in again';
  if (change.state === 'drafting' && own(change)) return 'your draft';
  const need = state.needs.get(change.id);
  if (change.state === 'submitted' && !own(change) && me?.role === 'physicist' && ['needed', 'early'].includes(need)) return 'waits for your concurrence';
  if (change.state === 'submitted' && !own(change) && me?.role === 'lead' && (need !== 'needed' || change.kind === 'fast-track')) {
    return { undefined: 'waits for your signature; reading its impact …',
      early: 'waits for your signature; for a start at once, for a medical physicist first' }[need] ?? 'waits for your signature';
  }
  const review = state.reviews.find((one) => one.id === change.id);
  if (review && me?.role === 'physicist' && !own(change) && change.decision.by.personId !== me.personId) return 'second review due';
  return '';
}

function forOthers(change) {
  if (change.state === 'submitted') return state.needs.get(change.id) === 'needed' ? 'waits for a medical physicist'
    : 'waits for a lead radiographer';
  return '';
}

function draw() {
  const all = state.changes ?? [];
  const late = state.reviews.filter((review) => !all.some((one) => one.id === review.id));
  const listed = [...late, ...all];
  const mine = listed.filter((change) => forMe(change) !== '');
  const others = listed.filter((change) => !mine.includes(change) && !CLOSED.includes(change.state));
  const closed = listed.filter((change) => CLOSED.includes(change.state) && !mine.includes(change));
  render(html`
    <div role="alert">${state.failed ? trouble(state.failed) : nothing}</div>
    ${state.changes === null ? html`<p>Reading the changes …</p>` : html`
    ${openings()}
    ${queue('Waits for you', mine, forMe, 'Nothing waits for you.')}
    <fieldset class="row filter"><legend>Show only</legend>
      ${filter('room', 'Room', state.rooms.map(({ room, name }) => [room, name]))}
      ${filter('is', 'State', STATES.map((one) => [one, stateWords({ state: one, signedVersion: '' }).replace(': version ', '')]))}
      ${filter('author', 'Author', [...new Map(all.map(({ author }) => [String(author.personId), author.printedName]))])}
    </fieldset>
    ${queue('Waits for others', others, forOthers, 'Nothing waits for others.')}
    ${queue('Closed', closed, () => '', 'Nothing is closed yet.')}
    ${state.next ? html`<p><button type="button" @click=${older}>Read older changes</button></p>` : nothing}`}`, place);
}

const filter = (name, label, options) => html`<label class="field">${label}
  <select @change=${(event) => { state[name] = event.target.value; draw(); }}>
    <option value="">all</option>
    ${options.map(([value, words]) => html`<option value=${value} ?selected=${state[name] === value}>${words}</option>`)}</select></label>`;

const isShown = (change) => (state.room === '' || change.room === state.room) && (state.is === '' || change.state === state.is)
  && (state.author === '' || String(change.author.personId) === state.author);

function queue(title, changes, why, none) {
  const shown = changes.filter(isShown);
  return html`<section aria-label=${title}><h2>${title} <span class="small">${shown.length}</span></h2>
    ${shown.length === 0 ? html`<p>${changes.length === 0 ? none : 'None of them is shown: see “Show only”.'}</p>` : html`
    <div class="scroll"><table class="queue">
      <thead><tr><th scope="col">Change</th><th scope="col">Room</th><th scope="col">State</th>
        <th scope="col">Author</th><th scope="col">Dates</th></tr></thead>
      <tbody>${shown.map((change) => line(change, why(change)))}</tbody>
    </table></div>`}</section>`;
}

const line = (change, why) => html`<tr>
  <th scope="row"><a href="/changes/${change.id}">${change.title}</a><div class="reason">${change.reason}</div></th>
  <td>${state.rooms.find(({ room }) => room === change.room)?.name ?? change.room}</td>
  <td><span class="mark">${stateWords(change)}</span>${change.kind === 'ordinary' ? nothing : html`
    <span class="mark caution">${KIND_WORDS[change.kind]}</span>`}
    ${why ? html`<div>${why}</div>` : nothing}
    ${change.concurrence && change.state === 'submitted' ? html`<div class="small">${change.concurrence.by.printedName} concurred</div>`
      : nothing}</td>
  <td>${change.author.printedName}</td>
  <td>${dates(change)}</td></tr>`;

function dates(change) {
  const open = change.secondReview && !change.secondReview.done;
  return html`
    ${open ? html`<div class="due">second review due ${moment(change.secondReview.due)}</div>` : nothing}
    ${change.decision ? html`<div>${change.state} ${moment(change.decision.at)}</div>` : nothing}
    ${change.submittedAt ? html`<div>handed in ${moment(change.submittedAt)}</div>` : nothing}
    <div class="small">opened ${moment(change.openedAt)}</div>`;
}

whenPersonChanges(load);
start();
