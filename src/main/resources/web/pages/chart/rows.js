// The table of a version's rows by body region; each row opens with all its fields.
import { html, nothing } from '/pages/lit-html.js';
import { repeat } from '/pages/directives/repeat.js';
import { spoken } from '/pages/words.js';
import { regions, regionOf, examinationWords, group } from '/pages/chart/terms.js';
import { EXAMINATION, chosen, columnChoice, filters, shownColumns, sorted } from '/pages/chart/filters.js';
import { toExamination, examinationOf } from '/pages/chart/address.js';
import { rowMark } from '/pages/chart/findings.js';
import { rowDetail } from '/pages/chart/row.js';

/** The part of the page with the table; `changed` draws anew. */
export function rowsPart({ content, version, look, findings, physics, changed }) {
  const shown = chosen(content.rows, look, findings);
  const set = (more) => {
    Object.assign(look, more);
    changed();
  };
  return html`
    <h2 id="part" class="unseen" tabindex="-1">Rows</h2>
    ${filters(content.rows, look, set)}
    <div class="row above">
      <p id="how-many" role="status">${shown.length === content.rows.length ? `All ${shown.length} rows`
    : `${shown.length} of ${content.rows.length} rows`}</p>
      ${columnChoice(look, changed)}
    </div>
    ${shown.length === 0 ? html`<p>No row is like that: clear a filter above.</p>`
    : table(shown, { version, look, findings, physics, changed, set })}`;
}

function table(shown, context) {
  const { version, look, set } = context;
  const cells = shownColumns(look);
  const groups = look.byRegion
    ? regions().map(({ region, label }) => [label, shown.filter((row) => regionOf(row.bodyPart) === region)])
    : [['', shown]];
  return html`
    <div class="scroll rows" role="region" aria-label="Rows of version ${version}" tabindex="0">
      <table>
        <thead><tr>
          ${[EXAMINATION, ...cells].map((column) => heading(column, look, set))}
          <th scope="col">Findings</th><th scope="col">Curves</th>
        </tr></thead>
        ${groups.filter(([, rows]) => rows.length > 0).map(([label, rows]) => html`
          <tbody>
            ${label === '' ? nothing : html`<tr class="region"><th scope="rowgroup" colspan=${cells.length + 3}>${label}</th></tr>`}
            ${lines(sorted(rows, look), cells, context)}
          </tbody>`)}
      </table>
    </div>`;
}

/** Once sorts upwards, twice downwards, three times back to the chart's own order. */
const heading = ({ name, head, number }, look, set) => {
  const on = look.sort === name;
  const turn = () => set(on && look.down ? { sort: null, down: false } : { sort: name, down: on });
  return html`<th scope="col" class=${number ? 'number' : ''} aria-sort=${on ? (look.down ? 'descending' : 'ascending') : nothing}>
    <button type="button" @click=${turn}>${head}<span aria-hidden="true">${on ? (look.down ? ' ▾' : ' ▴') : ''}</span></button></th>`;
};

function lines(rows, cells, context) {
  let before = null;
  const firsts = new Set(rows.filter((row) => {
    const first = before === null || examinationOf(before.key) !== examinationOf(row.key);
    before = row;
    return first;
  }));
  return repeat(rows, (row) => row.key, (row) => line(row, firsts.has(row), cells, context));
}

function line(row, first, cells, { version, look, findings, physics, changed }) {
  const open = look.open.has(row.key);
  const turn = () => {
    if (!look.open.delete(row.key)) look.open.add(row.key);
    changed();
  };
  const curves = `Curves of ${examinationWords(row.key)}, ${group(row.patientGroup)}, ${spoken(row.support)}`;
  return html`
    <tr data-row=${row.key} class=${first ? '' : 'again'}>
      <th scope="row"><button type="button" class="opener" aria-expanded=${open} @click=${turn}
        ><span aria-hidden="true">${open ? '▾' : '▸'}</span> ${examinationWords(row.key)}</button></th>
      ${cells.map((column) => html`<td data-name=${column.name} class=${kindOf(column, row)}>${column.text(row)}</td>`)}
      <td>${rowMark(findings.byRow.get(row.key))}</td>
      <td><a href=${toExamination(version, examinationOf(row.key))} aria-label=${curves}>Curves</a></td>
    </tr>
    ${open ? html`<tr class="detail"><td colspan=${cells.length + 3}>${rowDetail(row, version, findings, physics)}</td></tr>` : nothing}`;
}

const kindOf = (column, row) => (column.isWords?.(row) ? 'words' : column.number ? 'number' : '');
