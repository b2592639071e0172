// The rows of one version that a change of equipment moves, for whoever decides whether the chart follows.
import { html, nothing } from '/pages/lit-html.js';
import { moment } from '/pages/words.js';

const signed = (number, unit) => (number === null ? 'not predicted' : `${number > 0 ? '+' : ''}${number} ${unit}`);

/** `chart` as the effects of a revision have it; the rows to look at come first, at most so many. */
export function movedTable(chart, most) {
  const rows = [...chart.moved].sort((one, other) => other.affected - one.affected);
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label="Rows of version ${chart.version}"><table>
      <caption>Version ${chart.version}, in force from ${moment(chart.inForceFrom)}:
        ${chart.affectedRows} of ${chart.rows} rows to look at</caption>
      ${rows.length === 0 ? nothing : html`
        <thead><tr><th scope="col">Row</th><th scope="col" class="number">Output</th><th scope="col" class="number">At the receptor</th>
          <th scope="col" class="number">At the skin</th><th scope="col">Remarks</th></tr></thead>`}
      <tbody>${rows.slice(0, most).map(line)}</tbody>
    </table></div>
    ${rows.length > most ? html`<p class="small">The first ${most} of ${rows.length}, those to look at first.</p>` : nothing}`;
}

const line = (row) => html`
  <tr>
    <th scope="row">${row.row}${row.affected ? html` <span class="mark caution">look at it</span>` : nothing}${row.usable ? nothing
      : html` <span class="mark blocking">cannot be set any more</span>`}</th>
    <td class="number">${signed(row.outputChangePercent, '%')}</td>
    <td class="number">${signed(row.predictedShiftDb, 'dB')}</td>
    <td class="number">${signed(row.kermaChangePercent, '%')}</td>
    <td>${row.remarks.join('; ')}</td>
  </tr>`;
