// The table of a version's rows by body region: sorted, filtered, each row opens with all its fields.
import { html, nothing } from '/pages/lit-html.js';
import { repeat } from '/pages/directives/repeat.js';
import { columns, regions, regionOf, examinationWords, group, unit } from '/pages/chart/terms.js';
import { spoken } from '/pages/words.js';
import { toExamination, examinationOf } from '/pages/chart/address.js';
import { rowMark } from '/pages/chart/findings.js';
import { rowDetail } from '/pages/chart/row.js';

const SHOWN = 'wallchart.chart.columns';
const EXAMINATION = { name: 'examination', head: 'Examination', text: (row) => examinationWords(row.key) };
const collator = new Intl.Collator('en', { numeric: true });

/** How somebody looks at the table; `more` are the columns that are not always shown. */
export const newLook = () => ({
  sort: null, down: false, text: '', region: '', group: '', support: '', found: false, byRegion: true, open: new Set(),
  more: new Set((localStorage.getItem(SHOWN) ?? '').split(',').filter(Boolean)),
});

/** What a row is searched by: the words on the screen and the terms behind them. */
const searched = new WeakMap();
function words(row) {
  if (!searched.has(row)) {
    const all = columns().map((column) => column.text(row));
    searched.set(row, `${examinationWords(row.key)} ${row.key} ${all.join(' ')}`.toLowerCase());
  }
  return searched.get(row);
}

function chosen(rows, look, findings) {
  const asked = look.text.toLowerCase().split(/\s+/).filter(Boolean);
  return rows.filter((row) => (look.region === '' || regionOf(row.bodyPart) === look.region)
    && (look.group === '' || row.patientGroup === look.group)
    && (look.support === '' || row.support === look.support)
    && (!look.found || findings.byRow.has(row.key))
    && asked.every((word) => words(row).includes(word)));
}

function sorted(rows, look) {
  if (look.sort === null) return rows;
  const column = [EXAMINATION, ...columns()].find(({ name }) => name === look.sort);
  const by = column.sort ?? column.text;
  const order = (one, other) => (typeof one === 'number' ? one - other : collator.compare(one, other));
  const inOrder = [...rows].sort((one, other) => order(by(one), by(other)));
  return look.down ? inOrder.reverse() : inOrder;
}

/** The part of the page with the table; `changed` draws anew. */
export function rowsPart({ content, version, look, findings, physics, changed }) {
  const shown = chosen(content.rows, look, findings);
  const cells = columns().filter((column) => column.main || look.more.has(column.name));
  const set = (more) => {
    Object.assign(look, more);
    changed();
  };
  const groups = look.byRegion
    ? regions().map((region) => [region.label, shown.filter((row) => regionOf(row.bodyPart) === region.region)])
    : [['', shown]];
  return html`
    <h2 id="part" tabindex="-1">Rows</h2>
    ${filters(content.rows, look, set)}
    ${columnChoice(look, changed)}
    <p id="how-many" role="status">${shown.length === content.rows.length ? `All ${shown.length} rows` : `${shown.length} of ${content.rows.length} rows`}</p>
    ${shown.length === 0 ? html`<p>No row is like that: clear a filter above.</p>` : html`
    <div class="scroll rows" role="region" aria-label="Rows of version ${version}" tabindex="0">
      <table>
        <thead><tr>
          ${[EXAMINATION, ...cells].map((column) => heading(column, look, set))}
          <th scope="col">Findings</th><th scope="col">Curves</th>
        </tr></thead>
        ${groups.filter(([, rows]) => rows.length > 0).map(([label, rows]) => html`
          <tbody>
            ${label === '' ? nothing : html`<tr class="region"><th scope="rowgroup" colspan=${cells.length + 3}>${label}</th></tr>`}
            ${lines(sorted(rows, look), { cells, version, look, findings, physics, changed })}
          </tbody>`)}
      </table>
    </div>`}`;
}

