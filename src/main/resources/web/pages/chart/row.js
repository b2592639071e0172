// One row opened: all its fields, what is said about it, and what beam physics makes of it.
import { html, nothing } from '/pages/lit-html.js';
import { lengthNumber } from '/pages/words.js';
import { unit } from '/pages/chart/terms.js';
import { columns } from '/pages/chart/columns.js';
import { said } from '/pages/chart/findings.js';
import { toExamination, toRow, examinationOf } from '/pages/chart/address.js';
import { costWords, gradeList } from '/pages/chart/physics.js';

const fact = (name, text) => html`<div><dt>${name}</dt><dd>${text}</dd></div>`;

/** `physics` gives what beam physics says of a row by its key, where that is known already. */
export function rowDetail(row, version, findings, physics) {
  const predicted = physics(row.key);
  const at = `${lengthNumber(row.referenceThicknessCm, unit())} ${unit()}`;
  return html`
    <dl class="fields">
      ${columns().filter((column) => column.text(row) !== '').map((column) => fact(column.head, column.text(row)))}
      ${fact('Key', html`<code>${row.key}</code>`)}
      ${predicted?.dose ? fact(`At the skin at ${at}`, costWords(predicted.dose)) : nothing}
    </dl>
    ${(findings.byRow.get(row.key) ?? []).map(said)}
    ${predicted ? gradeList(predicted.grades) : nothing}
    <p class="row"><a href=${toExamination(version, examinationOf(row.key))}>Curves of this examination</a>
      <a href=${toRow(version, row.key)}>Link to this row</a></p>`;
}
