// Sheets for the walls: those to take down, printing, and the register of all that were printed.
import { html, render, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, site, askForSignIn, trouble } from '/pages/shell.js';
import { moment } from '/pages/words.js';
import { stateClass, stateWord } from '/pages/sheet/states.js';

const place = document.getElementById('sheets');
const page = { rooms: [], register: { toTakeDown: [], sheets: [] }, room: '', paper: 'a4', region: '', group: '', said: '', failed: null, busy: '' };

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
    ${toTakeDown()} ${printing()} ${printed()}`, place);
}

const toTakeDown = () => html`
  <section aria-labelledby="hanging">
    <h2 id="hanging" tabindex="-1">To take from the walls</h2>
    ${page.register.toTakeDown.length === 0
      ? html`<p class="tell good"><strong>None.</strong>Every sheet of an earlier version is noted as taken down.</p>`
      : html`<p class="tell blocking"><strong>${page.register.toTakeDown.length === 1 ? 'One sheet' : `${page.register.toTakeDown.length} sheets`} to look for.</strong>
          Another version of the chart is in force. Take each down where it hangs, then note it here.</p>
        ${table('Superseded sheets', page.register.toTakeDown)}`}
  </section>`;

const choice = (name, label, value, options) => html`
  <label class="field">${label}<select name=${name} .value=${value} @change=${(event) => { page[name] = event.target.value; draw(); }}>
    ${options.map(([slug, words]) => html`<option value=${slug} ?selected=${slug === value}>${words}</option>`)}
  </select></label>`;

const printing = () => html`
  <section aria-labelledby="print" class="panel">
    <h2 id="print">Print</h2>
    <p>The chart in force as PDF, lying, in the site's unit of length. Each sheet has a number of its own, is entered below, and carries a
    code that says whether it is still current.</p>
    <div class="row choices">
      ${choice('paper', 'Paper', page.paper, [['a4', 'A4'], ['letter', 'Letter']])}
      ${choice('region', 'Region of the body', page.region, [['', 'all'], ...(site()?.regions ?? []).map((one) => [one.region, one.label])])}
      ${choice('group', 'Patient group', page.group, [['', 'all'], ...(site()?.patientGroups ?? []).map((one) => [one.id, one.label])])}
    </div>
    <div class="row">
      ${page.rooms.map(({ room, name, chart }) => html`<button type="button" class="first" ?disabled=${!chart || page.busy !== ''} @click=${() => print(room)}>
        ${page.busy === room ? 'Making the sheet of' : 'Print'} ${room}, ${name}${chart ? nothing : ' (no chart in force)'}</button>`)}
    </div>
  </section>`;

async function print(room) {
  page.busy = room;
  page.said = '';
  draw();
  try {
    const sheet = await fetchSheet(room);
    save(sheet);
    page.said = `The sheet of room ${room} is made: open ${sheet.name} and print it at its full size.`;
    await load();
  } catch (failed) {
    page.failed = failed;
  }
  page.busy = '';
  draw();
}

async function fetchSheet(room) {
  const wanted = new URLSearchParams({ paper: page.paper });
  if (page.region) wanted.set('region', page.region);
  if (page.group) wanted.set('patientGroup', page.group);
  let answer = await ask(room, wanted);
  if (answer.status === 401) {
    await askForSignIn();
    answer = await ask(room, wanted);
  }
  if (!answer.ok) throw new api.Problem(answer.status, await answer.json());
  const name = /filename="([^"]+)"/.exec(answer.headers.get('Content-Disposition') ?? '')?.[1] ?? 'sheet.pdf';
  return { name, file: await answer.blob() };
}

/** A printed sheet is entered under a name. */
async function ask(room, wanted) {
  api.requireOwner();
  try {
    return await fetch(`/api/v1/rooms/${room}/sheet.pdf?${wanted}`, { cache: 'no-store' });
  } catch (failed) {
    throw new api.Unreachable(failed);
  }
}

function save({ name, file }) {
  const address = URL.createObjectURL(file);
  const link = Object.assign(document.createElement('a'), { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const printed = () => html`
  <section aria-labelledby="register">
    <h2 id="register">Printed sheets</h2>
    <label class="field">Room<select .value=${page.room} @change=${(event) => { page.room = event.target.value; load(); }}>
      <option value="">all</option>${page.rooms.map(({ room, name }) => html`<option value=${room}>${room}, ${name}</option>`)}
    </select></label>
    ${page.register.sheets.length === 0 ? html`<p>No sheet was printed yet.</p>` : table('Newest first', page.register.sheets)}
  </section>`;

const table = (caption, sheets) => html`
  <div class="scroll" tabindex="0" role="region" aria-label=${caption}><table class="register">
    <caption>${caption}</caption>
    <thead><tr>${['Sheet', 'Room', 'Version', 'How it stands', 'What is on it', 'Printed', 'Taken down']
      .map((head) => html`<th scope="col">${head}</th>`)}</tr></thead>
    <tbody>${sheets.map(line)}</tbody>
  </table></div>`;

const line = (sheet) => html`
  <tr>
    <th scope="row"><a href="/sheets/${sheet.sheet}"><code>${sheet.sheet}</code></a></th>
    <td>${sheet.room}</td>
    <td class="number">${sheet.version}</td>
    <td><span class="mark ${stateClass(sheet.state)}">${stateWord(sheet.state)}</span>
      ${sheet.since ? html`<br><span class="small">since ${moment(sheet.since)}</span>` : nothing}</td>
    <td class="wrap">${part(sheet)}, ${sheet.paper === 'a4' ? 'A4' : 'Letter'}</td>
    <td class="wrap">${moment(sheet.printedAt)}<br><span class="small">by ${sheet.printedBy}</span></td>
    <td>${sheet.takenDownAt
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
    const seen = await api.get(`/sheets/${sheet}`);
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
load();
