// Two versions beside each other, row by row: what came, what went, what reads otherwise; and who signed what lies between, and why.
import { html, nothing } from '/pages/lit-html.js';
import { moment } from '/pages/words.js';
import { toVersion, toComparison } from '/pages/chart/address.js';
import { stateOf } from '/pages/chart/head.js';
import {
  adjustmentWords, bandOfKey, bandWords, examinationWords, fieldText, fieldWords, regionOf, regions, techniqueWords, unit, whereWords,
} from '/pages/chart/terms.js';

const KINDS = [['added', 'Added', 'good'], ['withdrawn', 'Withdrawn', 'blocking'], ['changed', 'Changed', 'caution']];

/** All rows that differ, as `{key, kind, fields | row}`. */
const rowsOf = ({ added, withdrawn, amended }) => [
  ...added.map((row) => ({ key: row.key, kind: 'added', row })),
  ...withdrawn.map((row) => ({ key: row.key, kind: 'withdrawn', row })),
  ...amended.map(({ key, fields }) => ({ key, kind: 'changed', fields })),
].sort((one, other) => bandOfKey(one.key)[0] - bandOfKey(other.key)[0]);

const adjustmentsOf = (difference) => [
  ...difference.addedAdjustments.map((one) => ({ key: one.name, kind: 'added', adjustment: one })),
  ...difference.withdrawnAdjustments.map((one) => ({ key: one.name, kind: 'withdrawn', adjustment: one })),
  ...difference.amendedAdjustments.map(({ key, fields }) => ({ key, kind: 'changed', fields })),
];

export function comparePart({ versions, inForce, from, to, difference, kinds, turnKind, go }) {
  return html`
    <p><a href=${toVersion(to ?? inForce)}>All rows of version ${to ?? inForce}</a></p>
    <h2 id="part" tabindex="-1">Compare two versions</h2>
    <div class="row">
      ${choice('From', 'from', versions, inForce, from, (number) => go(toComparison(number, to)))}
      ${choice('To', 'to', versions, inForce, to, (number) => go(toComparison(from, number)))}
      <button type="button" @click=${() => go(toComparison(to, from))}>Turn round</button>
    </div>
    ${difference === null ? nothing : result({ versions, from, to, difference, kinds, turnKind })}`;
}

const choice = (label, id, versions, inForce, now, chosen) => html`
  <label class="field">${label}<select id=${id} @change=${(event) => chosen(Number(event.target.value))}>
    ${versions.map((one) => html`<option value=${one.version} ?selected=${one.version === now}>${one.version}, ${stateOf(one, inForce).word}: ${one.title}</option>`)}
  </select></label>`;

function result({ versions, from, to, difference, kinds, turnKind }) {
  const rows = rowsOf(difference);
  const adjustments = adjustmentsOf(difference);
  const all = [...rows, ...adjustments];
  return html`
    ${between(versions, from, to)}
    <fieldset class="kinds"><legend>Show</legend><div class="row">
      ${KINDS.map(([kind, word]) => html`<label class="tick"><input type="checkbox" .checked=${kinds.has(kind)} @change=${() => turnKind(kind)}>
        ${word} (${all.filter((one) => one.kind === kind).length})</label>`)}
    </div></fieldset>
    ${all.length === 0 ? html`<p>No row and no adjustment differs.${difference.reordered ? ' Only their order does.' : ''}</p>` : nothing}
    ${all.length > 0 && difference.reordered ? html`<p>What both have stands in another order, too.</p>` : nothing}
    ${rows.length === 0 ? nothing : rowsTable(rows.filter((one) => kinds.has(one.kind)), rows.length, from, to)}
    ${adjustments.length === 0 ? nothing : adjustmentsTable(adjustments.filter((one) => kinds.has(one.kind)), from, to)}`;
}

