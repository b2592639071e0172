// A measured output: typed or pasted, tried out, questioned, confirmed, put in force.
import { html, nothing } from '/pages/lit-html.js';
import { trouble } from '/pages/shell.js';
import { day } from '/pages/words.js';
import { entryOf, keep, outcome, putInForce, reasonAndEnter, tryOut } from '/pages/equipment/entry.js';
import { effectsPanel } from '/pages/equipment/history.js';
import { number, pairsEditor } from '/pages/equipment/pairs.js';
import { fitPanel } from '/pages/equipment/plots.js';

const POINTS = '/microGyPerMAsAtOneMetre';
const FIELDS = [
  ['totalFiltrationMmAl', 'Total filtration as stated, mm Al'], ['totalFiltrationMmCu', 'and mm Cu, where there is some'],
  ['hvlMmAl', 'Half-value layer, mm Al'], ['hvlAtKV', 'measured at, kV'], ['uncertaintyPercent', 'Expanded uncertainty, %'],
];

const entry = (room) => entryOf(`${room}.output`, () => ({
  measuredOn: '', fields: {}, points: [['', ''], ['', ''], ['', '']], confirmed: [], replaces: false, reason: '',
}));

/** What is typed as the interface takes it; a text that is no number goes as it is, and the interface says what is wrong with it. */
function body({ draft }, equipment) {
  const told = (text) => number(text) ?? text;
  const sent = { measuredOn: draft.measuredOn, microGyPerMAsAtOneMetre: draft.points.map(([kV, output]) => ({ kV: told(kV),
    output: told(output) })) };
  FIELDS.forEach(([name]) => {
    if ((draft.fields[name] ?? '').trim() !== '') sent[name] = told(draft.fields[name]);
  });
  if (draft.confirmed.length) sent.confirmed = draft.confirmed;
  if (draft.replaces) sent.replacesMeasuredOn = equipment.measuredOn;
  return sent;
}

/** What was confirmed was confirmed of other figures. */
function changed(now, draw) {
  Object.assign(now.draft, { confirmed: [], replaces: false });
  keep(now, draw);
}

export function measurePanel({ room, equipment, mayEnter, reload }, draw) {
  const now = entry(room.room);
  const address = `/rooms/${room.room}/equipment/tube/output`;
  const trying = (event) => {
    event.preventDefault();
    tryOut(now, `${address}/effects`, body(now, equipment), draw);
  };
  const enter = (event) => {
    event.preventDefault();
    putInForce(now, room.room, address, { ...body(now, equipment), reason: now.draft.reason }, draw, reload);
  };
  return html`
    <section aria-labelledby="measure-heading">
      <h2 id="measure-heading">Enter a measured output</h2>
      <p>Air kerma per mAs at 1 m, free in air, without backscatter: at three tube voltages or more,
        the highest at least one and a half times the lowest.
        What you type stays at this screen until it is in force.</p>
      ${form(now, equipment, trying, draw)}
      ${outcome(now, (failed) => refused(now, failed, draw))}
      ${now.tried ? tried(now) : nothing}
      ${reasonAndEnter(now, mayEnter, enter, draw)}
    </section>`;
}

function form(now, equipment, trying, draw) {
  const field = (name, event) => {
    now.draft.fields[name] = event.target.value;
    changed(now, draw);
  };
  return html`
    <form class="panel measure" @submit=${trying}>
      <div class="row">
        <label class="field">Measured on<input type="date" .value=${now.draft.measuredOn}
          aria-invalid=${wrongAt(now, '/measuredOn') ? 'true' : 'false'}
          @input=${(event) => { now.draft.measuredOn = event.target.value; changed(now, draw); }}></label>
        ${FIELDS.map(([name, words]) => html`<label class="field">${words}<input inputmode="decimal" size="8" name=${name}
          .value=${now.draft.fields[name] ?? ''}
          aria-invalid=${wrongAt(now, `/${name}`) ? 'true' : 'false'} @input=${(event) => field(name, event)}></label>`)}
      </div>
      ${pairsEditor({
        caption: 'Measured output', heads: ['kV', 'µGy/mAs at 1 m'], pairs: now.draft.points, said: now.said,
          changed: () => changed(now, draw),
        wrong: (i) => wrongAt(now, `${POINTS}/${i}`),
      })}
      <p class="row"><button class="first" ?disabled=${now.busy !== ''}>Try it</button>
        ${equipment.document.tube.output ? html`<button type="button"
          @click=${() => asInForce(now, equipment, draw)}>Take kV and filtration of the measurement in force</button>` : nothing}
        <button type="button" @click=${() => empty(now, draw)}>Empty the form</button></p>
    </form>`;
}

