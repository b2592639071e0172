// What a change does to the chart, row by row, as the service worked it out: nothing is computed here.
import { html, nothing } from '/pages/lit-html.js';
import { moment } from '/pages/words.js';
import { keyLine, columnOf, shown, textsOf, unitOf } from '/pages/change/fields.js';

const signed = (number, unit) => (number === null ? 'not known' : `${number > 0 ? '+' : ''}${number} ${unit}`);

/** `before` is the impact that was on the screen when it moved, or null. */
export function impactOf(impact, before, site, { edits, state }) {
  if (!impact) return html`<p role="status">Working out the impact … <progress aria-label="Working out the impact"></progress></p>`;
  const { limits, rows, adjustments, earlyStarts, onVersion } = impact;
  const open = ['drafting', 'submitted', 'returned'].includes(state);
  const context = { site, edits, open };
  return html`
    ${earlyStarts.map((early) => earlyStart(early, before, context))}
    ${state === 'signed' && earlyStarts.length > 0
      ? html`<p class="small">What a sooner start would have done was part of what was signed; whether it applied stands in the version's start.</p>` : nothing}
    ${earlyStarts.length === 0 ? nothing
      : html`<h3>For a start on ${moment(earlyStarts.at(-1).before)} or later: against version ${onVersion}</h3>`}
    ${physicistWords(impact, context)}
    ${rows.length === 0 && adjustments.length === 0 ? html`<p>Nothing differs from version ${onVersion}.</p>` : nothing}
    ${table(`Rows against version ${onVersion}: what answers ${earlyStarts.length === 0 ? 'today' : 'then'}, what would answer`, rows,
      before, before?.rows, context)}
    ${adjustmentsOf('Named adjustments', adjustments)}
    <p class="small">Limits of the site: receptor exposure by more than ${limits.maxExposureShiftDb} dB either way, or entrance air kerma up
      by more than ${limits.maxKermaRisePercent} %, need the physicist. 1 dB is 26 %. Estimates for techniques, never a patient's dose.
      What is signed is named by this digest: <span class="code">${impact.digest}</span></p>`;
}

/** 'version 2, signed to start on 9 Mar 2026, 08:00' of each. */
const overtakenWords = ({ overtaken }) => overtaken.map(({ version, inForceFrom }) =>
  `version ${version}, signed to start on ${moment(inForceFrom)}`).join('; ');

/** What a start before a version that waits for its day does: the rows of that version come into force with it. */
function earlyStart(early, before, context) {
  const { rows, adjustments, againstVersion } = early;
  const seen = before?.earlyStarts.find((one) => one.againstVersion === againstVersion && one.before === early.before);
  const brought = rows.filter(({ row }) => early.broughtRows.includes(row));
  const own = rows.filter((one) => !brought.includes(one));
  const broughtAdjustments = adjustments.filter(({ name }) => early.broughtAdjustments.includes(name));
  const against = againstVersion === 0 ? 'where no version answers until then' : `against version ${againstVersion}, which answers until then`;
  return html`
    <h3>For a start before ${moment(early.before)}: ${against}</h3>
    <p class="tell caution"><strong>Brings what waits.</strong>This change stands on ${overtakenWords(early)}. Signed to start sooner, it
      answers in its place${early.overtaken.length > 1 ? 's' : ''}: ${brought.length + broughtAdjustments.length === 0
        ? 'nothing else comes into force with it.' : 'what is listed first comes into force with it, earlier than signed.'}</p>
    ${physicistWords(early, context)}
    ${rows.length === 0 && adjustments.length === 0 ? html`<p>Nothing differs from version ${againstVersion}.</p>` : nothing}
    ${table('Come into force with it, earlier than signed', brought, before, seen?.rows, context)}
    ${adjustmentsOf('Named adjustments that come into force with it, earlier than signed', broughtAdjustments)}
    ${table(`Its own rows ${against}`, own, before, seen?.rows, context)}
    ${adjustmentsOf('Its own named adjustments', adjustments.filter((one) => !broughtAdjustments.includes(one)))}`;
}

const table = (caption, rows, before, seen, { site, edits }) => (rows.length === 0 ? nothing : html`
    <div class="scroll" tabindex="0" role="region" aria-label=${caption}><table class="impact">
      <caption>${caption}</caption>
      <thead>
        <tr>
          <th scope="col">Row</th><th scope="col" class="number">kV</th><th scope="col" class="number">mAs</th>
          <th scope="col" class="number">Receptor exposure<br><span class="small">15 % rule</span></th>
          <th scope="col" class="number">Receptor exposure<br><span class="small">beam model</span></th>
          <th scope="col" class="number">Entrance air kerma</th>
          <th scope="col">Against the limits</th><th scope="col">What else differs, and remarks</th>
        </tr>
      </thead>
      <tbody>${rows.map((row) => line(row, seen?.find((one) => one.row === row.row), before, site, edits.find((edit) =>
        edit.key === row.row)))}</tbody>
    </table></div>`);

/** Whether the rows and adjustments themselves pass a limit; a change that waits for others may need the physicist for theirs alone. */
export const overLimits = ({ rows, adjustments }) => [...rows, ...adjustments].filter((one) => one.needsPhysicist);

function physicistWords(impact, { site, open }) {
  const over = overLimits(impact).map((one) => (one.row ? keyLine(one.row, site) : `adjustment ${one.name}`));
  return over.length > 0
    ? html`<p class="tell caution"><strong>${open ? 'Needs the physicist.' : 'Large.'}</strong>Over a limit, or not known, in
      ${`${over.length} ${over.length === 1 ? 'place' : 'places'}: ${over.slice(0, 6).join('; ')}`}${over.length > 6 ? ' …' : ''}.</p>`
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
  : columnOf(field) ? `${shown(field, text, site.lengthUnit)} ${columnOf(field).length || columnOf(field).field ? unitOf(field, site) : ''}`.trim() : text);

const effect = (one) => (one === null ? 'none' : one.addKV !== null ? signed(one.addKV, 'kV') : `mAs x ${one.timesMAs}`);

const adjustmentsOf = (caption, adjustments) => (adjustments.length === 0 ? nothing : html`
  <div class="scroll" tabindex="0" role="region" aria-label=${caption}><table>
    <caption>${caption}</caption>
    <thead><tr><th scope="col">Name</th><th scope="col">Today</th><th scope="col">Would be</th>
      <th scope="col" class="number">Receptor exposure, 15 % rule</th><th scope="col" class="number">Beam model</th>
      <th scope="col" class="number">Entrance air kerma</th><th scope="col">Against the limits</th></tr></thead>
    <tbody>${adjustments.map((one) => html`<tr>
      <th scope="row">${one.name}</th><td>${effect(one.before)}</td><td><b>${effect(one.after)}</b></td>
      <td class="number">${signed(one.exposureShiftDb, 'dB')}</td><td class="number">${signed(one.predictedShiftDb, 'dB')}</td>
      <td class="number">${signed(one.kermaChangePercent, '%')}</td>
      <td>${one.needsPhysicist ? html`<span class="mark caution">needs the physicist</span>` : html`<span class="mark good">within</span>`}
        ${one.remarks.map((remark) => html`<p class="small">${remark}</p>`)}</td></tr>`)}</tbody>
  </table></div>`);
