// The head of a chart: which room, which version, whether it answers now, who signed it and why; and the ways from here.
import { html, nothing } from '/pages/lit-html.js';
import { person } from '/pages/shell.js';
import { day, moment } from '/pages/words.js';
import { toVersion, toComparison } from '/pages/chart/address.js';

const PROPOSERS = ['radiographer', 'lead', 'physicist'];

const mayPropose = () => PROPOSERS.includes(person()?.role);

/**
 * The state of a version: of those whose day has come the highest number answers, so any above the one in force is still to come, and
 * one that ended before it began never answered.
 */
export function stateOf(head, inForce) {
  if (head.version === inForce) return { word: 'in force', kind: 'good' };
  if (head.inForceTo !== null && head.inForceTo <= head.inForceFrom) return { word: 'never in force', kind: 'caution' };
  return { word: inForce !== null && head.version < inForce ? 'superseded' : 'scheduled', kind: 'caution' };
}

export const stateMark = (head, inForce) => {
  const { word, kind } = stateOf(head, inForce);
  return html`<span class="mark ${kind}">${word}</span>`;
};

/** A version as an option of a list. */
export const versionOption = (head, inForce, shown) => html`
  <option value=${head.version} .selected=${head.version === shown}
    >${head.version}, ${stateOf(head, inForce).word}: ${head.title}</option>`;

/** The pickers above everything; `versions` are none where another part of the page picks them. */
export const pickers = ({ rooms, room, versions, inForce, shown, goToVersion }) => html`
  <div class="row pickers">
    <label class="field">Room
      <select id="room-picker">
        ${rooms.map((one) => html`<option value=${one.room} .selected=${one.room === room}>${one.name}</option>`)}
      </select>
    </label>
    <button type="button" @click=${openRoom}>Open this room</button>
    ${versions.length === 0 ? nothing : html`
      <label class="field">Version
        <select id="version-picker" @change=${(event) => goToVersion(Number(event.target.value))}>
          ${shown === null ? html`<option value="" .selected=${true}></option>` : nothing}
          ${versions.map((one) => versionOption(one, inForce, shown))}
        </select>
      </label>`}
  </div>`;

function openRoom() {
  location.assign(`/charts/${encodeURIComponent(document.getElementById('room-picker').value)}`);
}

/** One version's head; `askBringBack` opens the dialog. */
export function versionHead({ room, head, inForce, newest, counts, askBringBack }) {
  const { printedName, role, at, meaning } = head.signature;
  return html`
    <section class="panel head" aria-labelledby="version-title">
      <h2 id="version-title" tabindex="-1">Version ${head.version}: ${head.title} ${stateMark(head, inForce)}</h2>
      ${notNow(head, inForce)}
      ${overdue(head, inForce)}
      <div class="facts-beside">
        <dl class="facts">
          <dt>In force</dt><dd>${period(head, inForce)}</dd>
          <dt>Review due</dt><dd>${day(head.reviewDue)}</dd>
          <dt>Signed by</dt><dd>${printedName} (${role}), ${moment(at)}: “${meaning}”</dd>
        </dl>
        <dl class="facts">
          <dt>Reason</dt><dd>${head.reason}</dd>
          ${counts ? html`<dt>Holds</dt><dd>${counts.rows} rows, ${counts.adjustments} named adjustments</dd>` : nothing}
          <dt>Digest</dt><dd><code>${head.digest}</code></dd>
        </dl>
      </div>
      <div class="row ways">
        ${mayPropose() ? html`<a class="button" href="/changes#new&room=${room}">Propose a change</a>` : nothing}
        ${mayPropose() && head.version !== newest
    ? html`<button type="button" @click=${askBringBack}>Bring this version back…</button>` : nothing}
        ${head.version > 1
    ? html`<a href=${toComparison(head.version - 1, head.version)}>Compare with version ${head.version - 1}</a>` : nothing}
        <a href="/rooms/${room}">Room page</a>
        <a href="/equipment/${room}">Equipment</a>
        ${head.version === inForce ? html`<a href="/sheets#room=${room}">Print a wall sheet</a>` : nothing}
        <a href="/sheets">Sheets on the walls</a>
      </div>
    </section>`;
}

function notNow(head, inForce) {
  const what = {
    superseded: `ended on ${moment(head.inForceTo)}`,
    scheduled: `answers from ${moment(head.inForceFrom)} on`,
    'never in force': `never answers: a later one, made on top of it, starts sooner, on ${moment(head.inForceTo)}`,
  }[stateOf(head, inForce).word];
  if (what === undefined) return nothing;
  const now = inForce === null ? 'No version of this chart is in force now.'
    : html`In force now is <a href=${toVersion(inForce)}>version ${inForce}</a>.`;
  return html`<p class="tell caution"><strong>Not the chart in force.</strong>This version ${what}. ${now}</p>`;
}

/** By the calendar of this screen. */
function overdue(head, inForce) {
  const today = new Intl.DateTimeFormat('sv-SE').format(new Date());
  return head.version === inForce && head.reviewDue < today
    ? html`<p class="tell caution"><strong>Review overdue</strong>since ${day(head.reviewDue)}.</p>` : nothing;
}

const period = (head, inForce) => (stateOf(head, inForce).word === 'never in force' ? 'never'
  : `from ${moment(head.inForceFrom)}${head.inForceTo ? ` to ${moment(head.inForceTo)}` : ''}`);
