// What an event changed, as far as the interface can tell: a version against the one before, equipment against the one before, a row
// before and after, an account.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { objectNumber, roomName } from '/pages/audit/acts.js';
import { movedTable } from '/pages/equipment/moved.js';

const LONGEST_LIST = 40;

/** Something to be drawn by `differencePanel`. */
export async function findDifference(event) {
  const number = objectNumber(event);
  if (event.action === 'version-signed' && event.room && number) return version(event.room, number);
  if (event.action === 'equipment-installed' && event.room && number) return equipment(event.room, number);
  if (event.details.before || event.details.after) return fields(event.details.before ?? {}, event.details.after ?? {});
  if (event.action === 'role-changed') return { rows: [['role', event.details.from, event.details.to]] };
  if (event.action === 'audit-reviewed') return { words: event.details.findings };
  if (event.action === 'ledger-resumed') return { words: event.details.doubt };
  return {};
}

async function version(room, number) {
  if (number === 1) return { words: `Version 1 is the first of ${roomName(room)}: there is none before it to compare it with.` };
  const { data } = await api.get(`/charts/${encodeURIComponent(room)}/compare?from=${number - 1}&to=${number}`);
  return { compared: data };
}

async function equipment(room, number) {
  const address = `/rooms/${encodeURIComponent(room)}/equipment/revisions`;
  if (number === 1) return { words: `Revision 1 is the first of ${roomName(room)}: there is none before it to compare it with.` };
  const [before, after] = await Promise.all([number - 1, number].map(async (one) => (await api.get(`${address}/${one}`)).data.document));
  const effects = (await api.get(`${address}/${number}/effects`)).data;
  return { ...fields(before, after), effects };
}

function fields(before, after) {
  const [was, is] = [leaves(before), leaves(after)];
  const names = [...new Set([...was.keys(), ...is.keys()])].sort();
  const rows = names.filter((name) => was.get(name) !== is.get(name)).map((name) => [name.trim(), was.get(name), is.get(name)]);
  return { rows };
}

/** Each value by where it stands; entries of a list by what names them, so that one more does not move the others. */
function leaves(value, path = '', found = new Map()) {
  if (value === null || typeof value !== 'object') found.set(path, String(value));
  else if (Array.isArray(value) && value.every((one) => one === null || typeof one !== 'object')) found.set(path, value.join(', '));
  else Object.entries(value).forEach(([key, part]) => leaves(part, path + place(Array.isArray(value), key, part), found));
  return found;
}

function place(listed, key, part) {
  if (!listed) return ` ${key}`;
  const name = part?.id ?? part?.name ?? part?.kind ?? (part?.kV === undefined ? undefined : `${part.kV} kV`)
    ?? (part?.timeMs === undefined ? undefined : `${part.timeMs} ms`);
  return ` ${name ?? Number(key) + 1}`;
}

export const differencePanel = (difference) => html`
  <section aria-labelledby="difference-heading">
    <h3 id="difference-heading">What it changed</h3>
    ${difference.words ? html`<p>${difference.words}</p>` : nothing}
    ${difference.rows ? changed(difference.rows) : nothing}
    ${difference.compared ? compared(difference.compared) : nothing}
    ${difference.effects ? effects(difference.effects) : nothing}
    ${Object.keys(difference).length === 0 ? html`<p>It changed no chart and no equipment; its details say all there is.</p>` : nothing}
  </section>`;

const changed = (rows) => (rows.length === 0 ? html`<p>No field differs.</p>` : html`
  <div class="scroll" tabindex="0" role="group" aria-label="Fields that differ"><table>
    <caption>Fields that differ</caption>
    <thead><tr><th scope="col">Field</th><th scope="col">Before</th><th scope="col">After</th></tr></thead>
    <tbody>${rows.map(([name, before, after]) => html`<tr><th scope="row">${name}</th><td>${before ?? '–'}</td>
      <td>${after ?? '–'}</td></tr>`)}</tbody>
  </table></div>`);

const compared = (found) => html`
  <p>Against version ${found.from}: ${found.amended.length} rows amended, ${found.added.length} added, ${found.withdrawn.length} withdrawn${
    found.addedAdjustments.length + found.withdrawnAdjustments.length + found.amendedAdjustments.length
      ? `; named adjustments: ${found.addedAdjustments.length} added, ${found.withdrawnAdjustments.length} withdrawn,
        ${found.amendedAdjustments.length} amended` : ''}${
    found.reordered ? '; rows stand in another order' : ''}.</p>
  ${found.amended.length ? amended(found.amended) : nothing}
  ${rowList('Added', found.added)}
  ${rowList('Withdrawn', found.withdrawn)}
  <p><a href="/charts/${found.room}">The chart of ${roomName(found.room)}</a></p>`;

const amended = (rows) => html`
  <div class="scroll" tabindex="0" role="group" aria-label="Amended rows"><table>
    <caption>Amended rows</caption>
    <thead><tr><th scope="col">Row</th><th scope="col">Field</th><th scope="col">Before</th><th scope="col">After</th></tr></thead>
    <tbody>${rows.flatMap((row) => row.fields.map((field, i) => html`
      <tr>${i === 0 ? html`<th scope="row" rowspan=${row.fields.length}>${row.key}</th>` : nothing}
        <td>${field.field}</td><td>${field.before || '–'}</td><td>${field.after || '–'}</td></tr>`))}</tbody>
  </table></div>`;

const rowList = (heading, rows) => (rows.length === 0 ? nothing : html`
  <h4>${heading}</h4>
  <ul>${rows.slice(0, LONGEST_LIST).map((row) => html`<li>${row.key}: ${row.kV} kV, ${row.aec ? 'AEC' : `${row.mAs} mAs`}</li>`)}</ul>
  ${rows.length > LONGEST_LIST ? html`<p>and ${rows.length - LONGEST_LIST} more: see the chart.</p>` : nothing}`);

const effects = (found) => html`
  <h4>What it did to the charts of its day</h4>
  <p>Rows to look at: ${found.affectedRows}.${found.largestOutputRatio === null ? nothing
    : html` The output went to ${found.largestOutputRatio} times what it was,
    where it moved most.`}</p>
  ${found.calibration.map((said) => html`<p class="small">${said}</p>`)}
  ${found.charts.map((chart) => movedTable(chart, 10))}`;
