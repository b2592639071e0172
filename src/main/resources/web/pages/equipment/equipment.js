// The equipment page of a room: its tube and what was measured, console, grids, receptors, history, what is due, and what is entered.
import { html, nothing, render } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, trouble, whenPersonChanges } from '/pages/shell.js';
import { fragment, roomIn, shown } from '/pages/address.js';
import { duePanel } from '/pages/equipment/due.js';
import { gridPanel } from '/pages/equipment/grid.js';
import { historyPanel } from '/pages/equipment/history.js';
import { inventoryPanel } from '/pages/equipment/inventory.js';
import { measurePanel } from '/pages/equipment/measure.js';
import { mountPlots } from '/pages/equipment/plots.js';
import { dueWord, tubePanel } from '/pages/equipment/tube.js';

const place = document.getElementById('equipment');
const ROOM = roomIn();
const VIEWS = [
  ['', 'Tube'], ['room', 'Console, grids, receptors'], ['history', 'History'], ['due', 'Dates due'], ['measure', 'Enter a measurement'],
];
let all = null;
let failed = null;

const view = () => shown().view ?? '';
const mayTry = () => ['lead', 'physicist'].includes(all.person.role);

function draw() {
  render(failed ? trouble(failed) : all?.room ? page() : html`<p>Reading …</p>`, place);
  mountPlots();
}

const page = () => html`
  <div class="row head">
    <h2>${all.room.name}</h2>
    <span>Output ${dueWord(all.line)}</span>
    <label class="field">Another room<select @change=${(event) => location.assign(`/equipment/${encodeURIComponent(event.target.value)}${location.hash}`)}>
      ${all.rooms.map((line) => html`<option value=${line.room} ?selected=${line.room === ROOM}>${line.name}</option>`)}</select></label>
    <a href="/charts/${ROOM}">Chart</a>
  </div>
  <nav class="views" aria-label="Parts of the equipment">${VIEWS.filter(([name]) => name !== 'measure' || mayTry()).map(([name, words]) =>
    html`
    <a href=${fragment({ view: name }, {})} aria-current=${view() === name || (view() === 'grid' && name === 'room') ? 'page'
      : nothing}>${words}</a>`)}</nav>
  ${part()}`;

function part() {
  switch (view()) {
    case 'room': return inventoryPanel(all.room, mayTry());
    case 'history': return historyPanel(all, draw);
    case 'due': return duePanel(all.rooms);
    case 'measure': return mayTry() ? measurePanel(all, draw) : notYours();
    case 'grid': return mayTry() ? gridPanel(all, shown().grid, draw) : notYours();
    default: return tubePanel(all);
  }
}

const notYours = () => html`<p class="tell"><strong>Not for every role.</strong>
  Lead radiographers and medical physicists try measurements out; a medical physicist enters them.</p>`;

async function load() {
  const address = `/rooms/${encodeURIComponent(ROOM)}`;
  const [rooms, room, equipment, calibration, revisions] = (await Promise.all(
    ['/rooms', address, `${address}/equipment`, `${address}/equipment/calibration`, `${address}/equipment/revisions`]
      .map((path) => api.get(path)),
  )).map((answer) => answer.data);
  Object.assign(all, {
    rooms: rooms.rooms, line: rooms.rooms.find((line) => line.room === ROOM), room, equipment, calibration,
      revisions: revisions.revisions, reload: load,
    mayEnter: all.person.role === 'physicist',
  });
}

async function welcome(person) {
  if (!person || all?.person.personId === person.personId) return;
  all = { person };
  draw();
  try {
    await load();
    failed = null;
    document.title = `Equipment of ${all.room.name} · Wallchart`;
  } catch (cannot) {
    failed = cannot;
  }
  draw();
}

window.addEventListener('hashchange', () => all?.room && draw());
whenPersonChanges(welcome);
start();
