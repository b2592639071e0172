// One examination along the thickness: what the console is set to, what beam physics predicts of it, what it costs at the skin.
import { html, nothing } from '/pages/lit-html.js';
import { trouble } from '/pages/shell.js';
import { lengthNumber, trimmed } from '/pages/words.js';
import { toVersion, toExamination, toRow, examinationOf } from '/pages/chart/address.js';
import { examinationWords, whereWords, bandWords, regions, regionOf, unit, techniqueWords, signed } from '/pages/chart/terms.js';
import { said } from '/pages/chart/findings.js';
import { costWords, gradeList } from '/pages/chart/physics.js';
import { figures } from '/pages/chart/figures.js';
import * as service from '/pages/chart/service.js';

/** Asks for the courses and the physics of an examination; `changed` is called with what is known whenever that grows. */
export async function askCurves(room, version, examination, changed) {
  const stop = new AbortController();
  const now = { examination, version, state: 'running', busy: null, failed: null, every: 50, leave: () => stop.abort() };
  const how = { signal: stop.signal, whenBusy: (tries, message) => changed(Object.assign(now, { busy: `${message} (try ${tries})` })) };
  changed(now);
  try {
    const courses = service.courses(room, version, examination, how);
    const physics = service.examinationPhysics(room, version, examination, how);
    const said = await physics;
    Object.assign(now, {
      state: 'done', busy: null, courses: await courses, physics: said.examinations[0], holdsFor: said.holdsFor,
      ofChart: said.findings.filter((one) => one.row === '' || examinationOf(one.row) === examination),
    });
  } catch (failed) {
    Object.assign(now, stop.signal.aborted ? { state: 'left', busy: null } : { state: 'failed', failed, busy: null });
  }
  changed(now);
}

/** The part of the page; `content` are the version's rows. */
export function curvesPart({ now, content, version, inForce, again, changed, go }) {
  const { examination } = now;
  return html`
    <p><a href=${toVersion(version)}>All rows of version ${version}</a></p>
    <div class="row">
      <h2 id="part" tabindex="-1">${examinationWords(examination)}, ${whereWords(examination)}</h2>
      <span>version ${version}${version === inForce ? ', in force' : ', not the chart in force'}</span>
    </div>
    ${picker(content, version, examination, go)}
    ${now.state === 'running' ? html`<p class="row checks"><label class="tick"><progress></progress> Working out the curves</label>
      ${now.busy ? html`<span>${now.busy}</span>` : nothing}<button type="button" @click=${now.leave}>Leave it</button></p>` : nothing}
    ${now.state === 'failed' ? html`<div role="alert">${trouble(now.failed)}</div>` : nothing}
    ${now.state === 'failed' || now.state === 'left' ? html`<p><button type="button" @click=${again}>Work the curves out again</button></p>` : nothing}
    ${now.state === 'done' ? drawn(now, content, changed) : nothing}`;
}

function picker(content, version, examination, go) {
  const all = [...new Set(content.rows.map((row) => examinationOf(row.key)))];
  return html`<label class="field">Examination
    <select id="examination-picker" @change=${(event) => go(toExamination(version, event.target.value))}>
      ${regions().map(({ region, label }) => html`<optgroup label=${label}>
        ${all.filter((one) => regionOf(one.split('/')[0]) === region).map((one) => html`
          <option value=${one} ?selected=${one === examination}>${examinationWords(one)}, ${whereWords(one)}</option>`)}</optgroup>`)}
    </select></label>`;
}

const key = (number, words) => html`<li><span class="key key-${number}" aria-hidden="true"></span>${words}</li>`;

const figure = (id, title, keys, note) => html`
  <figure><figcaption><h3>${title}</h3><ul class="keys">${keys}</ul>${note ? html`<p class="small">${note}</p>` : nothing}</figcaption>
    <div class="plot" id=${id} role="img" aria-label="${title}, along the thickness; the same numbers stand in the table below"></div></figure>`;

function drawn(now, content, changed) {
  const { courses, physics } = now;
  const manual = courses.rows.some((row) => !row.aec);
  const automatic = courses.rows.some((row) => row.aec);
  const predicted = physics.rows.some((row) => row.curve.length > 0);
  const costed = courses.rows.some((row) => row.points.some((point) => point.dose !== null));
  return html`
    ${refusals(courses)}${unpredicted(physics)}
    <div class="panel readout">
      <label class="field" for="thickness">Thickness, ${unit()} (arrow keys, or the pointer in a plot)</label>
      <input type="range" id="thickness" min="0" value="0">
      <div id="reading"></div>
    </div>
    <div class="plots">
      ${figure('plot-kv', 'Tube voltage, kV', [key('solid', 'set at the console'), key('dashed', 'by the rows’ rules, before stations')])}
      ${figure('plot-mas', `${automatic && !manual ? 'Back-up' : 'Current-time product'}, mAs (logarithmic)`, [
        key('solid', automatic ? (manual ? 'set at the console; under AEC the back-up' : 'back-up set at the console; AEC ends the exposure before') : 'set at the console'),
        key('dashed', 'by the rows’ rules, before stations'),
        predicted ? key('dotted', 'would keep the receptor exposure even (beam physics)') : nothing])}
      ${predicted ? figure('plot-exposure', 'Receptor exposure, dB over the reference',
        [key('solid', 'predicted by beam physics, before stations')],
        `0 dB is ${lengthNumber(physics.reference.thicknessCm, unit())} ${unit()}; ${physics.comparedAs}. 1 dB is 26 %.`) : nothing}
      ${costed ? kermaFigure(courses, automatic) : nothing}
      ${costed && courses.kermaAreaProductLevel ? figure('plot-product', 'Kerma-area product, µGy m²', [
        key('solid', 'estimate, of the field the row names'), key('level', levelWords(courses.kermaAreaProductLevel))]) : nothing}
    </div>
    ${physics.findings.concat(now.ofChart).map(said)}
    ${offers(physics)}
    ${rowTable(now, content)}
    <details class="panel"><summary>The same numbers in a table</summary>${figures(now, changed)}</details>
    <details class="panel"><summary>What the predictions hold for</summary>
      <ul>${now.holdsFor.map((sentence) => html`<li>${sentence}</li>`)}<li>${courses.limits}</li></ul></details>`;
}

