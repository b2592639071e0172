// The numbers of the plots in a table, for eyes, screen readers and copying.
import { html, nothing } from '/pages/lit-html.js';
import { lengthNumber, trimmed } from '/pages/words.js';
import { unit, bandWords, signed } from '/pages/chart/terms.js';
import { pointsOf } from '/pages/chart/reading.js';

/** In hundredths of a centimetre, so that 10.1 is 10.1. */
const hundredths = (cm) => Math.round(cm * 100);

/** What physics predicts of a row at exactly that thickness; it is asked every 0.5 cm, the console every 0.1 cm. */
function predictions(physics) {
  const found = new Map();
  physics.rows.forEach((row) => row.curve.forEach((point) => found.set(`${row.row} ${hundredths(point.thicknessCm)}`, point)));
  return found;
}

const milli = (micro) => trimmed(micro / 1000, 3);
const NONE = '–';

/** The columns: heading, and what stands there for a point, a prediction or none, and a dose or none. */
const COLUMNS = [
  ['kV set', (point) => point.kV],
  ['mAs set', (point) => (point.row.aec ? `back-up ${point.mAs}` : point.mAs)],
  ['mA', (point) => point.mA ?? 'AEC'],
  ['Time, ms', (point) => point.timeMs ?? 'AEC'],
  ['kV by the rule', (point) => trimmed(point.exact.kV, 2)],
  ['mAs by the rule', (point) => trimmed(point.exact.mAs, 3)],
  ['mAs that keeps the exposure even', (point, found) => (found ? trimmed(found.evenMAs, 3) : NONE)],
  ['Receptor exposure, dB', (point, found) => (found ? signed(found.receptorExposureDb, 2) : NONE)],
  ['Entrance kerma, mGy', (point, found, dose) => (dose ? milli(dose.entranceAirKermaMicroGy) : NONE)],
  ['Incident kerma, mGy', (point, found, dose) => (dose ? milli(dose.incidentAirKermaMicroGy) : NONE)],
  ['Of the reference level, %', (point, found, dose) => percent(dose?.referenceLevelPercent)],
  ['Kerma-area product, µGy m²', (point, found, dose) => (dose ? trimmed(dose.kermaAreaProductMicroGyM2, 3) : NONE)],
];

const percent = (share) => (share === null || share === undefined ? NONE : trimmed(share, 1));

export function figures(now, changed) {
  const predicted = predictions(now.physics);
  const at = (point) => predicted.get(`${point.row.row} ${hundredths(point.thicknessCm)}`);
  const points = pointsOf(now.courses)
    .filter((point) => now.every === 10 || hundredths(point.thicknessCm) % 50 === 0 || at(point));
  return html`
    <label class="field">Steps of thickness<select id="steps" @change=${(event) => changed({ every: Number(event.target.value) })}>
      <option value="50" .selected=${now.every === 50}>0.5 cm, band ends and reference</option>
      <option value="10" .selected=${now.every === 10}>0.1 cm</option></select></label>
    <div class="scroll figures" tabindex="0" role="region" aria-label="The numbers of the plots"><table id="figures">
      <thead><tr><th scope="col" class="number">Thickness, ${unit()}</th><th scope="col">Band, ${unit()}</th>
        ${COLUMNS.map(([head]) => html`<th scope="col" class="number">${head}</th>`)}</tr></thead>
      <tbody>${points.map((point) => line(point, at(point)))}</tbody>
    </table></div>`;
}

const line = (point, found) => html`
  <tr data-cm=${point.thicknessCm}><th scope="row" class="number">${lengthNumber(point.thicknessCm, unit())}</th>
    <td>${bandWords(point.row.bandCm)}</td>
    ${COLUMNS.map(([, text]) => html`<td class="number">${text(point, found, point.dose) ?? nothing}</td>`)}</tr>`;
