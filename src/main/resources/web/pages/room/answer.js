// What to set, large; then where and how to place patient and beam. Everything shown is as the interface answered it.
import { html, nothing } from '/pages/lit-html.js';
import { length, lengthNumber, spoken, trimmed } from '/pages/words.js';
import { chambers } from './chambers.js';

/** The technique of an answer. */
export function technique(state, act) {
  const { answer } = state;
  const { technique: told } = answer;
  return html`
    <section class="technique" aria-labelledby="technique-title">
      <h2 id="technique-title" class="unseen">Technique for ${length(told.asked.thicknessCm, state.unit)}</h2>
      ${told.set.aec ? automatic(told, state) : manual(told, state)}
      ${notMeasured(state)}
      ${kept(state)}
      ${cautions(told)}
      <div class="below">
        ${cost(told, state)}
        <button type="button" id="derived" @click=${act.derive}>How it was derived <kbd>?</kbd></button>
      </div>
    </section>
    ${placing(told.row)}`;
}

const figure = (name, value, unit, extra = nothing, kind = '') => html`
  <div class="fact ${kind}"><dt>${name}</dt><dd><span class="figure">${value}</span>${unit ? html`<span class="unit">${unit}</span>` : nothing}</dd>${extra === nothing ? nothing : html`<dd class="aside">${extra}</dd>`}</div>`;

function manual({ set, row }, state) {
  return html`
    <dl class="set">
      ${figure('Tube voltage', set.kV, 'kV', nothing, 'main kv')}
      ${figure('Current-time product', set.mAs, 'mAs', nothing, 'main')}
      ${figure('Tube current', set.mA, 'mA')}
      ${figure('Time', set.timeMs, 'ms')}
      ${figure('Focal spot', set.focalSpot)}
      ${distance(set, row, state)}
    </dl>`;
}

function automatic({ set, row }, state) {
  return html`
    <dl class="set">
      ${figure('Tube voltage', set.kV, 'kV', nothing, 'main kv')}
      <div class="fact main aec"><dt>AEC chambers</dt><dd>${chambers(set.aec.chambers)}
        <span class="figure">${set.aec.chambers.map(spoken).join(' + ')}</span></dd></div>
      ${figure('Density', set.aec.density > 0 ? `+${set.aec.density}` : set.aec.density)}
      ${figure('Back-up', set.aec.backupMAs, 'mAs')}
      ${figure('Focal spot', set.focalSpot)}
      ${distance(set, row, state)}
    </dl>`;
}

function distance(set, row, { unit, head }) {
  const grid = gridWords(set.grid, head.grids, unit);
  const otherSid = set.sidCm !== row.sidCm ? differs(`SID ${length(set.sidCm, unit)}, chart ${length(row.sidCm, unit)}`) : nothing;
  const otherGrid = set.grid !== row.grid ? differs(`chart: ${gridName(row.grid, head.grids, unit)}`) : nothing;
  return html`
    ${figure('SID', lengthNumber(set.sidCm, unit), unit, otherSid)}
    ${figure('Grid', grid.ratio, grid.focus, otherGrid)}
    ${figure('Receptor', field(row.fieldCm, unit), unit, html`${row.orientation}, ${row.receptor}`, 'receptor')}`;
}

const differs = (words) => html`<span class="differs">${words}</span>`;

/** '24x30' -> '24×30' in the site's unit. */
const field = (written, unit) => written.split('x').map((side) => lengthNumber(side, unit)).join('×');

/** '10:1' and its focal distance, which tells two grids of one ratio apart. */
export function gridWords(id, grids, unit) {
  if (id === 'none') return { ratio: 'none', focus: '' };
  const grid = grids?.find((each) => each.id === id);
  if (!grid) return { ratio: id, focus: '' };
  return { ratio: `${grid.ratio}:1`, focus: grid.focalDistanceCm ? `f ${lengthNumber(grid.focalDistanceCm, unit)}` : 'parallel' };
}

export function gridName(id, grids, unit) {
  const { ratio, focus } = gridWords(id, grids, unit);
  return id === 'none' ? 'no grid' : `${ratio} ${focus}`.trim();
}

/** Somebody looked at a neighbouring band: nobody may take that for the answer to the measurement. */
const notMeasured = ({ measured, typed, unit }) => (measured === null ? nothing : html`
  <p class="tell blocking"><strong>Not the measured thickness.</strong>Measured ${measured} ${unit}, which is outside the chart; this is for
    ${typed} ${unit}. Decide under local rules.</p>`);

function kept({ answer, unit }) {
  if (answer.source !== 'pack') return nothing;
  const asked = answer.question.thicknessCm;
  return html`<p class="tell caution"><strong>Offline.</strong> From the chart kept at this workstation,
    worked out for <b>${length(answer.answeredCm, unit)}</b>${answer.answeredCm === asked ? nothing
      : html`, the nearest kept thickness to ${length(asked, unit)}`}.</p>`;
}

/** The technique's own; the one that stands under every answer is in the foot. */
function cautions({ cautions: all }) {
  const own = all.slice(0, -1);
  return own.length === 0 ? nothing : html`
    <ul class="cautions" aria-label="Cautions">${own.map((text) => html`<li class="tell caution"><strong>Caution.</strong>${text}</li>`)}</ul>`;
}

function cost({ dose, row }, { unit }) {
  const from = html`Row <code>${row.key}</code>, ${lengthNumber(row.bandCm[0], unit)} to under ${length(row.bandCm[1], unit)}.`;
  if (!dose) return html`<p class="cost">Entrance dose: not predicted for this beam. ${from}</p>`;
  const level = dose.referenceLevel;
  const about = dose.upperBound ? 'At most' : 'About';
  return html`<p class="cost">${about} <b>${milliGray(dose.entranceAirKermaMicroGy)} mGy</b> at the skin, with backscatter
    (estimate, within ${dose.uncertaintyPercent} %; output ${dose.outputSource}).
    ${level ? html`${trimmed(level.percent, 0)} % of the reference level ${level.milliGy} mGy ${level.quantity}
      (${level.source}, ${level.year}).` : 'No reference level is set for this.'} ${from}</p>`;
}

const milliGray = (micro) => String(Number((micro / 1000).toPrecision(2)));

/** Where to measure and how to place patient and beam; before a thickness is entered, from the rows. */
export function placing(row) {
  const angle = row.centralRayAngleDeg;
  return html`
    <section class="placing" aria-label="Positioning">
      <dl>
        <div class="measure"><dt>Measure</dt><dd>${row.measureAt || 'along the central ray, positioned as for the exposure'}</dd></div>
        ${line('Centre', row.centring)}
        ${line('Central ray', angle === null ? '' : angleWords(angle))}
        ${line('Breathing', row.breathing)}
        ${line('Shielding', row.shielding)}
        ${line('Filter', row.addedFiltration === 'none' ? '' : row.addedFiltration)}
        ${line('Target exposure index', row.targetExposureIndex)}
        ${line('Notes', row.notes)}
      </dl>
    </section>`;
}

const line = (name, text) => (text ? html`<div><dt>${name}</dt><dd>${text}</dd></div>` : nothing);

function angleWords(degrees) {
  if (degrees === 0) return 'perpendicular (0°)';
  return `${Math.abs(degrees)}° ${degrees > 0 ? 'cephalad' : 'caudad'}`;
}