export const levelWords = (level) => `reference level ${level.value} ${level.unit} (${level.source}, ${level.year}): for patients of usual size, no limit for one`;

function kermaFigure(courses, automatic) {
  const level = courses.referenceLevel;
  const title = level?.quantityId === 'incident-air-kerma' ? 'Incident air kerma without backscatter, mGy'
    : 'Entrance surface air kerma with backscatter, mGy';
  return figure('plot-kerma', title, [
    key('solid', `estimate${automatic ? '; under AEC at most this, at the back-up' : ''}`),
    level ? key('level', levelWords(level)) : html`<li>no reference level of the site for this examination</li>`]);
}

const stretch = ({ fromCm, toCm }) => (fromCm === toCm ? `at ${lengthNumber(fromCm, unit())} ${unit()}` : `${bandWords([fromCm, toCm])} ${unit()}`);

const refusals = (courses) => courses.rows.flatMap((row) => row.refused).map((one) => html`
  <p class="tell caution"><strong>Refused</strong>${stretch(one)}: ${one.reason}</p>`);

function unpredicted(physics) {
  const stretches = physics.rows.flatMap((row) => row.notPredicted);
  return stretches.length === 0 ? nothing : html`
    <p class="tell"><strong>Receptor exposure not predicted</strong>${[...new Set(stretches.map((one) => one.reason))].map((reason, at) => html`${at > 0 ? '; ' : ''}${
      stretches.filter((one) => one.reason === reason).map(stretch).join(', ')}: ${reason}`)}.</p>`;
}

const offers = (physics) => (physics.offers.length === 0 ? nothing : html`
  <h3>As much at the receptor for less at the skin, for people to weigh</h3>
  <ul>${physics.offers.map((offer) => html`<li>${offer.text}</li>`)}</ul>`);

function rowTable({ courses, physics, version }, content) {
  const row = (name) => content.rows.find((one) => one.key === name);
  return html`<div class="scroll"><table><caption>Rows of this examination</caption>
    <thead><tr><th scope="col">Thickness, ${unit()}</th><th scope="col">Technique at ${'\u00a0'}the reference</th><th scope="col" class="number">Reference, ${unit()}</th>
      <th scope="col">At the skin</th><th scope="col">Rules of thumb</th></tr></thead>
    <tbody>${courses.rows.map((course) => {
      const predicted = physics.rows.find((one) => one.row === course.row);
      return html`<tr><th scope="row"><a href=${toRow(version, course.row)}>${bandWords(course.bandCm)}</a></th>
        <td>${row(course.row) ? techniqueWords(row(course.row)) : ''}</td>
        <td class="number">${lengthNumber(course.referenceThicknessCm, unit())}</td>
        <td>${predicted?.dose ? costWords(predicted.dose) : 'not predicted'}</td>
        <td>${predicted?.grades.length ? html`<details><summary>${predicted.grades.length} graded</summary>${gradeList(predicted.grades)}</details>` : 'not graded'}</td></tr>`;
    })}</tbody></table></div>`;
}

/** Every thickness that the room was asked for, with what it was told, by ascending thickness. */
export const pointsOf = (courses) => courses.rows.flatMap((row) => row.points.map((point) => ({ ...point, row })));

/** What stands at one thickness, in words; `near` is the nearest point that beam physics predicts in the same band, or none. */
export function readingWords(point, near, courses) {
  const level = courses.referenceLevel;
  const { dose } = point;
  const incident = level?.quantityId === 'incident-air-kerma';
  const share = dose?.referenceLevelPercent;
  return [
    ['Thickness', `${lengthNumber(point.thicknessCm, unit())} ${unit()} in ${bandWords(point.row.bandCm)}`],
    ['Set', `${point.kV} kV, ${point.row.aec ? `AEC, back-up ${point.mAs} mAs` : `${point.mAs} mAs (${point.mA} mA, ${point.timeMs} ms)`}`],
    ['By the rule', `${trimmed(point.exact.kV, 2)} kV, ${trimmed(point.exact.mAs, 2)} mAs`],
    ['At the receptor', near ? `${signed(near.receptorExposureDb, 2)} dB${near.thicknessCm === point.thicknessCm ? '' : ` (at ${lengthNumber(near.thicknessCm, unit())} ${unit()})`}` : 'not predicted'],
    ['At the skin', dose === null ? 'not predicted' : `${dose.upperBound ? 'at most ' : ''}${
      trimmed((incident ? dose.incidentAirKermaMicroGy : dose.entranceAirKermaMicroGy) / 1000, 3)} mGy ${incident ? 'without' : 'with'} backscatter${
      share === null ? '' : `, ${trimmed(share, 0)} % of the reference level`}`],
  ];
}
