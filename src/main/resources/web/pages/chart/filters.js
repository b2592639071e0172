// Which rows of a version are shown, in which order and with which columns.
import { html, nothing } from '/pages/lit-html.js';
import { spoken } from '/pages/words.js';
import { regions, regionOf, examinationWords, group, unit } from '/pages/chart/terms.js';
import { columns } from '/pages/chart/columns.js';

const SHOWN = 'wallchart.chart.columns';
const collator = new Intl.Collator('en', { numeric: true });

export const EXAMINATION = { name: 'examination', head: 'Examination', text: (row) => examinationWords(row.key) };

/** How somebody looks at the table; `more` are the columns that are not always shown. */
export const newLook = () => ({
  sort: null, down: false, text: '', region: '', group: '', support: '', found: false, byRegion: true, open: new Set(),
  more: new Set((localStorage.getItem(SHOWN) ?? '').split(',').filter(Boolean)),
});

/** What a row is searched by: what stands in the columns that are shown, and its key. */
const wordsOf = (row, shown) => [examinationWords(row.key), row.key, ...shown.map((column) => column.text(row))].join(' ').toLowerCase();

const holds = (words, asked) => asked.every((word) => words.includes(word));

/** The columns that are always shown, and those chosen. */
export const shownColumns = (look) => columns().filter((column) => column.main || look.more.has(column.name));

/** The rows that the filters leave. */
export function chosen(rows, look, findings) {
  const asked = look.text.toLowerCase().split(/\s+/).filter(Boolean);
  const shown = shownColumns(look);
  return rows.filter((row) => (look.region === '' || regionOf(row.bodyPart) === look.region)
    && (look.group === '' || row.patientGroup === look.group)
    && (look.support === '' || row.support === look.support)
    && (!look.found || findings.byRow.has(row.key))
    && holds(wordsOf(row, shown), asked));
}

/** The same in the order asked for; without one, that of the chart. */
export function sorted(rows, look) {
  if (look.sort === null) return rows;
  const column = [EXAMINATION, ...columns()].find(({ name }) => name === look.sort);
  const by = column.sort ?? column.text;
  const order = (one, other) => (typeof one === 'number' ? one - other || 0 : collator.compare(one, other));
  const inOrder = [...rows].sort((one, other) => order(by(one), by(other)));
  return look.down ? inOrder.reverse() : inOrder;
}

const option = (value, label, now) => html`<option value=${value} .selected=${value === now}>${label}</option>`;

const choice = (label, id, now, options, chosen) => html`
  <label class="field">${label}<select id="filter-${id}" @change=${(event) => chosen(event.target.value)}>
    ${option('', 'all', now)}${options.map(([value, words]) => option(value, words, now))}</select></label>`;

const tick = (label, now, turned) => html`
  <label class="tick"><input type="checkbox" .checked=${now} @change=${(event) => turned(event.target.checked)}> ${label}</label>`;

/** The form above the table; `set` changes the look. */
export function filters(rows, look, set) {
  const groups = [...new Set(rows.map((row) => row.patientGroup))].map((one) => [one, group(one)]);
  const supports = [...new Set(rows.map((row) => row.support))].map((one) => [one, spoken(one)]);
  const places = regions().map(({ region, label }) => [region, label]);
  const isFiltered = look.text || look.region || look.group || look.support || look.found;
  return html`
    <form class="row filters" role="search" aria-label="Rows" @submit=${(event) => event.preventDefault()}>
      <label class="field">Words in a row
        <input type="search" id="words" .value=${look.text} @input=${(event) => set({ text: event.target.value })}></label>
      ${choice('Body region', 'region', look.region, places, (region) => set({ region }))}
      ${choice('Patients', 'patients', look.group, groups, (one) => set({ group: one }))}
      ${choice('Support', 'support', look.support, supports, (support) => set({ support }))}
      ${tick('Only with findings', look.found, (found) => set({ found }))}
      ${tick('Under their region', look.byRegion, (byRegion) => set({ byRegion }))}
      <button type="button" ?disabled=${!isFiltered} @click=${() => set({ text: '', region: '', group: '', support: '', found: false })}
        >Clear the filters</button>
    </form>`;
}

/** The columns that are shown by choice; the choice is kept at this screen. */
export function columnChoice(look, changed) {
  const turn = (name, wanted) => {
    if (wanted) look.more.add(name);
    else look.more.delete(name);
    localStorage.setItem(SHOWN, [...look.more].join(','));
    changed();
  };
  const shown = columns().filter((column) => look.more.has(column.name)).length;
  return html`<details class="choice"><summary>More columns${shown > 0 ? ` (${shown} shown)` : nothing}</summary>
    <fieldset><legend class="unseen">More columns</legend><div class="row">
      ${columns().filter((column) => !column.main).map(({ name, head }) =>
    tick(head.replace(`, ${unit()}`, ''), look.more.has(name), (wanted) => turn(name, wanted)))}
    </div></fieldset></details>`;
}