function asInForce(now, equipment, draw) {
  const { output } = equipment.document.tube;
  FIELDS.forEach(([name]) => {
    if (name !== 'hvlMmAl' && output[name] !== undefined) now.draft.fields[name] = String(output[name]);
  });
  now.draft.points = output.microGyPerMAsAtOneMetre.map((point) => [String(point.kV), '']);
  changed(now, draw);
}

function empty(now, draw) {
  now.draft = now.empty();
  now.said = {};
  changed(now, draw);
}

/** What the interface said of one place, shortly. */
function wrongAt(now, pointer) {
  const found = now.failed?.errors?.find((error) => error.pointer === pointer || error.pointer?.startsWith(`${pointer}/`));
  return found ? (found.confirm ? 'questioned' : found.detail) : null;
}

function refused(now, failed, draw) {
  if (failed.code === 'older-measurement') return older(now, failed, draw);
  if (failed.code !== 'questioned-measurement') return trouble(failed);
  const tick = (code, event) => {
    const others = now.draft.confirmed.filter((one) => one !== code);
    now.draft.confirmed = event.target.checked ? [...others, code] : others;
    now.kept.keep(now.draft);
    draw();
  };
  return html`
    <div class="tell caution"><strong>This looks like a slip.</strong>Measure again, or stand by it: tick what you have looked at,
      then try again. The ledger will say that you did.
      <ul class="plain">${failed.errors.map((error) => html`<li><label class="tick"><input type="checkbox"
        .checked=${now.draft.confirmed.includes(error.confirm)}
        @change=${(event) => tick(error.confirm, event)}> ${error.detail}</label></li>`)}</ul>
    </div>
    ${failed.body.fit ? fitPanel(failed.body.fit, uncertainty(now), now.draft.confirmed) : nothing}`;
}

const older = (now, failed, draw) => html`
  <div class="tell caution"><strong>A newer measurement is in force.</strong>${failed.message.split(', or send')[0]}.
    <p><label class="tick"><input type="checkbox" .checked=${now.draft.replaces} @change=${(event) => {
      now.draft.replaces = event.target.checked;
      now.kept.keep(now.draft);
      draw();
    }}> Put this one in the place of the newer one nevertheless; then try again</label></p></div>`;

const uncertainty = (now) => number(now.draft.fields.uncertaintyPercent) ?? 0;

const tried = (now) => html`
  <section class="panel" aria-labelledby="tried-heading">
    <h3 id="tried-heading">What it would do (compared with revision ${now.tried.comparedWith})</h3>
    <ul>${now.tried.calibration.map((said) => html`<li>${said}</li>`)}</ul>
    ${filtrations(now.tried.fittedFiltration)}
    ${now.tried.fit ? fitPanel(now.tried.fit, uncertainty(now), now.draft.confirmed) : nothing}
    ${effectsPanel(now.tried, 100)}
    <p class="small">${now.tried.limits} Measured on ${day(now.draft.measuredOn)}.</p>
  </section>`;

const filtrations = (fitted) => (fitted.afterMmAl === null ? nothing : html`
  <p>Filtration as the half-value layer has it: ${fitted.beforeMmAl === null ? 'not known before' : `${fitted.beforeMmAl} mm Al before`},
    ${fitted.afterMmAl} mm Al now.</p>`);
