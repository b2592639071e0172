// Console, grids, receptors and supports of a room, compactly.
import { html, nothing } from '/pages/lit-html.js';
import { site } from '/pages/shell.js';
import { fieldSize, length, lengthNumber, spoken } from '/pages/words.js';
import { fragment } from '/pages/address.js';

const KINDS = {
  csi: 'caesium iodide panel',
  gadox: 'gadolinium oxysulfide panel',
  'storage-phosphor': 'storage phosphor',
  'film-screen': 'film and screen',
};

const unit = () => site().lengthUnit;
const range = (cm) => `${lengthNumber(cm[0], unit())} to ${length(cm[1], unit())}`;

/** Even steps are said as such: 40 to 150 by 1. */
function stations(all) {
  const steps = new Set(all.slice(1).map((one, i) => (one - all[i]).toFixed(3)));
  return all.length > 3 && steps.size === 1
    ? `${all[0]} to ${all.at(-1)} by ${Number([...steps][0])}`
    : all.join(' · ');
}

export const inventoryPanel = (room, mayEnter) => html`
  <section aria-labelledby="console-heading">
    <h2 id="console-heading">Console</h2>
    <dl class="facts">
      <dt>Waveform</dt><dd>${spoken(room.generator.waveform)}</dd>
      <dt>kV stations</dt><dd>${stations(room.generator.kVStations)}</dd>
      <dt>mAs stations</dt><dd>${stations(room.generator.mAsStations)}</dd>
      <dt>mA stations</dt><dd>${stations(room.generator.mAStations)}</dd>
      <dt>Shortest time</dt><dd>${room.generator.shortestTimeMs} ms</dd>
      <dt>AEC</dt><dd>${room.generator.aec ? `densities ${room.generator.aec.densities.join(', ')};
        backup up to ${room.generator.aec.largestBackupMAs} mAs` : 'none'}</dd>
    </dl>
    ${rating(room.tube.focalSpots)}
  </section>
  <section aria-labelledby="grids-heading">
    <h2 id="grids-heading">Grids</h2>
    ${room.grids.length ? html`<div class="cards">${room.grids.map((grid) => gridCard(grid, mayEnter))}</div>`
      : html`<p>The room has no grid.</p>`}
  </section>
  <section aria-labelledby="receptors-heading"><h2 id="receptors-heading">Receptors</h2>${receptors(room.receptors)}</section>
  <section aria-labelledby="supports-heading"><h2 id="supports-heading">Supports</h2>${supports(room.supports)}</section>`;

const rating = (spots) => html`
  <div class="scroll" tabindex="0" role="group" aria-label="Power of the focal spots"><table>
    <caption>Power that a focal spot takes, kW, for an exposure of</caption>
    <thead><tr><th scope="col">Focal spot</th>${times(spots).map((ms) => html`<th scope="col" class="number">${ms} ms</th>`)}</tr></thead>
    <tbody>${spots.map((spot) => html`<tr><th scope="row">${spot.name}, ${spot.nominalMm} mm</th>
      ${times(spots).map((ms) => html`<td
        class="number">${spot.ratings.find((one) => one.timeMs === ms)?.kW ?? '–'}</td>`)}</tr>`)}</tbody>
  </table></div>`;

const times = (spots) => [...new Set(spots.flatMap((spot) => spot.ratings.map((one) => one.timeMs)))].sort((a, b) => a - b);

const gridCard = (grid, mayEnter) => html`
  <div class="panel">
    <h3>${grid.id}</h3>
    <dl class="facts">
      <dt>Ratio</dt><dd>${grid.ratio}:1, ${grid.linesPerCm} lines/cm</dd>
      <dt>Focus</dt><dd>${grid.focalDistanceCm === null ? 'parallel' : length(grid.focalDistanceCm, unit())}${
        grid.focalRangeCm ? `, used from ${range(grid.focalRangeCm)}` : ''}</dd>
    </dl>
    <table>
      <caption>mAs with the grid over mAs without</caption>
      <thead><tr>${grid.factors.map((one) => html`<th scope="col" class="number">${one.kV} kV</th>`)}</tr></thead>
      <tbody><tr>${grid.factors.map((one) => html`<td class="number">${one.factor}</td>`)}</tr></tbody>
    </table>
    ${mayEnter ? html`<p><a class="button" href=${fragment({ view: 'grid', grid: grid.id }, {})}>Change the factors of ${grid.id}</a></p>`
      : nothing}
  </div>`;

const receptors = (all) => html`
  <div class="scroll"><table>
    <thead><tr><th scope="col">Receptor</th><th scope="col">Kind</th><th scope="col">Sizes, ${unit()}</th>
      <th scope="col" class="number">Target exposure index</th></tr></thead>
    <tbody>${all.map((one) => html`<tr><th scope="row">${one.name} <span class="small">${one.id}</span></th>
      <td>${KINDS[one.kind] ?? spoken(one.kind)}</td>
      <td>${one.sizesCm.map((size) => fieldSize(size, unit(), ' x ')).join(', ')}</td><td class="number">${one.targetExposureIndex}</td></tr>`)}</tbody>
  </table></div>`;

const supports = (all) => html`
  <div class="scroll"><table>
    <thead><tr><th scope="col">Support</th><th scope="col" class="number">Gap to the receptor</th><th scope="col">SID</th>
      <th scope="col">Grids</th>
      <th scope="col">Receptors</th><th scope="col">AEC chambers</th></tr></thead>
    <tbody>${all.map((one) => html`<tr><th scope="row">${spoken(one.support)}</th>
      <td class="number">${length(one.receptorGapCm, unit())}</td>
      <td>${one.sidRangeCm ? range(one.sidRangeCm) : one.sidStopsCm.map((stop) => length(stop, unit())).join(', ')}</td>
      <td>${one.grids.join(', ')}</td><td>${one.receptors.join(', ')}</td><td>${one.aecChambers.join(', ') || 'none'}</td></tr>`)}</tbody>
  </table></div>`;
