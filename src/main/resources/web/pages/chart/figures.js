// The numbers of the plots in a table, for eyes, screen readers and copying.
import { html } from '/pages/lit-html.js';
import { lengthNumber, trimmed } from '/pages/words.js';
import { unit, bandWords, signed } from '/pages/chart/terms.js';
import { pointsOf } from '/pages/chart/curves.js';

/** In hundredths of a centimetre, so that 10.1 is 10.1. */
const hundredths = (cm) => Math.round(cm * 100);

/** What physics predicts of a row at exactly that thickness; it is asked every 0.5 cm, the console every 0.1 cm. */
function predictions(physics) {
  const found = new Map();
  physics.rows.forEach((row) => row.curve.forEach((point) => found.set(`${row.row} ${hundredths(point.thicknessCm)}`, point)));
  return found;
}

export function figures(now, changed) {
  const predicted = predictions(now.physics);
  const { courses } = now;
  const at = (point) => predicted.get(`${point.row.row} ${hundredths(point.thicknessCm)}`);
  const points = pointsOf(courses).filter((point) => now.every === 10 || hundredths(point.thicknessCm) % 50 === 0 || at(point));
  const cell = (value) => html`<td class="number">${value}</td>`;
  const product = courses.kermaAreaProductLevel !== null;
  return html`
    <label class="field">Steps of thickness<select id="steps" @change=${(event) => changed({ every: Number(event.target.value) })}>
      <option value="50" ?selected=${now.every === 50}>0.5 cm, band ends and reference</option>
      <option value="10" ?selected=${now.every === 10}>0.1 cm</option></select></label>
    <div class="scroll figures" tabindex="0" role="region" aria-label="The numbers of the plots"><table id="figures">
      <thead><tr>
        <th scope="col" class="number">Thickness, ${unit()}</th><th scope="col">Band, ${unit()}</th>
        <th scope="col" class="number">kV set</th><th scope="col" class="number">mAs set</th><th scope="col" class="number">mA</th><th scope="col" class="number">Time, ms</th>
        <th scope="col" class="number">kV by the rule</th><th scope="col" class="number">mAs by the rule</th>
        <th scope="col" class="number">mAs that keeps exposure even</th><th scope="col" class="number">Receptor exposure, dB</th>
        <th scope="col" class="number">Entrance kerma, mGy</th><th scope="col" class="number">Incident kerma, mGy</th><th scope="col" class="number">Of the reference level, %</th>
        ${product ? html`<th scope="col" class="number">Kerma-area product, µGy m²</th>` : ''}
      </tr></thead>
      <tbody>${points.map((point) => html`<tr>
        <th scope="row" class="number">${lengthNumber(point.thicknessCm, unit())}</th><td>${bandWords(point.row.bandCm)}</td>
        ${cell(point.kV)}${cell(point.row.aec ? `back-up ${point.mAs}` : point.mAs)}${cell(point.mA ?? 'AEC')}${cell(point.timeMs ?? 'AEC')}
        ${cell(trimmed(point.exact.kV, 2))}${cell(trimmed(point.exact.mAs, 3))}
        ${predictedCells(at(point), cell)}
        ${doseCells(point.dose, cell)}
        ${product ? cell(point.dose === null ? '–' : trimmed(point.dose.kermaAreaProductMicroGyM2, 3)) : ''}</tr>`)}</tbody>
    </table></div>`;
}

const predictedCells = (found, cell) => (found ? html`${cell(trimmed(found.evenMAs, 3))}${cell(signed(found.receptorExposureDb, 2))}`
  : html`${cell('–')}${cell('–')}`);

const doseCells = (dose, cell) => (dose === null ? html`${cell('–')}${cell('–')}${cell('–')}`
  : html`${cell(trimmed(dose.entranceAirKermaMicroGy / 1000, 3))}${cell(trimmed(dose.incidentAirKermaMicroGy / 1000, 3))}${
    cell(dose.referenceLevelPercent === null ? 'no level' : trimmed(dose.referenceLevelPercent, 1))}`);
