// What is to be printed, how many pages that will be, and the printing itself: one press of the button, one sheet in the register.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { site, askForSignIn } from '/pages/shell.js';

const LONG = 8; // pages; more than hang beside one console

/** What is chosen; `told` is how many pages that will be, or why none. */
const wanted = { room: '', whole: false, region: '', group: '', paper: 'a4', told: '', pages: 0, none: false, busy: false };
let asked = 0;

/** Begins with the first region and the first group: what hangs beside a console is short. */
export function begin(rooms, redraw) {
  const named = new URLSearchParams(location.hash.slice(1)).get('room');
  const ready = rooms.filter(({ chart }) => chart);
  wanted.room = (ready.find(({ room }) => room === named) ?? ready[0])?.room ?? '';
  wanted.region = site()?.regions[0]?.region ?? '';
  wanted.group = site()?.patientGroups[0]?.id ?? '';
  return count(redraw);
}

function address() {
  const query = new URLSearchParams({ paper: wanted.paper });
  if (!wanted.whole && wanted.region) query.set('region', wanted.region);
  if (!wanted.whole && wanted.group) query.set('patientGroup', wanted.group);
  return `/api/v1/rooms/${wanted.room}/sheet.pdf?${query}`;
}

const pageWords = (pages) => (pages === 1 ? '1 page' : `${pages} pages`);

/** Asks for the head alone: that prints nothing. */
async function count(redraw) {
  if (!wanted.room) return;
  const turn = (asked += 1);
  Object.assign(wanted, { told: 'Counting the pages …', pages: 0, none: false });
  redraw();
  let told;
  try {
    const answer = await fetch(address(), { method: 'HEAD', cache: 'no-store' });
    const pages = Number(answer.headers.get('Sheet-Pages'));
    told = answer.ok && pages ? { pages, told: '' }
      : answer.status === 400 ? { none: true, told: `The chart of room ${wanted.room} has no row there: choose another region or group.` }
        : { told: 'The pages could not be counted now.' };
  } catch {
    told = { told: 'The service does not answer, so the pages could not be counted.' };
  }
  if (turn !== asked) return;
  Object.assign(wanted, told);
  redraw();
}

const choice = (name, label, options, redraw) => html`
  <label class="field">${label}<select name=${name} .value=${wanted[name]} @change=${(event) => { wanted[name] = event.target.value; count(redraw); }}>
    ${options.map(([slug, words]) => html`<option value=${slug} ?selected=${slug === wanted[name]}>${words}</option>`)}
  </select></label>`;

const extent = (whole, words, redraw) => html`
  <label class="line"><input type="radio" name="extent" .checked=${wanted.whole === whole}
    @change=${() => { wanted.whole = whole; count(redraw); }}>${words}</label>`;

/** @param done what to do with a sheet that was made, or with what failed */
export const printing = (rooms, redraw, done) => html`
  <section aria-labelledby="print" class="panel">
    <h2 id="print">Print</h2>
    <p>The chart in force as PDF, landscape, in the site's unit of length. Each sheet has a number of its own, is entered below, and carries a
    code that says whether it is still current.</p>
    ${wanted.room ? html`
    <fieldset class="choices"><legend>How much of the chart</legend>
      ${extent(false, 'One region and one group, for the wall', redraw)}
      ${extent(true, 'The whole chart, for a folder', redraw)}
    </fieldset>
    <div class="row choices">
      ${choice('room', 'Room to print', rooms.filter(({ chart }) => chart).map(({ room, name }) => [room, `${room}, ${name}`]), redraw)}
      ${wanted.whole ? nothing : html`
        ${choice('region', 'Region of the body', [...(site()?.regions ?? []).map((one) => [one.region, one.label]), ['', 'all regions']], redraw)}
        ${choice('group', 'Patient group', [...(site()?.patientGroups ?? []).map((one) => [one.id, one.label]), ['', 'all groups']], redraw)}`}
      ${choice('paper', 'Paper', [['a4', 'A4'], ['letter', 'Letter']], redraw)}
    </div>
    <p id="pages" role="status">${wanted.pages ? html`<strong>${pageWords(wanted.pages)}.</strong>` : wanted.told}
      ${wanted.pages > LONG ? 'That is a book: for a wall, print one region for one group.' : nothing}</p>
    <button type="button" class="first" aria-describedby="pages" ?disabled=${wanted.none || wanted.busy} @click=${() => print(redraw, done)}>
      ${wanted.busy ? 'Making the sheet of' : 'Print'} ${wanted.room}${wanted.pages ? `, ${pageWords(wanted.pages)}` : nothing}</button>`
    : html`<p>No room has a chart in force, so there is nothing to print.</p>`}
    ${rooms.some(({ chart }) => !chart) ? html`<p class="small">Without a chart in force:
      ${rooms.filter(({ chart }) => !chart).map(({ room, name }) => `${room}, ${name}`).join('; ')}.</p>` : nothing}
  </section>`;

async function print(redraw, done) {
  if (wanted.busy) return;
  wanted.busy = true;
  redraw();
  const room = wanted.room;
  try {
    const sheet = await fetchSheet();
    save(sheet);
    await done(`The sheet of room ${room} is made: open ${sheet.name} and print it at its full size.`, null);
  } catch (failed) {
    await done('', failed);
  }
  wanted.busy = false;
  redraw();
}

async function fetchSheet() {
  const requireSame = api.sameOwner();
  let answer = await ask();
  if (answer.status === 401) {
    await askForSignIn();
    requireSame();
    answer = await ask();
  }
  if (!answer.ok) throw new api.Problem(answer.status, await answer.json());
  const name = /filename="([^"]+)"/.exec(answer.headers.get('Content-Disposition') ?? '')?.[1] ?? 'sheet.pdf';
  return { name, file: await answer.blob() };
}

/** A printed sheet is entered under a name. */
async function ask() {
  api.requireOwner();
  try {
    return await fetch(address(), { cache: 'no-store' });
  } catch (failed) {
    throw new api.Unreachable(failed);
  }
}

/** Keeps the file that came: nothing asks the service for it once more. */
function save({ name, file }) {
  const link = Object.assign(document.createElement('a'), { href: URL.createObjectURL(file), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
