// What the beam model proposes, to look at before it is opened as a change. All figures are the service's.
import { html, nothing } from '/pages/lit-html.js';
import { keyLine, columnOf, inWords } from '/pages/change/fields.js';
import { LEVELS } from '/pages/change/cells.js';
import { computed } from '/pages/words.js';

const KINDS = { add: 'new row', amend: 'amended', same: 'as it is' };
const decibels = (number) => (number === null ? 'not known' : `${number > 0 ? '+' : ''}${number} dB`);

export const draftedOf = (draft, site) => html`<div class="panel">
  <h3>What would be proposed</h3>
  <p>${draft.rows.length} rows, ${draft.withdrawn.length} withdrawn, ${draft.leftOut.length} left out.</p>
  ${draft.rows.length === 0 ? nothing : html`
  <div class="preview scroll" tabindex="0" role="region" aria-label="Rows that would be proposed"><table>
    <thead><tr><th scope="col">Row</th><th scope="col" class="number">kV</th><th scope="col" class="number">mAs</th>
      <th scope="col" class="number">Exact mAs</th><th scope="col" class="number">Rounding</th><th scope="col" class="number">Time</th>
      <th scope="col" class="number">At the ends of the band</th><th scope="col" class="number">Entrance air kerma</th>
      <th scope="col">Against the row that gives way</th><th scope="col">How it comes</th></tr></thead>
    <tbody>${draft.rows.map((one) => line(one, site))}</tbody></table></div>`}
  ${list('Left out', draft.leftOut.map(({ row, reason }) => html`<b>${keyLine(row, site)}</b>: ${inWords(reason, site)}`))}
  ${list('Withdrawn, because in the way', draft.withdrawn.map((key) => keyLine(key, site)))}
  ${list('What beam physics says of it', draft.findings.map((one) => html`<strong>${LEVELS[one.level]}.</strong>
    ${one.row ? html`<b>${keyLine(one.row, site)}</b>${columnOf(one.field) ? `, ${columnOf(one.field).label}` : ''}: `
      : nothing}${inWords(one.reason, site)}`))}
  ${list('What it rests on, and leaves out', draft.assumptions)}</div>`;

const list = (title, entries) => (entries.length === 0 ? nothing : html`<details><summary>${title} (${entries.length})</summary>
  <ul>${entries.map((entry) => html`<li>${entry}</li>`)}</ul></details>`);

const line = (one, site) => html`<tr>
  <th scope="row">${keyLine(one.key, site)}<br><span class="mark">${KINDS[one.kind]}</span></th>
  <td class="number">${one.row.kV}</td>
  <td class="number">${one.row.aec ? `AEC, back-up ${one.row.aec.backupMAs}` : one.row.mAs}</td>
  <td class="number">${computed(one.exact.mAs)}</td>
  <td class="number">${decibels(one.roundingDeviation)}</td>
  <td class="number">${one.timeMs === null ? 'by AEC' : `${computed(one.timeMs)} ms`}</td>
  <td class="number">${one.bandEndsDb.map(decibels).join(', ')}</td>
  <td class="number">${one.upperBound ? 'at most ' : ''}${computed(one.entranceAirKermaMicroGy / 1000)} mGy</td>
  <td>${one.before ? html`${one.before.kV} kV, ${one.before.mAs} mAs:
    ${decibels(one.before.predictedShiftDb ?? one.before.exposureShiftDb)},
    kerma ${one.before.kermaChangePercent === null ? 'not known' : `${one.before.kermaChangePercent} %`}
    ${one.before.needsPhysicist ? html`<span class="mark caution">needs the physicist</span>` : nothing}` : 'none'}</td>
  <td><details><summary>${one.from.kV} kV, ${one.from.mAs} mAs</summary>
    <ul>${one.factors.map((factor) => html`<li>x ${computed(factor.value)}: ${factor.text}</li>`)}</ul></details>
    ${one.cautions.map((caution) => html`<p class="small">${caution}</p>`)}</td></tr>`;
