// Two versions beside each other, row by row: what came, what went, what reads otherwise; and who signed what lies between, and why.
import { html, nothing } from '/pages/lit-html.js';
import { moment } from '/pages/words.js';
import { examinationOf, toVersion, toComparison } from '/pages/chart/address.js';
import { versionOption } from '/pages/chart/head.js';
import { differenceLines, KINDS, tableHead } from '/pages/chart/difference.js';
import {
  adjustmentWords, bandOfKey, bandWords, examinationWords, regionOf, regions, techniqueWords, unit, whereWords,
} from '/pages/chart/terms.js';

/** Everything that differs, as `{key, kind, fields}` or `{key, kind, whole}`. */
const differing = (added, withdrawn, amended, name, words) => [
  ...added.map((one) => ({ key: one[name], kind: 'added', label: one.label, whole: words(one) })),
  ...withdrawn.map((one) => ({ key: one[name], kind: 'withdrawn', label: one.label, whole: words(one) })),
  ...amended.map(({ key, fields }) => ({ key, kind: 'changed', fields })),
];

const rowsOf = ({ added, withdrawn, amended }) => differing(added, withdrawn, amended, 'key', techniqueWords)
  .sort((one, other) => bandOfKey(one.key)[0] - bandOfKey(other.key)[0]);

const adjustmentsOf = (all) =>
  differing(all.addedAdjustments, all.withdrawnAdjustments, all.amendedAdjustments, 'name', adjustmentWords);

/** The part of the page; `turnKind` shows or hides a kind of difference. */
export function comparePart({ versions, inForce, from, to, difference, kinds, turnKind, go }) {
  const choice = (label, id, now, chosen) => html`
    <label class="field">${label}<select id=${id} @change=${(event) => go(chosen(Number(event.target.value)))}>
      ${versions.some((one) => one.version === now) ? nothing : html`<option value="" .selected=${true}></option>`}
      ${versions.map((one) => versionOption(one, inForce, now))}</select></label>`;
  return html`
    <p><a href=${toVersion(to)}>All rows of version ${to}</a></p>
    <h2 id="part" tabindex="-1">Compare two versions</h2>
    <div class="row pickers">
      ${choice('From', 'from', from, (number) => toComparison(number, to))}
      ${choice('To', 'to', to, (number) => toComparison(from, number))}
      <button type="button" @click=${() => go(toComparison(to, from))}>Turn round</button>
    </div>
    ${difference === null ? nothing : result({ versions, from, to, difference, kinds, turnKind })}`;
}

function result({ versions, from, to, difference, kinds, turnKind }) {
  const rows = rowsOf(difference);
  const adjustments = adjustmentsOf(difference);
  const all = [...rows, ...adjustments];
  const shown = all.filter((one) => kinds.has(one.kind));
  return html`
    ${between(versions, from, to)}
    <fieldset class="kinds"><legend>Show</legend><div class="row">
      ${KINDS.map(({ kind, word }) => html`<label class="tick">
        <input type="checkbox" .checked=${kinds.has(kind)} @change=${() => turnKind(kind)}>
        ${word} (${all.filter((one) => one.kind === kind).length})</label>`)}
    </div></fieldset>
    <p role="status">${howMany(shown.length, rows.length, adjustments.length)}
      ${difference.reordered ? 'What both have stands in another order.' : ''}</p>
    ${rowsTable(shown.filter((one) => rows.includes(one)), from, to)}
    ${adjustmentsTable(shown.filter((one) => adjustments.includes(one)), from, to)}`;
}

function howMany(shown, rows, adjustments) {
  if (rows + adjustments === 0) return 'No row and no adjustment differs.';
  return `${rows} rows and ${adjustments} named adjustments differ${shown === rows + adjustments ? '' : `; ${shown} of them are shown`}.`;
}

/** The signatures that made the difference; of a comparison with an earlier version, those that it would undo. */
function between(versions, from, to) {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const signed = versions.filter((one) => one.version > low && one.version <= high)
    .sort((one, other) => one.version - other.version);
  return signed.length === 0 ? nothing : html`
    <div class="scroll"><table id="signatures">
      <caption>Who signed what lies between, and why${from > to ? ' (read backwards)' : ''}</caption>
      <thead><tr><th scope="col">Version</th><th scope="col">Signed by</th><th scope="col">When</th><th scope="col">Reason</th>
        <th scope="col">Meaning of the signature</th></tr></thead>
      <tbody>${signed.map(signatureLine)}</tbody>
    </table></div>`;
}

const signatureLine = ({ version, title, reason, signature }) => html`
  <tr><th scope="row"><a href=${toVersion(version)}>${version}: ${title}</a></th><td>${signature.printedName} (${signature.role})</td>
    <td>${moment(signature.at)}</td><td>${reason}</td><td>${signature.meaning}</td></tr>`;

const rowTitle = (key) => html`${examinationWords(key)}, ${bandWords(bandOfKey(key))} ${unit()}<br>
  <span class="small">${whereWords(key)}</span>`;

function rowsTable(shown, from, to) {
  const of = (region) => byExamination(shown.filter((one) => regionOf(one.key.split('/')[0]) === region));
  const groups = regions().map(({ region, label }) => [label, of(region)]).filter(([, rows]) => rows.length > 0);
  return shown.length === 0 ? nothing : html`
    <div class="scroll"><table id="differences" class="differences"><caption>Rows</caption>${tableHead('Row', from, to)}
      ${groups.map(([label, rows]) => html`
        <tbody><tr class="region"><th scope="rowgroup" colspan="5">${label}</th></tr>
          ${rows.map((one) => differenceLines(one, rowTitle(one.key)))}</tbody>`)}
    </table></div>`;
}

/** Rows of one examination together, in the order in which the first of each was met, by ascending band. */
function byExamination(rows) {
  const found = new Map();
  rows.forEach((one) => found.set(examinationOf(one.key), [...(found.get(examinationOf(one.key)) ?? []), one]));
  return [...found.values()].flat();
}

const adjustmentsTable = (shown, from, to) => (shown.length === 0 ? nothing : html`
  <div class="scroll"><table id="adjustment-differences" class="differences"><caption>Named adjustments</caption>
    ${tableHead('Adjustment', from, to)}
    <tbody>${shown.map((one) => differenceLines(one, one.label ?? one.key))}</tbody>
  </table></div>`);
