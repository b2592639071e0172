// How the table of rows is drawn: heads with units, cells with what stood there before, and beside each row what is to be said of it.
import { html, render, nothing } from '/pages/lit-html.js';
import { repeat } from '/pages/directives/repeat.js';
import { keyLine, keyWords, shown, unitOf, columnOf, inWords, STATES } from '/pages/change/fields.js';
import { Draft } from '/pages/change/draft.js';

const KINDS = { add: 'new row', amend: 'amended', withdraw: 'withdrawn' };
const MARKS = { saved: 'good', waiting: 'caution', saving: 'caution', offered: 'caution', refused: 'blocking', conflict: 'blocking' };
export const LEVELS = { blocking: 'Blocks', caution: 'Caution', note: 'Note' };

export function drawGrid(grid) {
  const { lines, columns } = grid;
  render(lines.length === 0 ? html`<p>No row is edited yet. Find a row above, or add one.</p>` : html`
    <div class="scroll sheet" role="region" aria-label="Table of rows" tabindex="-1">
    <table role="grid" aria-label="Rows of the change" aria-multiselectable="true" aria-describedby="keys"
        @keydown=${(event) => grid.key(event)} @copy=${(event) => grid.copy(event)} @paste=${(event) => grid.paste(event)}>
      <thead><tr><th scope="col">Row</th>${columns.map((column) => head(column, grid.site))}</tr></thead>
      <tbody>${repeat(lines, (line) => line.key, (line) => bodyOf(line, grid))}</tbody>
    </table></div>
    ${columns.map(({ name }) => choices(name, grid))}`, grid.place);
}

const head = ({ name, label }, site) => html`<th scope="col" class=${columnOf(name).number ? 'number' : ''}>${label}
  ${unitOf(name, site) ? html`<span class="small">${unitOf(name, site)}</span>` : nothing}</th>`;

function choices(name, grid) {
  const list = grid.choices(name);
  return list.length ? html`<datalist id="choices-${name}">${list.map((one) => html`<option value=${shown(name, one, grid.unit)}></option>`)}</datalist>` : nothing;
}

function bodyOf(line, grid) {
  const said = grid.findings.get(line.key) ?? [];
  const beside = besideOf(line, said, grid);
  const state = line.state;
  return html`
    <tr class=${`${line.withdrawn || line.op === 'withdraw' ? 'withdrawn ' : ''}${state}`} aria-current=${grid.active?.key === line.key
      ? 'true' : nothing}>
      <th scope="row">${header(line, grid.site)}</th>
      ${grid.columns.map((column) => cell(line, column, said, grid, beside !== nothing))}
    </tr>
    ${beside === nothing ? nothing : html`
    <tr class="beside"><td colspan=${grid.columns.length + 1} id=${`beside-${idOf(line.key)}`}>
      <div class="stay">${beside}</div></td></tr>`}`;
}

export const idOf = (key) => key.replace(/[^A-Za-z0-9]/g, '-');

function header(line, site) {
  const words = keyWords(line.key, site);
  const kind = line.op === 'withdraw' ? 'withdraw' : line.op === 'undo' ? null : line.kind ?? (line.isNew ? 'add' : line.op ? 'amend'
    : null);
  return html`${words.part} ${words.projection}<br>
    <span class="small">${words.group}, ${words.support}, ${words.band}</span><br>
    ${kind ? html`<span class="mark">${KINDS[kind]}</span>` : nothing}
    ${line.state === 'untouched' ? nothing : html`<span class="mark ${MARKS[line.state]}">${STATES[line.state]}</span>`}`;
}

