// What is due in all rooms: outputs to be measured, charts to be reviewed; what is late comes first.
import { html } from '/pages/lit-html.js';
import { day } from '/pages/words.js';

function dates(rooms) {
  const outputs = rooms.map((line) => ({
    line, what: 'Measure the output of the tube', due: line.outputDue,
      late: line.outputOverdue, address: `/equipment/${line.room}#view=measure`,
    last: line.outputMeasuredOn ? `measured ${day(line.outputMeasuredOn)}` : 'never measured',
  }));
  const reviews = rooms.filter((line) => line.chart).map((line) => ({
    line, what: 'Review the chart', due: line.chart.reviewDue, late: line.reviewOverdue, address: `/charts/${line.room}`,
    last: `version ${line.chart.version} signed ${day(line.chart.signedAt)}`,
  }));
  return [...outputs, ...reviews].sort((one, other) => (one.due ?? '').localeCompare(other.due ?? ''));
}

export const duePanel = (rooms) => html`
  <section aria-labelledby="due-heading">
    <h2 id="due-heading">Dates due, all rooms</h2>
    <p>Reminders: nothing is blocked by a day that has passed. The site sets how often a tube is measured and a chart reviewed.</p>
    <div class="scroll"><table>
      <thead><tr><th scope="col">Due</th><th scope="col">What</th><th scope="col">Room</th><th scope="col">Last</th></tr></thead>
      <tbody>${dates(rooms).map((one) => html`<tr>
        <td>${one.due ? day(one.due) : 'now'} ${one.late ? html`<span class="mark caution">${one.due ? 'overdue' : 'never done'}</span>`
          : ''}</td>
        <td><a href=${one.address}>${one.what}<span class="unseen">, ${one.line.name}</span></a></td><td>${one.line.name}</td>
          <td>${one.last}</td></tr>`)}</tbody>
    </table></div>
  </section>`;