const heading = ({ name, head, number }, look, set) => {
  const on = look.sort === name;
  return html`<th scope="col" class=${number ? 'number' : ''} aria-sort=${on ? (look.down ? 'descending' : 'ascending') : nothing}>
    <button type="button" @click=${() => set(on && look.down ? { sort: null, down: false } : { sort: name, down: on })}
      >${head}<span aria-hidden="true">${on ? (look.down ? ' ▾' : ' ▴') : ''}</span></button></th>`;
};

function lines(rows, context) {
  let before = null;
  return repeat(rows, (row) => row.key, (row) => {
    const same = before !== null && examinationOf(before.key) === examinationOf(row.key);
    before = row;
    return line(row, same, context);
  });
}

function line(row, same, { cells, version, look, findings, physics, changed }) {
  const open = look.open.has(row.key);
  const turn = () => {
    if (!look.open.delete(row.key)) look.open.add(row.key);
    changed();
  };
  return html`
    <tr data-row=${row.key} class=${same ? 'again' : ''}>
      <th scope="row"><button type="button" class="opener" aria-expanded=${open} @click=${turn}
        ><span aria-hidden="true">${open ? '▾' : '▸'}</span> ${examinationWords(row.key)}</button></th>
      ${cells.map((column) => html`<td class=${column.number ? 'number' : ''}>${column.text(row)}</td>`)}
      <td>${rowMark(findings.byRow.get(row.key))}</td>
      <td><a href=${toExamination(version, examinationOf(row.key))} aria-label="Curves of ${examinationWords(row.key)}, ${group(row.patientGroup)}, ${spoken(row.support)}">Curves</a></td>
    </tr>
    ${open ? html`<tr class="detail"><td colspan=${cells.length + 3}>${rowDetail(row, version, findings, physics)}</td></tr>` : nothing}`;
}

const option = (value, label, now) => html`<option value=${value} ?selected=${value === now}>${label}</option>`;

function filters(rows, look, set) {
  const groups = [...new Set(rows.map((row) => row.patientGroup))];
  const supports = [...new Set(rows.map((row) => row.support))];
  return html`
    <form class="row filters" role="search" aria-label="Rows" @submit=${(event) => event.preventDefault()}>
      <label class="field">Words in a row<input type="search" id="words" .value=${look.text} @input=${(event) => set({ text: event.target.value })}></label>
      <label class="field">Body region<select @change=${(event) => set({ region: event.target.value })}>
        ${option('', 'all', look.region)}${regions().map(({ region, label }) => option(region, label, look.region))}</select></label>
      <label class="field">Patients<select @change=${(event) => set({ group: event.target.value })}>
        ${option('', 'all', look.group)}${groups.map((one) => option(one, group(one), look.group))}</select></label>
      <label class="field">Support<select @change=${(event) => set({ support: event.target.value })}>
        ${option('', 'all', look.support)}${supports.map((one) => option(one, spoken(one), look.support))}</select></label>
      <label class="tick"><input type="checkbox" .checked=${look.found} @change=${(event) => set({ found: event.target.checked })}> Only with findings</label>
      <label class="tick"><input type="checkbox" .checked=${look.byRegion} @change=${(event) => set({ byRegion: event.target.checked })}> Under their region</label>
      <button type="button" @click=${() => set({ text: '', region: '', group: '', support: '', found: false })}>Clear the filters</button>
    </form>`;
}

function columnChoice(look, changed) {
  const turn = (name, wanted) => {
    if (wanted) look.more.add(name);
    else look.more.delete(name);
    localStorage.setItem(SHOWN, [...look.more].join(','));
    changed();
  };
  return html`<details class="choice"><summary>More columns${look.more.size > 0 ? ` (${look.more.size} shown)` : ''}</summary>
    <fieldset><legend class="unseen">More columns</legend><div class="row">
      ${columns().filter((column) => !column.main).map(({ name, head }) => html`
        <label class="tick"><input type="checkbox" .checked=${look.more.has(name)} @change=${(event) => turn(name, event.target.checked)}> ${head.replace(`, ${unit()}`, '')}</label>`)}
    </div></fieldset></details>`;
}
