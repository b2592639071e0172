// Every state of a room's equipment with its reason, and what each did to the charts of its day.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { trouble } from '/pages/shell.js';
import { day, moment, spoken } from '/pages/words.js';
import { movedTable } from '/pages/equipment/moved.js';

const MOST_ROWS = 500;
const open = { revision: null, effects: null, failed: null };

async function look(room, revision, draw) {
  Object.assign(open, { revision, effects: null, failed: null });
  draw();
  try {
    const effects = (await api.get(`/rooms/${room}/equipment/revisions/${revision}/effects`)).data;
    if (open.revision === revision) open.effects = effects;
  } catch (failed) {
    open.failed = failed;
  }
  draw();
  document.getElementById('effects-heading')?.focus();
}

export const historyPanel = ({ room, revisions }, draw) => html`
  <section aria-labelledby="history-heading">
    <h2 id="history-heading">Revisions, newest first</h2>
    <div class="scroll" tabindex="0" role="group" aria-label="Revisions"><table>
      <thead><tr><th scope="col" class="number">Revision</th><th scope="col">In force from</th><th scope="col">Entered by</th>
        <th scope="col">Reason</th>
        <th scope="col">Output measured</th><th scope="col">Rows to look at then</th><th scope="col">What it did</th></tr></thead>
      <tbody>${revisions.map((one) => line(room.room, one, draw))}</tbody>
    </table></div>
    ${open.revision ? opened() : nothing}
  </section>`;

const line = (room, one, draw) => html`
  <tr>
    <th scope="row" class="number">${one.revision}</th>
    <td>${moment(one.inForceFrom)}</td>
    <td>${one.installedBy}</td>
    <td class="words">${one.reason || 'none given'}${one.confirmed.length ? html`<br>
      <span class="small">Confirmed although questioned: ${one.confirmed.map(spoken).join(', ')}</span>` : nothing}</td>
    <td>${one.measuredOn ? day(one.measuredOn) : 'never'}${one.largestOutputRatio ? html`<br>
      <span class="small">output x ${one.largestOutputRatio} at ${one.largestOutputRatioAt}</span>` : nothing}</td>
    <td>${one.affectedRows ?? 'not worked out'}</td>
    <td>${one.revision > 1 ? html`<button type="button"
      @click=${() => look(room, one.revision, draw)}>Show<span class="unseen"> what revision ${one.revision} did</span></button>`
      : 'the first'}</td>
  </tr>`;

const opened = () => html`
  <section class="panel" aria-labelledby="effects-heading">
    <h3 id="effects-heading" tabindex="-1">What revision ${open.revision} did</h3>
    <div role="status">${open.effects || open.failed ? nothing
      : html`<p>Each row of the charts of its day is being worked out … <progress aria-label="Working out"></progress></p>`}</div>
    ${open.failed ? trouble(open.failed) : nothing}
    ${open.effects ? effectsPanel(open.effects, MOST_ROWS) : nothing}
  </section>`;

/** Effects of a revision, or of one that is tried out. */
export const effectsPanel = (effects, most) => html`
  <p><strong>Rows to look at: ${effects.affectedRows}.</strong> Output, receptor exposure or entrance kerma move by more than 10 %,
    or the row lost something it was signed with.</p>
  ${effects.outputs.length ? outputs(effects.outputs) : nothing}
  ${effects.gridFactors.length ? factors(effects.gridFactors) : nothing}
  ${effects.charts.map((chart) => html`${movedTable(chart, most)}${since(chart)}`)}
  ${effects.charts.length === 0 ? html`<p>No chart answered in this room then.</p>` : nothing}`;

const since = (chart) => (chart.sinceSigning.affectedRows
  ? html`<p class="tell caution"><strong>Since it was signed.</strong>
    Against the equipment of its signature (revision ${chart.sinceSigning.comparedWith}),
      ${chart.sinceSigning.affectedRows} rows of version ${chart.version} are to be looked at: small steps add up.</p>` : nothing);

const percent = (number) => `${number > 0 ? '+' : ''}${number}`;

const outputs = (all) => html`
  <div class="scroll"><table>
    <caption>Output, µGy/mAs at 1 m</caption>
    <thead><tr><th scope="col" class="number">kV</th><th scope="col" class="number">Before</th><th scope="col" class="number">After</th>
      <th scope="col" class="number">Change, %</th></tr></thead>
    <tbody>${all.map((one) => html`<tr><th scope="row" class="number">${one.kV}</th><td class="number">${one.before}</td>
      <td class="number">${one.after}</td>
      <td class="number">${percent(one.changePercent)}</td></tr>`)}</tbody>
  </table></div>`;

const factors = (all) => html`
  <div class="scroll"><table>
    <caption>Factors of grids: by so much the mAs move that are asked with this grid instead of the row's</caption>
    <thead><tr><th scope="col">Grid</th><th scope="col" class="number">kV</th><th scope="col" class="number">Before</th>
      <th scope="col" class="number">After</th><th scope="col" class="number">Change, %</th></tr></thead>
    <tbody>${all.map((one) => html`<tr><th scope="row">${one.grid}</th><td class="number">${one.kV}</td>
      <td class="number">${one.before}</td><td class="number">${one.after}</td>
      <td class="number">${percent(one.changePercent)}</td></tr>`)}</tbody>
  </table></div>`;
