// What the code on a sheet leads to: whether the sheet that hangs here still holds. No sign-in, and nobody's name.
import { html, render, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, trouble } from '/pages/shell.js';
import { day, moment } from '/pages/words.js';
import { stateClass } from '/pages/sheet/states.js';

const place = document.getElementById('sheet');
const number = location.pathname.split('/').pop();

const WORDS = {
  current: () => 'CURRENT',
  superseded: () => 'SUPERSEDED: take it down',
  'equipment-moved': () => 'EQUIPMENT MOVED: ask the room page',
};

async function show() {
  render(html`<p>Looking up sheet ${number} …</p>`, place);
  try {
    const sheet = (await api.get(`/sheets/${number}`)).data;
    document.title = `${WORDS[sheet.state]()} · Sheet ${sheet.sheet}`;
    render(verdict(sheet), place);
  } catch (failed) {
    const unknown = failed instanceof api.Problem && (failed.status === 404 || failed.status === 400);
    render(unknown ? notKnown(failed) : html`${trouble(failed)}
      <p>Until the service answers, this sheet can neither be called current nor superseded.</p>
      <button type="button" class="first" @click=${show}>Try again</button>`, place);
  }
}

const verdict = (sheet) => html`
  <section class="verdict ${stateClass(sheet.state)}">
    <p class="word">${WORDS[sheet.state]()}</p>
    ${sheet.since ? html`<p>since <time datetime=${sheet.since}>${moment(sheet.since)}</time></p>` : nothing}
    <p class="room">Room ${sheet.room}, ${sheet.roomName}</p>
    <p>${sheet.say}</p>
    <p class="next"><strong>${sheet.nextStep}</strong></p>
    ${sheet.until ? html`<p>It holds until ${moment(sheet.until)}; print a new one then.</p>` : nothing}
    ${sheet.reviewOverdueSince ? html`<p>Its review was due on ${day(sheet.reviewOverdueSince)}.</p>` : nothing}
    ${sheet.takenDownAt ? html`<p>Noted as taken down on ${moment(sheet.takenDownAt)}.</p>` : nothing}
    <dl class="facts">
      <dt>Sheet</dt><dd><code>${sheet.sheet}</code></dd>
      <dt>Chart</dt><dd>version ${sheet.version}${sheet.state === 'superseded' ? html`; in force is version ${sheet.versionInForce}` : nothing}</dd>
      <dt>On it</dt><dd>${[sheet.region, sheet.patientGroup].filter(Boolean).join('; ') || 'the whole chart'}</dd>
      <dt>Printed</dt><dd>${moment(sheet.printedAt)}, this screen's time</dd>
      <dt>Department</dt><dd>${sheet.site}</dd>
    </dl>
  </section>
  <p>Compare number, room and version with those on the paper. <a href="/rooms/${sheet.room}">Room page</a></p>`;

const notKnown = (failed) => html`
  <section class="verdict blocking">
    <p class="word">NOT KNOWN HERE</p>
    <p class="next"><strong>${failed.errors[0]?.detail ?? failed.detail}</strong></p>
    <p>The number looked for was <code>${number}</code>.</p>
  </section>`;

await start({ signIn: false });
show();
