// Forms that open a change: a new one, or one that brings a version back. What is typed is kept until it was taken.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { person, trouble } from '/pages/shell.js';
import { day } from '/pages/words.js';
import { keptText } from '/pages/kept.js';
import { planning, startPlanning } from '/pages/changes/planning.js';

const PROPOSERS = ['radiographer', 'lead', 'physicist'];

const state = { rooms: [], room: '', versions: new Map(), failed: null, busy: false, draw: () => {} };

export function startOpenings({ rooms, room, draw }) {
  Object.assign(state, { rooms, draw });
  state.room = rooms.some((one) => one.room === room) ? room : state.room || (rooms[0]?.room ?? '');
  startPlanning({ rooms, draw, versionsOf });
  learnVersions();
}

/** The versions of a room's chart, newest first. */
async function versionsOf(room) {
  if (!state.versions.has(room)) state.versions.set(room, (await api.get(`/charts/${encodeURIComponent(room)}/versions`)).data.versions);
  return state.versions.get(room);
}

async function learnVersions() {
  try {
    await versionsOf(state.room);
  } catch (failed) {
    state.failed = failed;
  }
  state.draw();
}

/** Opens it and goes there. `bodyOf` makes the request's body of the form. */
function opening(path, bodyOf, texts) {
  return async (event) => {
    event.preventDefault();
    const form = event.target;
    Object.assign(state, { busy: true, failed: null });
    state.draw();
    try {
      const requireSame = api.sameOwner();
      state.versions.delete(state.room);
      const versions = await versionsOf(state.room);
      requireSame();
      const made = (await api.post(`/charts/${encodeURIComponent(state.room)}/${path}`, bodyOf(form.elements, versions))).data;
      texts.forEach((text) => text.forget());
      location.assign(`/changes/${made.id}`);
    } catch (failed) {
      state.failed = failed;
    }
    state.busy = false;
    state.draw();
    document.getElementById('opening-trouble')?.focus();
  };
}

const kept = (name) => keptText(`new|${name}`);
const keep = (text) => (event) => text.keep(event.target.value);

export function openings() {
  if (!PROPOSERS.includes(person()?.role)) return html`<p class="small">Changes are proposed by radiographers,
    lead radiographers and physicists.</p>`;
  return html`<section class="panel opening" aria-label="Propose a change">
    <div id="opening-trouble" role="alert" tabindex="-1">${state.failed ? trouble(state.failed) : nothing}</div>
    <details ?open=${kept('title').read() !== ''}><summary>New change</summary>${newChange()}</details>
    <details><summary>Bring an earlier version back</summary>${revert()}</details>
    ${planning()}</section>`;
}

const roomField = () => html`<label class="field">Room
  <select name="room" @change=${(event) => { state.room = event.target.value; learnVersions(); }}>
    ${state.rooms.map(({ room, name }) => html`<option value=${room} ?selected=${state.room === room}>${name}</option>`)}</select></label>`;

const newestWords = () => {
  const versions = state.versions.get(state.room);
  if (!versions) return nothing;
  return versions.length === 0 ? 'The room has no chart yet: this makes its first.' : `It starts from version ${versions[0].version},
    “${versions[0].title}”.`;
};

function newChange() {
  const [title, reason] = [kept('title'), kept('reason')];
  return html`<form @submit=${opening('changes', (elements, versions) => ({
    title: elements.title.value, reason: elements.reason.value, baseVersion: versions[0]?.version ?? 0, kind: elements.kind.value,
  }), [title, reason])}>
    <div class="row">${roomField()} <span class="small">${newestWords()}</span></div>
    <label class="field">Title<input name="title" required maxlength="120" autocomplete="off" .value=${title.read()}
      @input=${keep(title)}></label>
    <label class="field">Reason: why the chart should change, 10 characters or more; line breaks become spaces
      <textarea name="reason" required minlength="10" maxlength="2000" .value=${reason.read()} @input=${keep(reason)}></textarea></label>
    <fieldset><legend>How</legend>
      <label class="tick"><input type="radio" name="kind" value="ordinary" checked>Ordinary: looked at,
        concurred with where it is large, then signed</label><br>
      <label class="tick"><input type="radio" name="kind" value="fast-track">Fast track: for safety,
        where patients cannot wait; signed at once,
        and a physicist looks at it within 72 hours</label></fieldset>
    <div><button class="first" ?disabled=${state.busy}>Open the change</button></div></form>`;
}

function revert() {
  const reason = kept('revert-reason');
  const versions = (state.versions.get(state.room) ?? []).slice(1);
  return html`<form @submit=${opening('reverts', (elements) => ({ version: Number(elements.version.value),
    reason: elements.reason.value }), [reason])}>
    <div class="row">${roomField()}
      <label class="field">Version to bring back<select name="version" required>
        ${versions.map(({ version, title, inForceFrom }) => html`<option value=${version}>${version}, in force from ${day(inForceFrom)}:
          ${title}</option>`)}</select></label></div>
    ${versions.length === 0 ? html`<p class="small">The room has no earlier version.</p>` : nothing}
    <label class="field">Reason,
      10 characters or more; line breaks become spaces<textarea name="reason" required minlength="10" maxlength="2000" .value=${reason.read()}
      @input=${keep(reason)}></textarea></label>
    <div><button class="first" ?disabled=${state.busy || versions.length === 0}>Prepare the change</button></div></form>`;
}
