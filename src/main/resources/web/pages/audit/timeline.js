// The time line: what happened, newest first, day by day, as far as the filters let through.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { trouble } from '/pages/shell.js';
import { spoken } from '/pages/words.js';
import { fragment, query, shown } from '/pages/address.js';
import { endOfDay, localDay, longDay, timeOfDay, toUtc, zone } from '/pages/audit/instants.js';
import { actorName, act, knownActs, people, roomName, rooms } from '/pages/audit/acts.js';

const PAGE = 50;
const FILTERS = ['room', 'actor', 'action', 'from', 'to'];
const line = { asked: null, events: [], next: null, failed: null, loading: false, said: '' };

/** The filters of the interface as the fragment has them: days become instants. */
export function filters() {
  const now = shown();
  return {
    room: now.room, actor: now.actor, action: now.action,
    from: now.from && toUtc(now.from), to: now.to && endOfDay(now.to),
  };
}

/** Loads the first page where the filters differ from what is there. */
export async function load(draw, anew = false) {
  const asked = query(filters());
  if (asked === line.asked && !anew) return;
  Object.assign(line, { asked, events: [], next: null });
  await page(draw, asked);
}

async function more(draw) {
  const before = line.events.length;
  await page(draw, line.asked);
  line.said = `${line.events.length - before} older events`;
  draw();
  document.querySelectorAll('.timeline li a')[before]?.focus();
}

async function page(draw, asked) {
  Object.assign(line, { loading: true, failed: null });
  draw();
  try {
    const more = line.next === null ? {} : { after: line.next };
    const { events, next } = (await api.get(`/audit/events${query({ ...filters(), ...more, order: 'newest', limit: PAGE })}`)).data;
    if (asked !== line.asked) return; // somebody chose other filters meanwhile
    line.events.push(...events);
    line.next = next;
    line.said = `${line.events.length} events${next === null ? '' : ' and older ones'}`;
  } catch (failed) {
    line.failed = failed;
  }
  line.loading = false;
  draw();
}

function choose(event) {
  event.preventDefault();
  const form = event.target.elements;
  location.hash = fragment(Object.fromEntries([...FILTERS.map((name) => [name, form[name].value.trim()]), ['event', null]]));
}

const clear = (event) => {
  FILTERS.forEach((name) => { event.target.form.elements[name].value = ''; });
  location.hash = fragment(Object.fromEntries([...FILTERS, 'event'].map((name) => [name, null])));
};

export const timeline = (draw) => html`
  <section class="timeline" aria-labelledby="line-heading">
    <h2 id="line-heading">What happened</h2>
    ${form(shown())}
    <div role="alert">${line.failed ? trouble(line.failed) : nothing}</div>
    <p class="small" role="status">${line.loading ? 'Reading …' : line.said}</p>
    ${days(line.events).map(([day, events]) => html`
      <h3>${longDay(events[0].at)}</h3>
      <ol class="plain" aria-label=${day}>${events.map(entry)}</ol>`)}
    ${line.next !== null && !line.failed
      ? html`<p><button type="button" ?disabled=${line.loading} @click=${() => more(draw)}>Older events</button></p>` : nothing}
    ${!line.loading && !line.failed && line.events.length === 0 ? html`<p>No event fits these filters.</p>` : nothing}
  </section>`;

const form = (now) => html`
  <form class="row filters" @submit=${choose}>
    <label class="field">Room<select name="room" .value=${now.room ?? ''}>
      <option value="">all</option>${others(rooms(), now.room).map(([id, name]) => html`<option value=${id}
        ?selected=${id === now.room}>${name}</option>`)}
    </select></label>
    <label class="field">Person<input name="actor" list="people" size="14" maxlength="40" placeholder="all"
      .value=${now.actor ?? ''}></label>
    <datalist id="people">${people().map((person) => html`<option value=${person.name}>${person.printedName}</option>`)}</datalist>
    <label class="field">What was done<select name="action" .value=${now.action ?? ''}>
      <option value="">anything</option>${others(knownActs(), now.action).map(([slug, words]) => html`<option value=${slug}
        ?selected=${slug === now.action}>${words}</option>`)}
    </select></label>
    <label class="field">From the day<input type="date" name="from" .value=${now.from ?? ''}></label>
    <label class="field">To the day, included<input type="date" name="to" .value=${now.to ?? ''}></label>
    <button class="first">Show</button>
    <button type="button" @click=${clear}>Show all</button>
  </form>
  <p class="small">Days and times of this screen (${zone()}), UTC beside.</p>`;

/** What stands in the address may be chosen, too, even if it is known nowhere else. */
const others = (known, chosen) => (!chosen || known.some(([id]) => id === chosen) ? known : [...known, [chosen, spoken(chosen)]]);

function days(events) {
  const byDay = new Map();
  events.forEach((event) => {
    const day = localDay(event.at);
    if (!byDay.has(day)) byDay.set(day, []);
    byDay.get(day).push(event);
  });
  return [...byDay];
}

const entry = (event) => html`
  <li class=${shown().event === String(event.seq) ? 'open' : ''}>
    <span class="when">${timeOfDay(event.at)}</span>
    <span class="said"><a href=${fragment({ event: event.seq })} aria-current=${shown().event === String(event.seq) ? 'true'
      : nothing}><strong>${actorName(event.actor)}</strong>
      ${act(event)}</a>${event.reason ? html`<span class="why">${event.reason}</span>` : nothing}</span>
    <span class="small number">${event.room ? roomName(event.room) : ''} · ${event.seq}</span>
  </li>`;