function cell(line, { name, number, wide }, said, grid, described) {
  const { active, editing } = grid;
  const isActive = active?.key === line.key && active.name === name;
  const isEdited = editing?.key === line.key && editing.name === name;
  const value = Draft.value(line, name);
  const before = line.base?.[name];
  const changed = line.base && before !== value;
  const worst = ['blocking', 'caution', 'note'].find((level) => said.some((one) => one.field === name && one.level === level));
  const bad = line.errors[name] || line.theirs[name] !== undefined;
  const classes = [number ? 'number' : '', wide ? 'wide' : '', changed ? 'changed' : '', name in line.typed ? 'unsent' : '',
    bad ? 'bad' : worst ?? '', isSelected(grid, line.key, name) ? 'selected' : ''].filter(Boolean).join(' ');
  return html`<td class=${classes} tabindex=${isActive ? '0' : '-1'} data-name=${name}
      aria-selected=${isSelected(grid, line.key, name) ? 'true' : 'false'} aria-invalid=${bad || worst === 'blocking' ? 'true' : 'false'}
      aria-describedby=${described ? `beside-${idOf(line.key)}` : nothing}
      @mousedown=${(event) => { if (!isEdited) event.preventDefault(); grid.pointed(event, line.key, name); }}
      @click=${(event) => { if (event.pointerType === 'touch' && !isEdited) grid.pointedTwice(line.key, name); }}
      @dblclick=${() => grid.pointedTwice(line.key, name)}>
    ${isEdited ? field(line, name, grid) : html`<span>${shown(name, value, grid.unit)}</span>
      ${changed ? html`<span class="was"><span class="unseen">was</span> ${before === '' ? 'empty' : html`<s>${shown(name, before,
        grid.unit)}</s>`}</span>`
        : nothing}`}
  </td>`;
}

const field = (line, name, grid) => html`<input .value=${grid.editing.text} autocomplete="off" spellcheck="false"
  aria-label=${`${columnOf(name).label} ${unitOf(name, grid.site)}, ${keyLine(line.key, grid.site)}`}
  list=${grid.choices(name).length ? `choices-${name}` : nothing}
  inputmode=${columnOf(name).number ? 'decimal' : nothing}
  @input=${(event) => grid.typing(event.target.value)} @blur=${() => grid.left()}>`;

function isSelected(grid, key, name) {
  if (!grid.active) return false;
  if (!grid.anchor) return grid.active.key === key && grid.active.name === name;
  const { top, bottom, left, right } = grid.selection();
  const { row, column } = grid.at({ key, name });
  return row >= top && row <= bottom && column >= left && column <= right;
}

/** What stands beside a row: why it was not taken, between what to choose, findings. */
function besideOf(line, said, grid) {
  const parts = [
    line.why ? html`<li class="tell blocking"><strong>Not taken.</strong>${line.why}</li>` : nothing,
    ...Object.entries(line.errors).map(([name, why]) => html`
      <li class="tell blocking"><strong>${columnOf(name).label} not taken.</strong>${why}</li>`),
    line.gone ? gone(line, grid) : nothing,
    ...Object.keys(line.theirs).map((name) => choice(line, name, grid)),
    ...said.map((finding) => html`<li class="tell ${finding.level}"><strong>${LEVELS[finding.level]}.</strong>
      ${columnOf(finding.field) ? html`${columnOf(finding.field).label}: ` : nothing}${inWords(finding.reason, grid.site)}</li>`),
  ].filter((part) => part !== nothing);
  return parts.length === 0 ? nothing : html`<ul>${parts}</ul>`;
}

const choice = (line, name, grid) => html`<li class="tell blocking"><strong>Written in between.</strong>
  ${columnOf(name).label}: you typed “${shown(name, line.typed[name], grid.unit)}”, by now there stands
  “${shown(name, line.theirs[name], grid.unit)}”.
  <button type="button" @click=${() => grid.draft.choose(line.key, name, true)}>Take mine, ${shown(name, line.typed[name],
    grid.unit)}</button>
  <button type="button" @click=${() => grid.draft.choose(line.key, name, false)}>Leave ${shown(name, line.theirs[name],
    grid.unit) || 'it empty'}</button></li>`;

const gone = (line, grid) => html`<li class="tell blocking"><strong>Written in between.</strong>
  The row was taken out of the change in another window while you typed in it.
  <button type="button" @click=${() => grid.draft.chooseRow(line.key, true)}>Bring it back with what I typed</button>
  <button type="button" @click=${() => grid.draft.chooseRow(line.key, false)}>Leave it out</button></li>`;
