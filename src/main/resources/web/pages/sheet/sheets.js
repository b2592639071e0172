// Sheets for the walls: those to take down, printing, and the register of all that were printed.
import { html, render, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, site, trouble } from '/pages/shell.js';
import { moment } from '/pages/words.js';
import { begin, printing } from '/pages/sheet/printing.js';
import { stateClass, stateWord } from '/pages/sheet/states.js';

const place = document.getElementById('sheets');
const page = { rooms: [], register: { toTakeDown: [], moreToTakeDown: 0, sheets: [], moreSheets: 0 }, room: '', said: '', failed: null };

async function load() {
  try {
    page.rooms = (await api.get('/rooms')).data.rooms;
    page.register = (await api.get(`/sheets${page.room ? `?room=${page.room}` : ''}`)).data;
    page.failed = null;
  } catch (failed) {
    page.failed = failed;
  }
  draw();
}

function draw() {
  render(html`
    <div role="status">${page.said ? html`<p class="tell"><strong>Done.</strong>${page.said}</p>` : nothing}</div>
    <div role="alert">${page.failed ? trouble(page.failed) : nothing}</div>
    ${toTakeDown()} ${printing(page.rooms, draw, printed)} ${register()}`, place);
}

const toTakeDown = () => html`
  <section aria-labelledby="hanging">
    <h2 id="hanging" tabindex="-1">To take from the walls</h2>
    ${page.register.toTakeDown.length === 0
      ? html`<p class="tell good"><strong>None.</strong>Every sheet of an earlier version is noted as taken down.</p>`
      : html`<p class="tell blocking"><strong>${page.register.toTakeDown.length + page.register.moreToTakeDown === 1 ? 'One sheet' : `${page.register.toTakeDown.length + page.register.moreToTakeDown} sheets`} to look for.</strong>
          Another version of the chart is in force. Take each down where it hangs, then note it here.
          ${page.register.moreToTakeDown ? `The first ${page.register.toTakeDown.length} stand below; the other ${page.register.moreToTakeDown} move up as these are noted.` : nothing}</p>
        ${table('Superseded sheets', page.register.toTakeDown)}`}
  </section>`;

/** After a sheet was made, or failed to be. */
async function printed(said, failed) {
  page.said = said;
  if (said) await load();
  if (failed) page.failed = failed;
  draw();
}

const register = () => html`
  <section aria-labelledby="register">
    <h2 id="register">Printed sheets</h2>
    <label class="field">Room<select .value=${page.room} @change=${(event) => { page.room = event.target.value; load(); }}>
      <option value="">all</option>${page.rooms.map(({ room, name }) => html`<option value=${room}>${room}, ${name}</option>`)}
    </select></label>
    ${page.register.sheets.length === 0 ? html`<p>No sheet was printed yet.</p>` : table('Newest first', page.register.sheets)}
    ${page.register.moreSheets ? html`<p>${page.register.moreSheets} older ${page.register.moreSheets === 1 ? 'sheet is' : 'sheets are'} not listed here:
      choose a room, or look for <code>sheet-printed</code> on the page of the <a href="/audit">ledger</a>.</p>` : nothing}
  </section>`;

const table = (caption, sheets) => html`
  <div class="scroll" tabindex="0" role="region" aria-label=${caption}><table class="register">
    <caption>${caption}</caption>
    <thead><tr>${['Sheet', 'How it stands', 'What is on it', 'Printed', 'Taken down']
      .map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
    <tbody>${sheets.map(line)}</tbody>
  </table></div>`;

const line = (sheet) => html`
  <tr>
    <th scope="row"><a href="/sheets/${sheet.sheet}"><code>${sheet.sheet}</code></a></th>
    <td class="wrap"><span class="mark ${stateClass(sheet.state)}">${stateWord(sheet.state)}</span>
      ${sheet.since ? html`<br><span class="small">since ${moment(sheet.since)}</span>` : nothing}</td>
    <td class="wrap">Room ${sheet.room}, version ${sheet.version}: ${part(sheet)}, ${sheet.paper === 'a4' ? 'A4' : 'Letter'}</td>
    <td class="wrap">${moment(sheet.printedAt)}<br><span class="small">by ${sheet.printedBy}</span></td>
    <td class="wrap">${sheet.takenDownAt
      ? html`${moment(sheet.takenDownAt)}<br><span class="small">by ${sheet.takenDownBy}</span>`
      : html`<button type="button" @click=${() => takeDown(sheet.sheet)}>Taken down<span class="unseen"> sheet ${sheet.sheet}</span></button>`}</td>
  </tr>`;

function part({ region, patientGroup }) {
  const words = [
    site()?.regions.find((one) => one.region === region)?.label,
    site()?.patientGroups.find((one) => one.id === patientGroup)?.label,
  ].filter(Boolean);
  return words.join('; ') || 'whole chart';
}

/** Notes it, then goes on where the list of what is left stands. */
async function takeDown(sheet) {
  page.said = '';
  try {
    const requireSame = api.sameOwner();
    const seen = await api.get(`/sheets/${sheet}`);
    requireSame();
    if (!seen.data.takenDownAt) await api.post(`/sheets/${sheet}/taken-down`, undefined, { ifMatch: seen.etag });
    page.said = `Sheet ${sheet} is noted as taken down.`;
    await load();
  } catch (failed) {
    page.failed = failed;
    draw();
  }
  document.getElementById('hanging').focus();
}

await start();
await load();
begin(page.rooms, draw);
