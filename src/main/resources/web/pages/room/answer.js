// What to set, large; then where and how to place patient and beam. Everything shown is as the interface answered it.
import { html, nothing } from '/pages/lit-html.js';
import { length, lengthNumber, spoken, trimmed } from '/pages/words.js';
import { chambers } from './chambers.js';
import { forWords, withLine } from './differing.js';
import { sentence } from './sentences.js';

/** The technique of an answer. */
export function technique(state, act) {
  const { technique: told } = state.answer;
  return html`
    <section class="technique" aria-labelledby="technique-title">
      <h2 id="technique-title" class="unseen">Technique ${forWords(told, state)}</h2>
      <div class="beside">
        <div class="figures">
          ${told.set.aec ? automatic(told, state) : manual(told, state)}
          ${filter(told.row)}${withLine(told, state)}
        </div>
        ${placing(told.row, state.head)}
      </div>
      ${notMeasured(state)}
      ${kept(state)}
      ${cautions(told, state)}
      ${cost(told, state)}
    </section>`;
}

/** Set at the collimator like the field, and easily forgotten in either direction. */
const filter = ({ addedFiltration }) => (addedFiltration === 'none' ? nothing : html`
  <dl class="filter"><dt>Filter</dt> <dd>${addedFiltration}</dd></dl>`);

const figure = (name, value, unit, kind = '') => html`
  <div class="fact ${kind}"><dt>${name}</dt><dd><span class="figure">${value}</span>${unit ? html`<span class="unit">${unit}</span>` : nothing}</dd></div>`;

function manual({ set, row }, state) {
  return html`
    <div class="set">
      <dl>${figure('Tube voltage', set.kV, 'kV', 'main')} ${figure('Current-time product', set.mAs, 'mAs', 'main')}</dl>
      <dl>${figure('Tube current', set.mA, 'mA')} ${figure('Time', decimalsSmall(String(set.timeMs)), 'ms')} ${figure('Focal spot', set.focalSpot)}</dl>
      ${distance(set, row, state)}
    </div>`;
}

function automatic({ set, row }, state) {
  const { density } = set.aec;
  return html`
    <div class="set">
      <dl>${figure('Tube voltage', set.kV, 'kV', 'main')}
        <div class="fact main aec"><dt>AEC chambers</dt>
          <dd>${chambers(set.aec.chambers)} <span class="figure">${set.aec.chambers.map(spoken).join('+')}</span></dd></div></dl>
      <dl>${figure('AEC back-up', set.aec.backupMAs, 'mAs')} ${figure('AEC density', density > 0 ? `+${density}` : density)}
        ${figure('Focal spot', set.focalSpot)}</dl>
      ${distance(set, row, state)}
    </div>`;
}

/** What is not as the row has it says so where its name stands. */
function distance({ sidCm, grid }, row, { unit, head }) {
  const words = gridWords(grid, head.grids, unit);
  const sid = sidCm === row.sidCm ? 'SID' : differs(`SID ${length(sidCm, unit)}, chart ${length(row.sidCm, unit)}`);
  const named = grid === row.grid ? 'Grid' : differs(`Grid, chart ${gridName(row.grid, head.grids, unit)}`);
  return html`
    <dl>${figure(sid, decimalsSmall(lengthNumber(sidCm, unit)), unit)} ${figure(named, words.ratio, words.focus)}
      ${figure(`Receptor ${unit}, ${row.orientation}`, field(row.fieldCm, unit))}</dl>`;
}

/** 182.88 cm and 15.625 ms take little more room than 183 and 16. */
function decimalsSmall(written) {
  const [whole, decimals] = written.split('.');
  return decimals ? html`${whole}<span class="decimals">.${decimals}</span>` : whole;
}

const differs = (text) => html`<span class="differs">${text}</span>`;

/** '24x30' -> '24×30' in the site's unit. */
function field(written, unit) {
  const [short, long] = written.split('x').map((side) => decimalsSmall(lengthNumber(side, unit)));
  return html`${short}×${long}`;
}

/** '10:1' and its focal distance, which tells two grids of one ratio apart. */
export function gridWords(id, grids, unit) {
  if (id === 'none') return { ratio: 'none', focus: '' };
  const grid = grids?.find((each) => each.id === id);
  if (!grid) return { ratio: id, focus: '' };
  return { ratio: `${grid.ratio}:1`, focus: grid.focalDistanceCm ? `f ${Math.round(lengthNumber(grid.focalDistanceCm, unit))}` : 'parallel' };
}

export function gridName(id, grids, unit) {
  const { ratio, focus } = gridWords(id, grids, unit);
  return id === 'none' ? 'no grid' : `${ratio} ${focus}`.trim();
}

