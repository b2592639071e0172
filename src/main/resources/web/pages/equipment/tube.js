// The tube of a room: what was measured of it, how the beam model fits, when it is to be measured again.
import { html, nothing } from '/pages/lit-html.js';
import { computed, day, trimmed } from '/pages/words.js';
import { fitPanel } from '/pages/equipment/plots.js';

/** Whether the tube is to be measured, in a word; `line` is the room's in the list of rooms. */
export const dueWord = (line) => (line.outputMeasuredOn === null
  ? html`<span class="mark caution">never measured</span>`
  : line.outputOverdue ? html`<span class="mark caution">overdue</span>` : html`<span class="mark">in time</span>`);

const filtration = (mmAl, mmCu) => `${mmAl} mm Al${mmCu ? ` and ${mmCu} mm Cu` : ''}`;

export const tubePanel = ({ room, line, equipment, calibration }) => html`
  <section aria-labelledby="tube-heading">
    <h2 id="tube-heading">Tube and measured output</h2>
    <dl class="facts">
      <dt>Measured</dt><dd>${line.outputMeasuredOn ? html`${day(line.outputMeasuredOn)}, due again by ${day(line.outputDue)}`
        : 'never'} ${dueWord(line)}</dd>
      <dt>Focal spots</dt><dd>${room.tube.focalSpots.map((spot) => `${spot.name} ${spot.nominalMm} mm`).join(', ')}</dd>
      <dt>Anode angle</dt><dd>${room.tube.anodeAngleDeg}°</dd>
      <dt>Total filtration</dt>
      <dd>${filtration(room.tube.totalFiltration.mmAl, room.tube.totalFiltration.mmCu)} as stated${fitted(calibration)}</dd>
      ${calibration.halfValueLayer ? halfValueLayer(calibration.halfValueLayer) : nothing}
      <dt>In force</dt><dd>revision ${equipment.revision} since ${day(equipment.inForceFrom)},
        entered by ${equipment.installedBy}: ${equipment.reason || 'no reason given'}</dd>
    </dl>
    ${calibration.calibrated ? nothing : html`<p class="tell caution"><strong>Not calibrated.</strong>${calibration.reason}</p>`}
    ${calibration.points.length ? fitPanel(calibration, room.tube.output.uncertaintyPercent, calibration.confirmed) : nothing}
    ${!calibration.points.length && room.tube.output ? measuredAlone(room.tube.output) : nothing}
    ${calibration.sentences.length ? html`<h3>What is to be said of it</h3><ul>${calibration.sentences.map((said) =>
      html`<li>${said}</li>`)}</ul>` : nothing}
    <p class="small">${calibration.limits}</p>
  </section>`;

const fitted = ({ filtration: fit }) => (fit
  ? `; ${filtration(fit.fittedMmAl, fit.fittedMmCu)} as the half-value layer has it
    (stated at the measurement: ${filtration(fit.statedMmAl, fit.statedMmCu)})` : '');

const halfValueLayer = (layer) => html`
  <dt>Half-value layer</dt><dd>${layer.measured} mm Al at ${layer.kV} kV measured; the model has
    ${layer.modelledAsStated === null ? 'none' : `${trimmed(layer.modelledAsStated, 2)} mm Al`} with the stated filtration${
      layer.modelledAsFitted === null ? '' : `, ${trimmed(layer.modelledAsFitted, 2)} mm Al with the fitted one`}</dd>`;

const measuredAlone = (output) => html`
  <table><caption>Measured output, µGy/mAs at 1 m</caption>
    <thead><tr><th scope="col" class="number">kV</th><th scope="col" class="number">Output</th></tr></thead>
    <tbody>${output.microGyPerMAsAtOneMetre.map((point) => html`<tr><th scope="row" class="number">${point.kV}</th>
      <td class="number">${computed(point.output)}</td></tr>`)}</tbody>
  </table>`;
