// One row opened: all its fields, what is said about it, and what beam physics makes of it.
import { html, nothing } from '/pages/lit-html.js';
import { columns, unit } from '/pages/chart/terms.js';
import { lengthNumber } from '/pages/words.js';
import { said } from '/pages/chart/findings.js';
import { toExamination, toRow, examinationOf } from '/pages/chart/address.js';
import { costWords, gradeList } from '/pages/chart/physics.js';

/** `physics` gives what beam physics says of a row by its key, where that is known already. */
export function rowDetail(row, version, findings, physics) {
  const found = findings.byRow.get(row.key) ?? [];
  const predicted = physics(row.key);
  return html`
    <dl class="fields">
      ${columns().filter((column) => column.text(row) !== '').map((column) => html`<div><dt>${column.head}</dt><dd>${column.text(row)}</dd></div>`)}
      <div><dt>Key</dt><dd><code>${row.key}</code></dd></div>
      ${predicted?.dose ? html`<div><dt>At the skin at ${lengthNumber(row.referenceThicknessCm, unit())} ${unit()}</dt><dd>${costWords(predicted.dose)}</dd></div>` : nothing}
    </dl>
    ${found.map(said)}
    ${predicted ? gradeList(predicted.grades) : nothing}
    <p class="row"><a href=${toExamination(version, examinationOf(row.key))}>Curves of this examination</a>
      <a href=${toRow(version, row.key)}>Link to this row</a></p>`;
}
