// What may differ from the row for this patient, in place: distance, grid, and the named adjustments of the chart.
import { html, nothing } from '/pages/lit-html.js';
import { length, lengthNumber } from '/pages/words.js';
import { gridName } from './answer.js';

export function adjusting(state, act) {
  const { chosen, head } = state;
  const row = rowNow(state);
  const support = head.supports.find((each) => each.support === chosen.support);
  return html`
    <section class="adjusting" aria-label="Different for this patient">
      ${sid(state, act, row, support)}
      ${grids(state, act, row, support)}
      <div class="adjustments" role="group" aria-label="Adjustments">
        ${head.adjustments.map(({ name, label, notes }) => html`
          <button type="button" title=${notes ?? ''} aria-pressed=${state.adjust.includes(name)} @click=${() => act.adjust(name)}>${label}</button>`)}
      </div>
      ${state.answer?.kind === 'technique' ? html`
        <button type="button" id="derived" @click=${act.derive}>How it was derived <kbd>?</kbd></button>` : nothing}
    </section>`;
}

/** The row that answered, else the first of the examination. */
export const rowNow = ({ answer, chosen }) => (answer?.kind === 'technique' ? answer.technique.row : chosen.rows[0]);

function sid(state, act, row, support) {
  const { unit } = state;
  const stops = support?.sidStopsCm;
  const now = state.sidCm ?? row.sidCm;
  if (stops) {
    return html`<div class="choice" role="group" aria-label="SID">
      <span class="quiet" aria-hidden="true">SID</span>
      ${stops.map((stop) => html`<button type="button" aria-pressed=${stop === now} @click=${() => act.sid(stop)}>
        ${length(stop, unit)}${stop === row.sidCm ? html` <small>chart</small>` : nothing}</button>`)}
    </div>`;
  }
  return html`<div class="choice" role="group" aria-label="SID">
    <label for="sid">SID</label>
    <button type="button" class="step" aria-label="Shorter SID" @click=${() => act.sidStep(-1, now)}>−</button>
    <input id="sid" inputmode="decimal" autocomplete="off" size="4" maxlength="6" data-own-keys
      .value=${state.sidTyped ?? lengthNumber(now, unit)} aria-invalid=${state.sidWrong ? 'true' : nothing} aria-describedby="sid-chart"
      @change=${(event) => act.sidTyped(event.target.value)}>
    <span>${unit}</span>
    <button type="button" class="step" aria-label="Longer SID" @click=${() => act.sidStep(1, now)}>+</button>
    <span id="sid-chart" class="quiet">${state.sidWrong ? 'type a number' : now === row.sidCm ? 'as charted' : html`
      <button type="button" @click=${() => act.sid(null)}>chart: ${length(row.sidCm, unit)}</button>`}</span>
  </div>`;
}

function grids(state, act, row, support) {
  const ids = [...new Set([row.grid, ...(support?.grids ?? [])])];
  if (ids.length < 2) return nothing;
  const now = state.grid ?? row.grid;
  return html`<div class="choice" role="group" aria-label="Grid">
    <span class="quiet" aria-hidden="true">Grid</span>
    ${ids.map((id) => html`<button type="button" aria-pressed=${id === now} title=${id} @click=${() => act.grid(id === row.grid ? null : id)}>
      ${gridName(id, state.head.grids, state.unit)}${id === row.grid ? html` <small>chart</small>` : nothing}</button>`)}
  </div>`;
}
