// Two columns of numbers that somebody types, or pastes from a spreadsheet.
import { html, nothing } from '/pages/lit-html.js';

const NUMBER = /^\d+(\.\d+)?$/;
const THOUSANDS = /,\d{3}$/;

/** Plain digits; a comma before decimals is read as a point, but not where it may part thousands. Null where it is no number. */
export function number(text) {
  const written = String(text ?? '').trim();
  const plain = THOUSANDS.test(written) ? '' : written.replace(',', '.');
  return NUMBER.test(plain) ? Number(plain) : null;
}

/** Lines of a spreadsheet's clipboard as pairs; lines that are no two numbers are counted, not guessed at. */
function pasted(text) {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const pairs = lines.map((line) => line.split(/\t|;|\s+/).map((cell) => cell.trim()).filter(Boolean));
  const taken = pairs.filter((pair) => pair.length >= 2 && number(pair[0]) !== null && number(pair[1]) !== null);
  return { taken: taken.map(([first, second]) => [first, second]), left: lines.length - taken.length };
}

/**
 * An editor of `pairs` (lists of two texts), which it changes in place; calls `changed()` after each change.
 * `wrong(i)` gives what is wrong with one line, or nothing; `said` is an object on which the last paste is remembered.
 */
export function pairsEditor({ caption, heads, pairs, changed, wrong, said }) {
  const put = (i, column, event) => {
    pairs[i][column] = event.target.value;
    changed();
  };
  const paste = (event) => {
    const text = event.clipboardData.getData('text');
    if (!/[\t\n;]/.test(text.trim())) return;
    event.preventDefault();
    const { taken, left } = pasted(text);
    if (taken.length) pairs.splice(0, pairs.length, ...taken);
    said.pasted = `${taken.length} lines taken${left ? `, ${left} left out because they are no two numbers` : ''}`;
    changed();
  };
  const remove = (i) => {
    pairs.splice(i, 1);
    changed();
    document.querySelector('.pairs .add')?.focus();
  };
  const add = () => {
    pairs.push(['', '']);
    changed();
    [...document.querySelectorAll('.pairs tbody input')].at(-2)?.focus();
  };
  return html`
    <div class="pairs" @paste=${paste}>
      <table>
        <caption>${caption}</caption>
        <thead><tr>${heads.map((head) => html`<th scope="col">${head}</th>`)}
          <th scope="col"><span class="unseen">Remove</span></th></tr></thead>
        <tbody>${pairs.map((pair, i) => html`<tr>
          ${[0, 1].map((column) => html`<td><input inputmode="decimal" size="8" aria-label="${heads[column]}, line ${i + 1}"
            .value=${pair[column]}
            aria-invalid=${wrong(i) ? 'true' : 'false'} @input=${(event) => put(i, column, event)}></td>`)}
          <td><button type="button" aria-label="Remove line ${i + 1}" @click=${() => remove(i)}>Remove</button>
            ${wrong(i) ? html`<span class="wrong">${wrong(i)}</span>` : nothing}</td></tr>`)}</tbody>
      </table>
      <p><button type="button" class="add" @click=${add}>Add a line</button>
        <span class="small" role="status">${said.pasted ?? 'Or paste two columns from a spreadsheet into any of these fields.'}</span></p>
    </div>`;
}
