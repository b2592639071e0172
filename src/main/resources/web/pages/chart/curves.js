// One examination along the thickness: what the console is set to, what beam physics predicts of it, what it costs at the skin.
import { html, nothing } from '/pages/lit-html.js';
import { trouble } from '/pages/shell.js';
import { lengthNumber } from '/pages/words.js';
import { toVersion, toExamination, toRow, examinationOf } from '/pages/chart/address.js';
import { examinationWords, whereWords, bandWords, regions, regionOf, unit, techniqueWords } from '/pages/chart/terms.js';
import { stateMark } from '/pages/chart/head.js';
import { busyLine, said } from '/pages/chart/findings.js';
import { costWords, gradeList } from '/pages/chart/physics.js';
import { figures } from '/pages/chart/figures.js';
import { places } from '/pages/chart/places.js';
import * as service from '/pages/chart/service.js';

/** Asks for the courses and the physics of an examination; `changed` is called with what is known whenever that grows. */
export async function askCurves(room, version, examination, changed) {
  const stop = new AbortController();
  const now = { examination, version, state: 'running', busy: null, failed: null, every: 50, leave: () => stop.abort() };
  const how = {
    signal: stop.signal,
    whenBusy: (tries, message) => changed(Object.assign(now, { busy: `${message} (try ${tries})` })),
  };
  changed(now);
  try {
    const [courses, physics] = await Promise.all([
      service.courses(room, version, examination, how), service.examinationPhysics(room, version, examination, how)]);
    const ofChart = physics.findings.filter((one) => one.row === '' || examinationOf(one.row) === examination);
    Object.assign(now, { state: 'done', busy: null, courses, physics: physics.examinations[0], holdsFor: physics.holdsFor, ofChart });
  } catch (failed) {
    Object.assign(now, stop.signal.aborted ? { state: 'left', busy: null } : { state: 'failed', failed, busy: null });
  }
  changed(now);
}

/** The part of the page; `content` are the version's rows, `again` asks once more, `changed` draws with something else. */
export function curvesPart({ now, content, head, inForce, again, changed, go }) {
  const { examination, version } = now;
  return html`
    <p><a href=${toVersion(version)}>All rows of version ${version}</a></p>
    <h2 id="part" class="with-mark" tabindex="-1">${examinationWords(examination)}, ${whereWords(examination)}
      <span class="small">version ${version}</span> ${stateMark(head, inForce)}</h2>
    ${picker(content, version, examination, go)}
    ${now.state === 'running' ? busyLine('Working out the curves', now) : nothing}
    <div role="alert">${now.state === 'failed' ? trouble(now.failed) : nothing}</div>
    ${now.state === 'failed' || now.state === 'left'
    ? html`<p><button type="button" @click=${again}>Work the curves out</button></p>` : nothing}
    ${now.state === 'done' ? drawn(now, content, changed) : nothing}`;
}

function picker(content, version, examination, go) {
  const all = [...new Set(content.rows.map((row) => examinationOf(row.key)))];
  const options = (region) => all.filter((one) => regionOf(one.split('/')[0]) === region).map((one) => html`
    <option value=${one} .selected=${one === examination}>${examinationWords(one)}, ${whereWords(one)}</option>`);
  return html`<label class="field">Examination
    <select id="examination-picker" @change=${(event) => go(toExamination(version, event.target.value))}>
      ${regions().map(({ region, label }) => html`<optgroup label=${label}>${options(region)}</optgroup>`)}
    </select></label>`;
}

function drawn(now, content, changed) {
  const { courses, physics } = now;
  return html`
    ${refusals(courses)}${unpredicted(physics)}
    <div>
    <div class="panel readout">
      <label class="field" for="thickness">Thickness, ${unit()}: move it with the arrow keys, or point into a plot</label>
      <input type="range" id="thickness" min="0" value="0">
      <div id="reading"></div>
    </div>
    ${places(courses, physics)}
    </div>
    ${physics.findings.concat(now.ofChart).map(said)}
    ${offers(physics)}
    ${rowTable(now, content)}
    <details class="panel" id="numbers"><summary>The same numbers in a table</summary>${figures(now, changed)}</details>
    <details class="panel"><summary>What the predictions hold for</summary>
      <ul>${now.holdsFor.map((sentence) => html`<li>${sentence}</li>`)}<li>${courses.limits}</li></ul></details>`;
}

const stretch = ({ fromCm, toCm }) => (fromCm === toCm ? `at ${lengthNumber(fromCm, unit())} ${unit()}`
  : `${bandWords([fromCm, toCm])} ${unit()}`);

const refusals = (courses) => courses.rows.flatMap((row) => row.refused).map((one) => html`
  <p class="tell caution"><strong>Refused</strong>${stretch(one)}: ${one.reason}</p>`);

/** Each reason once, with the stretches that it is said of. */
function unpredicted(physics) {
  const stretches = physics.rows.flatMap((row) => row.notPredicted);
  const reasons = [...new Set(stretches.map((one) => one.reason))];
  const of = (reason) => `${stretches.filter((one) => one.reason === reason).map(stretch).join(', ')}: ${reason}`;
  return reasons.length === 0 ? nothing
    : html`<p class="tell"><strong>Receptor exposure not predicted</strong>${reasons.map(of).join('; ')}.</p>`;
}

const offers = (physics) => (physics.offers.length === 0 ? nothing : html`
  <h3>As much at the receptor for less at the skin, for people to weigh</h3>
  <ul>${physics.offers.map((offer) => html`<li>${offer.text}</li>`)}</ul>`);

const graded = (grades) => html`<details><summary>${grades.length} graded</summary>${gradeList(grades)}</details>`;

function rowTable({ courses, physics, version }, content) {
  const line = (course) => {
    const row = content.rows.find((one) => one.key === course.row);
    const predicted = physics.rows.find((one) => one.row === course.row);
    return html`<tr><th scope="row"><a href=${toRow(version, course.row)}>${bandWords(course.bandCm)}</a></th>
      <td class="number">${lengthNumber(course.referenceThicknessCm, unit())}</td>
      <td>${row ? techniqueWords(row) : ''}</td>
      <td>${predicted?.dose ? costWords(predicted.dose) : 'not predicted'}</td>
      <td>${predicted?.grades.length ? graded(predicted.grades) : 'not graded'}</td></tr>`;
  };
  return html`<div class="scroll"><table id="rows-of-examination"><caption>Rows of this examination</caption>
    <thead><tr><th scope="col">Band, ${unit()}</th><th scope="col" class="number">Reference, ${unit()}</th>
      <th scope="col">Technique at the reference</th><th scope="col">At the skin there</th><th scope="col">Rules of thumb</th></tr></thead>
    <tbody>${courses.rows.map(line)}</tbody></table></div>`;
}