/** The signatures that made the difference; of a comparison with an earlier version, those that would be undone. */
function between(versions, from, to) {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  const signed = versions.filter((one) => one.version > low && one.version <= high).sort((one, other) => one.version - other.version);
  return signed.length === 0 ? nothing : html`
    <div class="scroll"><table id="signatures"><caption>${from < to ? 'Who signed the versions between, and why' : 'Who signed what lies between, read backwards, and why'}</caption>
      <thead><tr><th scope="col">Version</th><th scope="col">Signed by</th><th scope="col">When</th><th scope="col">Reason</th><th scope="col">Meaning of the signature</th></tr></thead>
      <tbody>${signed.map((one) => html`<tr><th scope="row"><a href=${toVersion(one.version)}>${one.version}: ${one.title}</a></th>
        <td>${one.signature.printedName} (${one.signature.role})</td><td>${moment(one.signature.at)}</td><td>${one.reason}</td><td>${one.signature.meaning}</td></tr>`)}</tbody>
    </table></div>`;
}

const markOf = (kind) => {
  const [, word, mark] = KINDS.find(([one]) => one === kind);
  return html`<span class="mark ${mark}">${word}</span>`;
};

const head = (what, from, to) => html`<thead><tr><th scope="col">${what}</th><th scope="col">What</th><th scope="col">Field</th>
  <th scope="col">Version ${from}</th><th scope="col">Version ${to}</th></tr></thead>`;

const nowhere = html`<span class="small">not in it</span>`;
const empty = html`<span class="small">empty</span>`;

/** One thing that differs: as many lines as fields. */
function lines({ kind, fields }, title, whole, key) {
  if (kind !== 'changed') {
    return html`<tr data-key=${key}><th scope="row">${title}</th><td>${markOf(kind)}</td><td></td>
      <td>${kind === 'withdrawn' ? whole : nowhere}</td><td>${kind === 'added' ? whole : nowhere}</td></tr>`;
  }
  return fields.map(({ field, before, after }, at) => html`<tr data-key=${key} class=${at > 0 ? 'more' : ''}>
    ${at === 0 ? html`<th scope="row" rowspan=${fields.length}>${title}</th><td rowspan=${fields.length}>${markOf(kind)}</td>` : nothing}
    <td>${fieldWords(field)}</td><td><del>${fieldText(field, before) || empty}</del></td><td><ins>${fieldText(field, after) || empty}</ins></td></tr>`);
}

const rowTitle = (key) => html`${examinationWords(key)}, ${bandWords(bandOfKey(key))} ${unit()}<br><span class="small">${whereWords(key)}</span>`;

const rowsTable = (shown, all, from, to) => html`
  <p role="status">${shown.length === all ? `All ${all} rows that differ` : `${shown.length} of ${all} rows that differ`}</p>
  ${shown.length === 0 ? nothing : html`
  <div class="scroll"><table id="differences" class="differences"><caption>Rows</caption>${head('Row', from, to)}
    ${regions().map(({ region, label }) => [label, shown.filter((one) => regionOf(one.key.split('/')[0]) === region)])
      .filter(([, rows]) => rows.length > 0).map(([label, rows]) => html`
      <tbody><tr class="region"><th scope="rowgroup" colspan="5">${label}</th></tr>
        ${byExamination(rows).map((one) => lines(one, rowTitle(one.key), one.row ? techniqueWords(one.row) : nothing, one.key))}</tbody>`)}
  </table></div>`}`;

/** Rows of one examination together, in the order in which the first of each was met, by ascending band. */
function byExamination(rows) {
  const found = new Map();
  rows.forEach((one) => {
    const name = one.key.split('/').slice(0, 4).join('/');
    found.set(name, [...(found.get(name) ?? []), one]);
  });
  return [...found.values()].flat();
}

const adjustmentsTable = (shown, from, to) => (shown.length === 0 ? nothing : html`
  <div class="scroll"><table id="adjustment-differences" class="differences"><caption>Named adjustments</caption>${head('Adjustment', from, to)}
    <tbody>${shown.map((one) => lines(one, one.adjustment?.label ?? one.key, one.adjustment ? adjustmentWords(one.adjustment) : nothing, one.key))}</tbody>
  </table></div>`);
