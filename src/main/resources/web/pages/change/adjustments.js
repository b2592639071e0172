// Named adjustments in a table of their own: all of them are always sent together.
import { html, nothing } from '/pages/lit-html.js';
import { STATES } from '/pages/change/fields.js';

const NAMES = ['name', 'label', 'addKV', 'timesMAs', 'notes'];
const LABELS = { name: 'Name', label: 'Label', addKV: 'Adds kV', timesMAs: 'Multiplies mAs', notes: 'Notes' };
const WRITTEN = { addKv: 'addKV', timesMas: 'timesMAs' };
const MARKS = { saved: 'good', refused: 'blocking', conflict: 'blocking' };

const effect = (one) => (one.addKV !== null ? `adds ${one.addKV} kV` : `multiplies mAs by ${one.timesMAs}`);

/** For those who only read: a table. */
export const readAdjustments = (list) =>
  html`<table><thead><tr><th scope="col">Name</th><th scope="col">Label</th><th scope="col">Effect</th>
  <th scope="col">Notes</th></tr></thead><tbody>${list.map((one) => html`<tr><th scope="row">${one.name}</th><td>${one.label}</td>
  <td>${effect(one)}</td><td>${one.notes}</td></tr>`)}</tbody></table>`;

/** For the author: fields. */
export function editAdjustments(draft, findings) {
  const line = draft.adjustments;
  const list = line.list ?? (line.op === 'undo-adjustments' ? draft.baseAdjustments : draft.serverAdjustments());
  const write = (index, name, text, entered) => {
    const trimmed = text.trim();
    const next = list.map((one, at) => (at === index ? { ...one, [name]: trimmed === '' && effectOf(name) ? null : trimmed } : one));
    if (entered) draft.typeAdjustments(next);
    else draft.keepAdjustments(next);
  };
  return html`
    <p>${line.state === 'untouched' ? 'As in the chart.' : html`<span class="mark
      ${MARKS[line.state] ?? 'caution'}">${STATES[line.state]}</span>`}
      Each adds kV or multiplies mAs, never both.</p>
    ${line.why ? html`<p class="tell blocking"><strong>Not taken.</strong>${line.why}</p>` : nothing}
    ${line.theirs ? html`<p class="tell blocking"><strong>Written in between.</strong> The adjustments were written in another window.
      <button type="button" @click=${() => draft.chooseAdjustments(true)}>Take mine</button>
      <button type="button" @click=${() => draft.chooseAdjustments(false)}>Leave those</button></p>` : nothing}
    ${findings.map((one) => html`<p class="tell ${one.level}"><strong>${one.row}</strong>${one.reason}</p>`)}
    <div class="scroll"><table class="adjustments">
      <thead><tr>${NAMES.map((name) => html`<th scope="col">${LABELS[name]}</th>`)}<th scope="col">Take out</th></tr></thead>
      <tbody>${list.map((one, index) => html`<tr>
        ${NAMES.map((name) => html`<td>${field(one, index, name, line, write)}</td>`)}
        <td><button type="button" @click=${() => draft.typeAdjustments(list.filter((_, at) => at !== index))}
          aria-label=${`Take out ${one.name || 'the new adjustment'}`}>Take out</button></td></tr>`)}</tbody>
    </table></div>
    <p class="row"><button type="button" @click=${() => draft.typeAdjustments([...list, { name: '', label: '', addKV: null,
      timesMAs: null, notes: '' }])}>
        Add an adjustment</button>
      <button type="button" ?disabled=${!draft.change.adjustments && !line.op} @click=${() => draft.typeAdjustments(null)}>
        Undo: as in the chart</button></p>`;
}

const effectOf = (name) => name === 'addKV' || name === 'timesMAs';

function field(one, index, name, line, write) {
  const errors = line.errors.filter((error) => isAt(error.pointer, index, name));
  const id = `adjustment-${index}-${name}`;
  return html`<input .value=${String(one[name] ?? '')} aria-label=${`${LABELS[name]}, ${one.name || `adjustment ${index + 1}`}`}
      aria-invalid=${errors.length ? 'true' : 'false'} aria-describedby=${errors.length ? id : nothing}
      inputmode=${effectOf(name) ? 'decimal' : nothing} size=${effectOf(name) ? 6 : name === 'name' ? 16 : 28}
      @input=${(event) => write(index, name, event.target.value, false)}
      @change=${(event) => write(index, name, event.target.value, true)}>
    ${errors.map((error) => html`<p id=${id} class="wrong">${error.detail}</p>`)}`;
}

/** Whether a pointer such as /adjustments/2/addKv names this field; one at the row as a whole stands at its name. */
function isAt(pointer = '', index, name) {
  const [, , at, member] = pointer.split('/');
  return Number(at) === index && at !== undefined && (WRITTEN[member] ?? member ?? 'name') === name;
}
