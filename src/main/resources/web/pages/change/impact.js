// What a change does to the chart, row by row, as the service worked it out: nothing is computed here.
import { html, nothing } from '/pages/lit-html.js';
import { keyLine, columnOf, shown, textsOf, unitOf } from '/pages/change/fields.js';

const signed = (number, unit) => (number === null ? 'not known' : `${number > 0 ? '+' : ''}${number} ${unit}`);

/** `before` is the impact that was on the screen when it moved, or null. */
export function impactOf(impact, before, site, { edits, state }) {
  if (!impact) return html`<p role="status">Working out the impact … <progress aria-label="Working out the impact"></progress></p>`;
  const { limits, rows, adjustments } = impact;
  return html`
    ${physicistWords(impact, site, ['drafting', 'submitted', 'returned'].includes(state))}
    ${rows.length === 0 && adjustments.length === 0 ? html`<p>Nothing differs from version ${impact.onVersion}.</p>` : nothing}
    ${rows.length === 0 ? nothing : html`
    <div class="scroll" tabindex="0" role="region" aria-label="Impact on rows"><table class="impact">
      <caption>Rows against version ${impact.onVersion}: what answers today, what would answer</caption>
      <thead>
        <tr>
          <th scope="col">Row</th><th scope="col" class="number">kV</th><th scope="col" class="number">mAs</th>
          <th scope="col" class="number">Receptor exposure<br><span class="small">15 % rule</span></th>
          <th scope="col" class="number">Receptor exposure<br><span class="small">beam model</span></th>
          <th scope="col" class="number">Entrance air kerma</th>
          <th scope="col">Against the limits</th><th scope="col">What else differs, and remarks</th>
        </tr>
      </thead>
      <tbody>${rows.map((row) => line(row, before?.rows.find((one) => one.row === row.row), before, site, edits.find((edit) =>
        edit.key === row.row)))}</tbody>
    </table></div>`}
    ${adjustments.length === 0 ? nothing : adjustmentsOf(adjustments)}
    <p class="small">Limits of the site: receptor exposure by more than ${limits.maxExposureShiftDb} dB either way, or entrance air kerma up
      by more than ${limits.maxKermaRisePercent} %, need the physicist. 1 dB is 26 %. Estimates for techniques, never a patient's dose.
      What is signed is named by this digest: <span class="code">${impact.digest}</span></p>`;
}

function physicistWords(impact, site, open) {
  const over = [...impact.rows.filter((row) => row.needsPhysicist).map((row) => keyLine(row.row, site)),
    ...impact.adjustments.filter((one) => one.needsPhysicist).map((one) => `adjustment ${one.name}`)];
  return impact.needsPhysicist
    ? html`<p class="tell caution"><strong>${open ? 'Needs the physicist.' : 'Large.'}</strong>Over a limit, or not known, in
      ${over.length === 0
      ? 'the chart as a whole' : `${over.length} ${over.length === 1 ? 'place' : 'places'}: ${over.slice(0,
        6).join('; ')}`}${over.length > 6 ? ' …' : ''}.</p>`
    : html`<p class="tell good"><strong>Within the limits.</strong>${open ? 'No physicist has to concur.' : ''}</p>`;
}

const control = (setting) => (setting === null ? 'none'
  : setting.aec ? `AEC ${setting.aec.chambers.join('+')}, density ${setting.aec.density}, back-up ${setting.aec.backupMAs}` : setting.mAs);

/** Old and new; where both are the same, once. */
function change(before, after) {
  if (before === null) return html`${after}`;
  if (after === null) return html`<s>${before}</s>`;
  return before === after ? html`${after}` : html`<span class="unseen">from</span> ${before} <span
    aria-hidden="true">→</span><span class="unseen">to</span> <b>${after}</b>`;
}

function line(row, seen, before, site, edit) {
  const others = row.fields.filter(({ field }) => !['kV', 'mAs'].includes(field));
  return html`<tr>
    <th scope="row">${keyLine(row.row, site)}<br><span class="mark">${row.kind}</span></th>
    <td class="number">${change(row.before?.kV ?? null, row.after?.kV ?? null)}</td>
    <td class="number">${change(row.before ? control(row.before) : null, row.after ? control(row.after) : null)}</td>
    <td class="number">${figure(row, 'exposureShiftDb', 'dB', seen)}</td>
    <td class="number">${figure(row, 'predictedShiftDb', 'dB', seen)}</td>
    <td class="number">${figure(row, 'kermaChangePercent', '%', seen)}</td>
    <td>${row.needsPhysicist ? html`<span class="mark caution">needs the physicist</span>` : html`<span class="mark good">within</span>`}
      ${before && !seen ? html`<br><span class="mark blocking">new since you looked</span>` : nothing}</td>
    <td>${row.kind !== 'amended' ? nothing : html`<ul class="plain">${others.map((one) => difference(one, site))}</ul>`}
      ${row.kind === 'added' && edit ? whole(edit.row, site) : nothing}
      ${row.remarks.map((remark) => html`<p class="small">${remark}</p>`)}</td>
  </tr>`;
}

/** Every field of a row that is new: whoever signs reads all of it. */
const whole = (row, site) => html`<details><summary>The whole row</summary><ul class="plain">
  ${Object.entries(textsOf(row)).filter(([, text]) => text !== '').map(([field, text]) => html`<li>${columnOf(field).label}:
    <b>${value(field, text, site)}</b></li>`)}</ul></details>`;

const figure = (row, name, unit, seen) => html`${signed(row[name], unit)}${seen && seen[name] !== row[name]
  ? html`<br><span class="mark blocking">was ${signed(seen[name], unit)}</span>` : nothing}`;

const difference = ({ field, before, after }, site) => html`<li>${columnOf(field)?.label ?? field}:
  ${value(field, before, site)} <span aria-hidden="true">→</span><span class="unseen">to</span> <b>${value(field, after, site)}</b></li>`;

const value = (field, text, site) => (text === '' ? 'empty'
  : columnOf(field) ? `${shown(field, text, site.lengthUnit)} ${columnOf(field).length ? unitOf(field, site) : ''}`.trim() : text);

const effect = (one) => (one === null ? 'none' : one.addKV !== null ? signed(one.addKV, 'kV') : `mAs x ${one.timesMAs}`);

const adjustmentsOf = (adjustments) => html`
  <div class="scroll" tabindex="0" role="region" aria-label="Impact of adjustments"><table>
    <caption>Named adjustments</caption>
    <thead><tr><th scope="col">Name</th><th scope="col">Today</th><th scope="col">Would be</th>
      <th scope="col" class="number">Receptor exposure, 15 % rule</th><th scope="col" class="number">Beam model</th>
      <th scope="col" class="number">Entrance air kerma</th><th scope="col">Against the limits</th></tr></thead>
    <tbody>${adjustments.map((one) => html`<tr>
      <th scope="row">${one.name}</th><td>${effect(one.before)}</td><td><b>${effect(one.after)}</b></td>
      <td class="number">${signed(one.exposureShiftDb, 'dB')}</td><td class="number">${signed(one.predictedShiftDb, 'dB')}</td>
      <td class="number">${signed(one.kermaChangePercent, '%')}</td>
      <td>${one.needsPhysicist ? html`<span class="mark caution">needs the physicist</span>` : html`<span class="mark good">within</span>`}
        ${one.remarks.map((remark) => html`<p class="small">${remark}</p>`)}</td></tr>`)}</tbody>
  </table></div>`;
