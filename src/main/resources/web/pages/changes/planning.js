// Forms that draft a change by the beam model: a set of bands from one proven technique, or the rows of another room. Either is
// looked at first.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { site, trouble } from '/pages/shell.js';
import { keptText } from '/pages/kept.js';
import { keyLine } from '/pages/change/fields.js';
import { lengthTyped } from '/pages/change/rows.js';
import { draftedOf } from '/pages/changes/drafted.js';

const PATIENCE_MS = 180_000;
const PLANS = {
  'variable-kv': 'kV rises with thickness', 'fixed-kv': 'one kV, the technique stays inside a band',
    'flat-exposure': 'one kV, mAs follow the attenuation',
};

const state = { rooms: [], rows: new Map(), versionsOf: null, draw: () => {}, busy: '', failed: null, drafted: null, of: '' };
const chosen = { room: '', from: '', version: '' };

export function startPlanning({ rooms, draw, versionsOf }) {
  Object.assign(state, { rooms, draw, versionsOf });
  chosen.room ||= rooms[0]?.room ?? '';
  chosen.from ||= rooms.find(({ room }) => room !== chosen.room)?.room ?? '';
}

/** The rows of the newest version of a room, for choosing one; read when a form is opened. */
async function learn() {
  try {
    for (const room of [chosen.room, chosen.from].filter(Boolean)) {
      const [newest] = await state.versionsOf(room);
      if (newest && !state.rows.has(room)) state.rows.set(room, (await api.get(`/charts/${encodeURIComponent(room)}/versions/${newest.version}/rows`)).data);
    }
    const versions = chosen.from ? await state.versionsOf(chosen.from) : [];
    if (!versions.some(({ version }) => String(version) === chosen.version)) chosen.version = String(versions[0]?.version ?? '');
    chosen.versions = versions;
  } catch (failed) {
    state.failed = failed;
  }
  state.draw();
}

const kept = (name) => keptText(`draft|${name}`);
const keep = (text) => (event) => text.keep(event.target.value);

/** Looks at what would be proposed, or opens it, by the button that was pressed. */
const asked = (path, bodyOf) => async (event) => {
  event.preventDefault();
  const opens = event.submitter?.value === 'open';
  const { elements } = event.target;
  const texts = ['title', 'reason'].map(kept);
  Object.assign(state, { busy: path, failed: null, of: path });
  if (!opens) state.drafted = null;
  state.draw();
  try {
    const body = bodyOf(elements);
    if (opens) Object.assign(body, { title: elements.title.value, reason: elements.reason.value });
    const answer = await api.post(`/charts/${encodeURIComponent(elements.room.value)}/${path}${opens ? '' : '/preview'}`, body,
      { timeoutMs: PATIENCE_MS });
    if (opens) {
      texts.forEach((text) => text.forget());
      location.assign(`/changes/${answer.data.change.id}`);
    }
    state.drafted = opens ? answer.data.draft : answer.data;
  } catch (failed) {
    state.failed = failed;
  }
  state.busy = '';
  state.draw();
  document.getElementById(`${path}-said`)?.focus();
};

/** A length of the form as the interface takes it; what is none goes as it is, and the service says what is wrong with it. */
const centimetres = (text) => {
  const typed = lengthTyped(text, site().lengthUnit);
  return typed === null ? text : Number(typed);
};

const options = (pairs, now) => pairs.map(([value, words]) =>
  html`<option value=${value} ?selected=${String(value) === String(now)}>${words}</option>`);

const roomField = (label, name, key) => html`<label class="field">${label}<select name=${name} @change=${(event) => {
  chosen[key] = event.target.value;
  state.drafted = null;
  learn();
}}>${options(state.rooms.map((one) => [one.room, one.name]), chosen[key])}</select></label>`;

