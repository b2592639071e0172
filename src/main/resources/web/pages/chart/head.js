// The head of a chart: which room, which version, whether it answers now, who signed it and why; and the ways from here.
import { html, nothing } from '/pages/lit-html.js';
import { person } from '/pages/shell.js';
import { day, moment } from '/pages/words.js';
import { toVersion, toComparison } from '/pages/chart/address.js';

const PROPOSERS = ['radiographer', 'lead', 'physicist'];

export const mayPropose = () => PROPOSERS.includes(person()?.role);

/**
 * The state of a version: of those whose day has come the highest number answers, so any above the one in force is still to come, and
 * one that ended before it began never answered.
 */
export function stateOf(head, inForce) {
  if (head.version === inForce) return { word: 'in force', kind: 'good' };
  if (head.inForceTo !== null && head.inForceTo <= head.inForceFrom) return { word: 'never in force', kind: 'caution' };
  return inForce !== null && head.version < inForce ? { word: 'superseded', kind: 'caution' } : { word: 'scheduled', kind: 'caution' };
}

const stateMark = ({ word, kind }) => html`<span class="mark ${kind}">${word}</span>`;

/** The pickers above everything. */
export const pickers = ({ rooms, room, versions, inForce, shown, goToVersion }) => html`
  <div class="row pickers">
    <label class="field">Room
      <select id="room-picker">
        ${rooms.map((one) => html`<option value=${one.room} ?selected=${one.room === room}>${one.name}</option>`)}
      </select>
    </label>
    <button type="button" @click=${openRoom}>Open this room</button>
    ${versions.length === 0 ? nothing : html`
      <label class="field">Version
        <select id="version-picker" @change=${(event) => goToVersion(Number(event.target.value))}>
          ${shown === null ? html`<option value="" selected></option>` : nothing}
          ${versions.map((one) => html`
            <option value=${one.version} ?selected=${one.version === shown}>
              ${one.version}, ${stateOf(one, inForce).word}: ${one.title}</option>`)}
        </select>
      </label>`}
  </div>`;

function openRoom() {
  location.assign(`/charts/${encodeURIComponent(document.getElementById('room-picker').value)}`);
}

/** One version's head; `askBringBack` opens the dialog. */
export function versionHead({ room, head, inForce, newest, counts, askBringBack }) {
  const state = stateOf(head, inForce);
  return html`
    <section class="panel head" aria-labelledby="version-title">
      <h2 id="version-title" tabindex="-1">Version ${head.version}: ${head.title} ${stateMark(state)}</h2>
      ${notNow(state, head, inForce)}
      ${overdue(head, state)}
      <dl class="facts">
        <dt>In force</dt><dd>${period(head, state)}</dd>
        <dt>Signed by</dt>
        <dd>${head.signature.printedName} (${head.signature.role}), ${moment(head.signature.at)}: “${head.signature.meaning}”</dd>
        <dt>Reason</dt><dd>${head.reason}</dd>
        <dt>Review due</dt><dd>${day(head.reviewDue)}</dd>
        ${counts ? html`<dt>Holds</dt><dd>${counts.rows} rows, ${counts.adjustments} named adjustments</dd>` : nothing}
        <dt>Digest</dt><dd><code>${head.digest}</code></dd>
      </dl>
      <div class="row ways">
        ${mayPropose() ? html`<a class="button" href="/changes#new&room=${room}">Propose a change</a>` : nothing}
        ${mayPropose() && head.version !== newest
          ? html`<button type="button" @click=${askBringBack}>Bring this version back…</button>` : nothing}
        ${head.version > 1 ? html`<a href=${toComparison(head.version - 1, head.version)}>Compare with version ${head.version - 1}</a>` : nothing}
        <a href="/rooms/${room}">Room page</a>
        <a href="/equipment/${room}">Equipment</a>
        ${head.version === inForce ? html`<a href="/api/v1/rooms/${room}/sheet.pdf">Wall sheet (PDF)</a>` : nothing}
        <a href="/sheets">Sheets on the walls</a>
      </div>
    </section>`;
}

function notNow(state, head, inForce) {
  if (state.word === 'in force') return nothing;
  const now = inForce === null ? 'No version of this chart is in force now.'
    : html`In force now is <a href=${toVersion(inForce)}>version ${inForce}</a>.`;
  const what = {
    superseded: `ended on ${moment(head.inForceTo)}`,
    scheduled: `answers from ${moment(head.inForceFrom)} on`,
    'never in force': 'was replaced before its day came',
  }[state.word];
  return html`<p class="tell caution"><strong>Not the chart in force.</strong>This version ${what}. ${now}</p>`;
}

function overdue(head, state) {
  const today = new Intl.DateTimeFormat('en-CA').format(new Date());
  return state.word === 'in force' && head.reviewDue < today
    ? html`<p class="tell caution"><strong>Review overdue</strong>since ${day(head.reviewDue)}.</p>` : nothing;
}

const period = (head, state) => (state.word === 'never in force' ? 'never'
  : html`from ${moment(head.inForceFrom)}${head.inForceTo ? ` to ${moment(head.inForceTo)}` : ''}`);
