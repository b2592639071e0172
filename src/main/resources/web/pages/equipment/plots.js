// A measured tube beside its fit: two plots, and the same numbers in a table.
import { html, nothing } from '/pages/lit-html.js';
import { plot } from '/pages/plot.js';
import { computed, trimmed } from '/pages/words.js';

const mounted = new Map();

/** To be called after everything that was drawn: plots that are new are drawn, those that are gone are taken away. */
export function mountPlots() {
  mounted.forEach((taken, element) => {
    if (element.isConnected) return;
    taken.then((away) => away());
    mounted.delete(element);
  });
  document.querySelectorAll('.fit-plot').forEach((element) => {
    if (element.shown === element.fit) return;
    element.shown = element.fit;
    mounted.get(element)?.then((away) => away());
    mounted.set(element, plot(element, element.describe(element.fit), element.tall).catch((failed) => {
      element.textContent = failed.message;
      return () => {};
    }));
  });
}

/**
 * `fit` has `points`, `curve` and `questionedBeyondPercent` as the interface says them; `uncertaintyPercent` is that of the measurement.
 * Confirmed codes take the place of the word "questioned".
 */
export const fitPanel = (fit, uncertaintyPercent, confirmed = []) => html`
  <div class="plots">
    <figure>
      <figcaption>Output at 1 m, µGy/mAs, over tube voltage, kV. <span class="key measured">dots</span> measured,
        bars ± ${uncertaintyPercent} %;
        <span class="key fitted">line</span> the fit</figcaption>
      <div class="fit-plot plot" role="img" aria-label="Measured output and fit over tube voltage; the table below has the same numbers"
        .fit=${fit} .tall=${300} .describe=${(shown) => outputPlot(shown, uncertaintyPercent)}></div>
    </figure>
    <figure>
      <figcaption>How far each point is off the fit of the <em>other</em> points, %, over tube voltage, kV: this is tested.
        <span class="key beyond">dashes</span> ± ${fit.questionedBeyondPercent} %; <span class="key beyond">rings</span> questioned:
        beyond the dashes, and where all others fit without one of these, that one only</figcaption>
      <div class="fit-plot plot" role="img" .fit=${fit} .tall=${300} .describe=${deviationPlot}
        aria-label="How far each point is off the fit of the others, over tube voltage; the table below has the same numbers"></div>
    </figure>
  </div>
  <div class="scroll" tabindex="0" role="group" aria-label="Measured output and fit"><table class="points">
    <caption>The same in numbers</caption>
    <thead><tr><th scope="col" class="number">kV</th><th scope="col" class="number">Measured, µGy/mAs at 1 m</th>
      <th scope="col" class="number">Fit</th>
      <th scope="col" class="number">Off it (residual), %</th><th scope="col" class="number">Off the fit of the others (tested), %</th>
        ${fit.points.some((point) => point.questioned) ? html`<th scope="col">Word</th>` : nothing}</tr></thead>
    <tbody>${fit.points.map((point) => line(point, confirmed))}</tbody>
  </table></div>`;

const line = (point, confirmed) => html`
  <tr>
    <th scope="row" class="number">${point.kV}</th>
    <td class="number">${trimmed(point.measured, 3)}</td>
    <td class="number">${computed(point.fitted)}</td>
    <td class="number">${signed(point.residualPercent)}</td>
    <td class="number">${signed(point.deviationPercent)}</td>
    ${point.questioned ? html`<td>${word(confirmed.includes(`output-at-${point.kV}`))}</td>` : nothing}
  </tr>`;

const signed = (percent) => `${percent > 0 ? '+' : ''}${percent.toFixed(1)}`;
const word = (stoodBy) => html`<span class="mark caution">${stoodBy ? 'questioned, confirmed' : 'questioned'}</span>`;

function outputPlot(fit, uncertaintyPercent) {
  const measured = new Map(fit.points.map((point) => [point.kV, point.measured]));
  const kV = fit.curve.map((point) => point.kV);
  const most = Math.max(...fit.points.map((point) => point.measured)) * (1 + uncertaintyPercent / 100);
  return (uPlot, ink) => ({
    data: [kV, fit.curve.map((point) => point.fitted), kV.map((one) => measured.get(one) ?? null)],
    options: {
      scales: { x: { time: false }, y: { range: [0, most * 1.05] } },
      legend: { show: false },
      cursor: { show: false },
      series: [{}, { stroke: ink('plot-1'), width: 2, points: { show: false } },
        { stroke: ink('plot-2'), width: 0, paths: () => null, points: { show: true, size: 9, fill: ink('plot-2') } }],
      axes: [{}, {}],
      hooks: { draw: [(drawn) => bars(drawn, fit.points, uncertaintyPercent, ink('plot-2'))] },
    },
  });
}

function bars(drawn, points, uncertaintyPercent, colour) {
  const { ctx } = drawn;
  ctx.save();
  ctx.strokeStyle = colour;
  ctx.lineWidth = 2 * devicePixelRatio;
  points.forEach((point) => {
    const x = drawn.valToPos(point.kV, 'x', true);
    ctx.beginPath();
    ctx.moveTo(x, drawn.valToPos(point.measured * (1 - uncertaintyPercent / 100), 'y', true));
    ctx.lineTo(x, drawn.valToPos(point.measured * (1 + uncertaintyPercent / 100), 'y', true));
    ctx.stroke();
  });
  ctx.restore();
}

function deviationPlot(fit) {
  const beyond = fit.questionedBeyondPercent;
  const off = fit.points.map((point) => point.deviationPercent);
  const most = Math.max(beyond, ...off.map(Math.abs)) * 1.25;
  const dashed = (ink) => ({ stroke: ink('stop'), width: 1, dash: [8, 6], points: { show: false } });
  return (uPlot, ink) => ({
    data: [fit.points.map((point) => point.kV), off, fit.points.map((point, i) => (point.questioned ? off[i] : null)),
      ...[beyond, 0, -beyond].map((at) => fit.points.map(() => at))],
    options: {
      scales: { x: { time: false }, y: { range: [-most, most] } },
      legend: { show: false },
      cursor: { show: false },
      series: [{}, { stroke: ink('plot-2'), width: 0, paths: () => null, points: { show: true, size: 9, fill: ink('plot-2') } },
        { stroke: ink('stop'), width: 0, paths: () => null, points: { show: true, size: 18, width: 2, stroke: ink('stop'), fill: 'transparent' } },
        dashed(ink), { stroke: ink('rule'), width: 1, points: { show: false } }, dashed(ink)],
      axes: [{}, {}],
    },
  });
}
