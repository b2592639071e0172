// The start page: the rooms, and the way to each room's pages.
import { html, nothing, render } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, whenPersonChanges, trouble } from '/pages/shell.js';
import { day } from '/pages/words.js';

const LATE = html`<span class="mark caution">overdue</span>`;
const place = document.getElementById('rooms');

async function show() {
  try {
    const { rooms } = (await api.get('/rooms')).data;
    render(table(rooms), place);
  } catch (failed) {
    render(trouble(failed), place);
  }
}

const table = (rooms) => html`
  <div class="scroll"><table>
    <caption>Rooms</caption>
    <thead><tr><th scope="col">Room</th><th scope="col">Chart in force</th><th scope="col">Signed by</th><th scope="col">Review due</th>
      <th scope="col">Output due</th><th scope="col">Go to</th></tr></thead>
    <tbody>${rooms.map(line)}</tbody>
  </table></div>`;

const line = ({ room, name, chart, reviewOverdue, outputDue, outputOverdue }) => html`
  <tr>
    <th scope="row">${name} <span class="small">${room}</span></th>
    <td>${chart ? html`version ${chart.version} since ${day(chart.inForceFrom)}` : 'none'}</td>
    <td>${chart?.signedBy}</td>
    <td>${day(chart?.reviewDue)} ${reviewOverdue ? LATE : nothing}</td>
    <td>${outputDue ? day(outputDue) : 'never measured'} ${outputDue && outputOverdue ? LATE : nothing}</td>
    <td class="row">
      <a href="/rooms/${room}">Room page</a>
      <a href="/charts/${room}">Chart</a>
      <a href="/equipment/${room}">Equipment</a>
      <a href="/sheets">Sheets</a>
    </td>
  </tr>`;

whenPersonChanges(show);
start({ signIn: false });
