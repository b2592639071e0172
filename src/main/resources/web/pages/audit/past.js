// "What would this room have been told on that day?" The interface answers for any instant; nothing is worked out here.
import { html, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { site, trouble } from '/pages/shell.js';
import { centimetres, length, spoken, trimmed } from '/pages/words.js';
import { fragment, query, shown } from '/pages/address.js';
import { instant, localMoment, toUtc, zone } from '/pages/audit/instants.js';
import { roomName, rooms } from '/pages/audit/acts.js';

const SUPPORTS = ['tabletop', 'table-bucky', 'wall-bucky', 'mobile'];
const QUESTION = ['room', 'at', 'bodyPart', 'projection', 'patientGroup', 'thickness', 'support', 'sid', 'grid', 'adjust'];
const past = { asked: null, technique: null, failed: null, grids: new Map(), room: null, opened: new Date().toISOString() };

/** Asks what the fragment asks, once it names an examination and a thickness. */
export async function load(draw) {
  const now = shown();
  await learnGrids(now.room ?? rooms()[0]?.[0], draw);
  const asked = JSON.stringify(QUESTION.map((name) => now[name] ?? ''));
  if (asked === past.asked) return;
  Object.assign(past, { asked, technique: null, failed: null });
  if (!now.bodyPart || !now.projection || !now.thickness || !now.room) return;
  try {
    const technique = (await api.get(`/rooms/${encodeURIComponent(now.room)}/technique${parameters(now)}`)).data;
    if (asked === past.asked) past.technique = technique;
  } catch (failed) {
    if (asked === past.asked) past.failed = failed;
  }
  draw();
  document.getElementById('told-heading')?.focus();
}

async function learnGrids(room, draw) {
  past.room = room;
  draw();
  if (!room || past.grids.has(room)) return;
  past.grids.set(room, []);
  past.grids.set(room, (await api.get(`/rooms/${encodeURIComponent(room)}`)).data.grids.map((grid) => grid.id));
  draw();
}

/** The question as the interface takes it: lengths in centimetres, one `adjust` for each adjustment. */
function parameters(now) {
  const unit = site().lengthUnit;
  const adjustments = (now.adjust ?? '').split(/[\s,]+/).filter(Boolean).map((name) => `&adjust=${encodeURIComponent(name)}`).join('');
  return query({
    bodyPart: now.bodyPart, projection: now.projection, patientGroup: now.patientGroup, support: now.support, grid: now.grid, at: now.at,
    thicknessCm: centimetres(now.thickness, unit), sidCm: now.sid && centimetres(now.sid, unit),
  }) + adjustments;
}

/** The exact instant of the fragment as long as nobody chose another: an event happens between two seconds. */
function chosenInstant(typed) {
  const exact = shown().at;
  return exact && localMoment(exact) === typed ? exact : toUtc(typed);
}

function ask(event) {
  event.preventDefault();
  const form = event.target.elements;
  past.asked = null;
  const next = fragment({ view: 'past', ...Object.fromEntries(QUESTION.map((name) => [name, form[name].value.trim()])),
    at: chosenInstant(form.at.value) }, {});
  if (next === location.hash) window.dispatchEvent(new Event('hashchange'));
  else location.hash = next;
}

export const pastPanel = (draw) => html`
  <section aria-labelledby="past-heading">
    <h2 id="past-heading">What would a room have been told?</h2>
    <p>The answer comes from the version that was in force, the equipment that stood there and the rules of the chart, at that instant.</p>
    ${form(shown(), draw)}
    <div class="told">
      ${past.technique || past.failed ? html`<h3 id="told-heading" tabindex="-1">${past.technique ? 'It would have been told'
        : 'It would have been refused'}</h3>` : nothing}
      ${past.technique ? told(past.technique) : nothing}
      ${past.failed ? refused(past.failed) : nothing}
    </div>
  </section>`;

const option = (id, words, chosen) => html`<option value=${id} ?selected=${id === chosen}>${words}</option>`;

const form = (now, draw) => html`
  <form class="panel row" @submit=${ask}>
    <label class="field">Room<select name="room" .value=${now.room ?? rooms()[0]?.[0] ?? ''}
      @change=${(event) => learnGrids(event.target.value, draw)}>
      ${rooms().map(([id, name]) => option(id, name, now.room))}</select></label>
    <label class="field">When, time of this screen (${zone()})
      <input type="datetime-local" name="at" step="1" required .value=${localMoment(now.at ?? past.opened)}></label>
    <label class="field">Body part<select name="bodyPart" required>
      <option value="">choose</option>${site().regions.map((region) => html`<optgroup label=${region.label}>
        ${site().bodyParts.filter((part) => part.region === region.region)
          .map((part) => option(part.bodyPart, part.label, now.bodyPart))}</optgroup>`)}</select></label>
    <label class="field">Projection<select name="projection" required>
      <option value="">choose</option>${site().projections.map((one) => option(one.projection, one.label, now.projection))}</select></label>
    <label class="field">Patient group<select name="patientGroup">
      ${site().patientGroups.map((group) => option(group.id, group.label, now.patientGroup ?? 'adult'))}</select></label>
    <label class="field">Thickness, ${site().lengthUnit}
      <input name="thickness" type="number" inputmode="decimal" step="any" min="0" required class="short"
        .value=${now.thickness ?? ''}></label>
    <label class="field">Support<select name="support">
      <option value="">the chart's only one</option>${SUPPORTS.map((one) => option(one, spoken(one), now.support))}</select></label>
    <label class="field">SID, ${site().lengthUnit}; empty for the row's
      <input name="sid" type="number" inputmode="decimal" step="any" min="0" class="short" .value=${now.sid ?? ''}></label>
    <label class="field">Grid<select name="grid"><option value="">the row's</option>${option('none', 'none', now.grid)}
      ${(past.grids.get(past.room) ?? []).map((grid) => option(grid, grid, now.grid))}</select></label>
    <label class="field">Adjustments, by name<input name="adjust" size="16" .value=${now.adjust ?? ''}></label>
    <button class="first">Ask</button>
    ${now.at ? html`<p class="small asked">Asked for ${instant(now.at)}, sent as <code>${now.at}</code></p>` : nothing}
  </form>`;

const told = (found) => html`
  <p class="set"><strong>${setting(found.set)}</strong></p>
  <dl class="facts">
    <dt>Row</dt><dd>${found.row.key}</dd>
    <dt>Asked with</dt><dd>${length(found.asked.thicknessCm, site().lengthUnit)}, SID ${length(found.asked.sidCm, site().lengthUnit)},
      grid ${found.asked.grid}${
      found.asked.adjustments.length ? `, ${found.asked.adjustments.join(', ')}` : ''}</dd>
    <dt>Chart</dt><dd>version ${found.chart.version} of ${roomName(found.room)}, in force from ${instant(found.chart.inForceFrom)}<br>
      <code>${found.chart.digest}</code></dd>
    <dt>Signed</dt><dd>by ${found.chart.signedBy}, ${instant(found.chart.signedAt)}: “${found.chart.meaning}”</dd>
    <dt>Equipment</dt><dd>revision ${found.equipment.revision}<br><code>${found.equipment.digest}</code></dd>
    ${found.dose ? html`<dt>Dose estimate</dt>
      <dd>entrance air kerma ${trimmed(found.dose.entranceAirKermaMicroGy / 1000, 3)} mGy with backscatter,
      within ${found.dose.uncertaintyPercent} %; output ${found.dose.outputSource}.
        For the technique, never a patient's dose.</dd>` : nothing}
  </dl>
  <div class="scroll" tabindex="0" role="group" aria-label="How it was worked out"><table>
    <caption>How it was worked out</caption>
    <thead><tr><th scope="col">Step</th><th scope="col">In words</th><th scope="col" class="number">kV</th>
      <th scope="col" class="number">mAs</th></tr></thead>
    <tbody>${found.steps.map((step) => html`<tr><th scope="row">${spoken(step.rule)}</th><td>${step.text}</td>
      <td class="number">${step.kV}</td><td class="number">${step.mAs ?? '–'}</td></tr>`)}</tbody>
  </table></div>
  <h4>Cautions it would have carried</h4>
  <ul>${found.cautions.map((caution) => html`<li>${caution}</li>`)}</ul>`;

function setting(set) {
  const exposure = set.aec
    ? `AEC ${set.aec.chambers.join(' and ')}, density ${set.aec.density}, backup ${set.aec.backupMAs} mAs`
    : `${set.mAs} mAs (${set.mA} mA, ${set.timeMs} ms)`;
  return `Set ${set.kV} kV, ${exposure}, ${set.focalSpot} focal spot, SID ${length(set.sidCm, site().lengthUnit)}, grid ${set.grid}`;
}

/** What the interface would take instead becomes a click away. */
const refused = (failed) => html`
  ${failed.body ? html`<p class="tell caution"><strong>${failed.body.title}.</strong>${failed.message}</p>
    ${failed.errors.length ? html`<ul>${failed.errors.map((error) =>
      html`<li>${error.parameter ?? error.pointer}: ${error.detail}</li>`)}</ul>` : nothing}` : trouble(failed)}
  ${failed.body?.reasons ? html`<ul>${failed.body.reasons.map((reason) => html`<li>${reason}</li>`)}</ul>` : nothing}
  ${failed.body?.alternatives?.length ? html`<p>What would do: ${failed.body.alternatives.join('; ')}</p>` : nothing}
  ${instead('bodyPart', failed.body?.bodyParts)}${instead('projection', failed.body?.projections)}
  ${instead('patientGroup', failed.body?.patientGroups)}${instead('support', failed.body?.supports)}
  ${instead('grid', failed.body?.grids)}${instead('adjust', failed.body?.adjustments)}`;

const instead = (name, choices) => (choices?.length
  ? html`<p class="row">Ask with ${choices.map((choice) =>
    html`<a class="button" href=${fragment({ [name]: choice })}>${spoken(choice)}</a>`)}</p>` : nothing);