function ending(path) {
  const [title, reason] = [kept('title'), kept('reason')];
  const busy = state.busy !== '';
  return html`
    <div class="row"><button value="preview" class="first" formnovalidate ?disabled=${busy}>Look at it first</button>
      ${state.busy === path ? html`<span role="status">Working it out …</span> <progress aria-label="Working it out"></progress>`
        : nothing}</div>
    <div id="${path}-said" tabindex="-1" role="alert">${state.of === path && state.failed ? trouble(state.failed) : nothing}</div>
    ${state.of === path && state.drafted ? html`${draftedOf(state.drafted, site())}` : nothing}
    <label class="field">Title<input name="title" required maxlength="120" autocomplete="off" .value=${title.read()}
      @input=${keep(title)}></label>
    <label class="field">Reason,
      10 characters or more; line breaks become spaces<textarea name="reason" required minlength="10" maxlength="1500" .value=${reason.read()}
      @input=${keep(reason)}></textarea></label>
    <div><button value="open" ?disabled=${busy}>Open it as a change</button></div>`;
}

export const planning = () => html`
  <details @toggle=${learn}><summary>Draft a set of bands from one proven technique</summary>${planForm()}</details>
  <details @toggle=${learn}><summary>Bring rows of another room</summary>${transferForm()}</details>`;

function planForm() {
  const rows = state.rows.get(chosen.room)?.rows ?? [];
  const unit = site().lengthUnit;
  return html`<form @submit=${asked('plans', (elements) => ({
    row: elements.row.value, plan: elements.plan.value,
    ...(elements.plan.value === 'variable-kv' && elements.rate.value !== '' ? { kVPerCm: Number(elements.rate.value) } : {}),
    fromCm: centimetres(elements.from.value), toCm: centimetres(elements.to.value), bandWidthCm: centimetres(elements.width.value),
  }))}>
    <p class="small">The beam model keeps the signal at the receptor of a technique that is proven. It stands for a slab of water: no
      bone, no lung. Chests, ribs and sternum are not planned. What comes is a draft to look at, edit and prove.</p>
    <div class="row">${roomField('Room', 'room', 'room')}
      <label class="field">Proven row<select name="row" required>${options(rows.map(({ key }) => [key, keyLine(key, site())]),
        '')}</select></label></div>
    <div class="row">
      <label class="field">Plan<select name="plan">${options(Object.entries(PLANS), 'variable-kv')}</select></label>
      <label class="field">kV per cm, where kV rises<input name="rate" inputmode="decimal" size="5" value="2"></label>
      <label class="field">From, ${unit}<input name="from" required inputmode="decimal" size="6"></label>
      <label class="field">to under, ${unit}<input name="to" required inputmode="decimal" size="6"></label>
      <label class="field">Width of a band, ${unit}<input name="width" required inputmode="decimal" size="6"></label></div>
    ${ending('plans')}</form>`;
}

function transferForm() {
  const rows = state.rows.get(chosen.from)?.rows ?? [];
  const parts = site().bodyParts.filter(({ bodyPart }) => rows.some((row) => row.bodyPart === bodyPart));
  return html`<form @submit=${asked('transfers', (elements) => ({
    fromRoom: elements.fromRoom.value, fromVersion: Number(elements.fromVersion.value), rows: elements.rows.value,
    ...(elements.bodyPart.value ? { bodyPart: elements.bodyPart.value } : {}),
  }))}>
    <p class="small">Each row keeps the modelled signal at the receptor that it has in the other room,
      relative to its target exposure index.
      At most 500 rows at once: choose a body part where there are more.</p>
    <div class="row">${roomField('To room', 'room', 'room')} ${roomField('From room', 'fromRoom', 'from')}
      <label class="field">Version there<select name="fromVersion" required @change=${(event) => { chosen.version = event.target.value; }}>
        ${options((chosen.versions ?? []).map(({ version, title }) => [version, `${version}: ${title}`]),
          chosen.version)}</select></label></div>
    <div class="row">
      <label class="field">Body part<select name="bodyPart"><option value="">all</option>${options(parts.map(({ bodyPart, label }) =>
        [bodyPart, label]), '')}</select></label>
      <label class="field">Rows<select name="rows"><option value="missing">only what this room lacks</option>
        <option value="all">all; rows of this room give way</option></select></label></div>
    ${ending('transfers')}</form>`;
}