/** Somebody looked at a neighbouring band: nobody may take that for the answer to the measurement. */
const notMeasured = ({ measured, typed, unit }) => (measured === null ? nothing : html`
  <p class="tell blocking"><strong>Not the measured thickness.</strong> Measured ${measured} ${unit}, which is outside the chart; this is for
    ${typed} ${unit}. Decide under local rules.</p>`);

function kept({ answer, unit }) {
  if (answer.source !== 'pack') return nothing;
  const asked = answer.question.thicknessCm;
  return html`<p class="tell caution"><strong>${withoutService(answer)}</strong> From the chart kept at this workstation,
    worked out for <b>${length(answer.answeredCm, unit)}</b>${answer.answeredCm === asked ? nothing
      : html`, the nearest kept thickness to ${length(asked, unit)}; ${onTheOtherSide(answer, unit)}`}.</p>`;
}

/** Why the kept chart answers. */
export const withoutService = ({ why }) => (why === 'lost' ? 'Offline.' : 'Token not accepted.');

/** What is kept beyond a thickness in between, so that whoever sets it sees between what the live answer lies. */
function onTheOtherSide({ technique: { set }, otherSide }, unit) {
  if (!otherSide) return 'the live answer may differ, as nothing is kept beyond it in this band';
  const at = length(otherSide.cm, unit);
  if (!otherSide.set) return `no technique is kept at ${at}`;
  if (JSON.stringify(otherSide.set) === JSON.stringify(set)) return `the same at ${at}`;
  const spot = otherSide.set.focalSpot === set.focalSpot ? '' : `, ${otherSide.set.focalSpot} focal spot`;
  return `at ${at} it is ${settingWords(otherSide.set)}${spot}`;
}

const settingWords = ({ kV, mAs, mA, timeMs, aec }) => (aec ? `${kV} kV, AEC, back-up ${aec.backupMAs} mAs`
  : `${kV} kV, ${mAs} mAs (${mA} mA, ${timeMs} ms)`);

/** The technique's own; the one that stands under every answer is in the foot. */
function cautions({ cautions: all }, state) {
  const own = all.slice(0, -1);
  return own.length === 0 ? nothing : html`
    <ul class="cautions" aria-label="Cautions">${own.map((text) => html`<li class="tell caution"><strong>Caution.</strong> ${sentence(text, state)}</li>`)}</ul>`;
}

function cost({ dose, row }, { unit }) {
  const from = html`Row <code>${row.key}</code>, ${lengthNumber(row.bandCm[0], unit)} to under ${length(row.bandCm[1], unit)}.`;
  if (!dose) return html`<p class="cost">Entrance dose: not predicted for this beam. ${from}</p>`;
  const level = dose.referenceLevel;
  return html`<p class="cost">${dose.upperBound ? 'At most' : 'About'} <b>${milliGray(dose.entranceAirKermaMicroGy)} mGy</b> at the skin, with backscatter
    (estimate, within ${dose.uncertaintyPercent} %; output ${dose.outputSource})${dose.upperBound ? ', if only the back-up ends it; the AEC usually ends it earlier' : nothing}.
    ${level ? html`${share(level, dose)} reference level ${level.milliGy} mGy ${level.quantity}
      (${level.source}, ${level.year}).` : 'No reference level is set for this.'} ${from}</p>`;
}

/** The back-up is no exposure to compare: of what the AEC ends nothing is known beforehand. */
const share = (level, dose) => (dose.upperBound ? 'Not compared with the' : `${trimmed(level.percent, 0)} % of the`);

const milliGray = (micro) => String(Number((micro / 1000).toPrecision(2)));

/** Where to measure and how to place patient and beam; before a thickness is entered, from the rows. */
export function placing(row, head) {
  const angle = row.centralRayAngleDeg;
  return html`
    <section class="placing" aria-label="Positioning">
      <dl>
        <div class="measure"><dt>Measure</dt> <dd>${row.measureAt || 'along the central ray, positioned as for the exposure'}</dd></div>
        ${line('Centre', row.centring)}
        ${line('Central ray', angle === null ? '' : angleWords(angle))}
        ${line('Breathing', row.breathing)}
        ${line('Shielding', row.shielding)}
        ${line('Receptor', receptorWords(row.receptor, head))}
        ${line('Target exposure index', row.targetExposureIndex)}
        ${line('Notes', row.notes)}
      </dl>
    </section>`;
}

/** Its name; a chart that was kept before names were, has ids. */
const receptorWords = (id, { receptors = [] }) => receptors.find((each) => each.id === id)?.name ?? spoken(id);

const line = (name, text) => (text ? html`<div><dt>${name}</dt> <dd>${text}</dd></div>` : nothing);

function angleWords(degrees) {
  if (degrees === 0) return 'perpendicular (0°)';
  return `${Math.abs(degrees)}° ${degrees > 0 ? 'cephalad' : 'caudad'}`;
}
