// The plots of an examination: one cursor for all of them, moved by pointer or by the slider.
import { html, render } from '/pages/lit-html.js';
import { plot } from '/pages/plot.js';
import { unit } from '/pages/chart/terms.js';
import { pointsOf, predictedNear, readingWords } from '/pages/chart/reading.js';
import { series, inUnit, ends } from '/pages/chart/lines.js';

const HEIGHT = 250;
const FONT = '13px "Liberation Sans", Arial, sans-serif';

/** Draws all plots that have a place in the document and joins them to the slider; gives what takes them away again. */
export async function drawPlots(now) {
  const points = pointsOf(now.courses);
  if (points.length === 0) return () => {};
  const cursor = joined(points, now);
  cursor.begin();
  const removals = [];
  for (const one of series(now)) {
    const place = document.getElementById(one.place);
    if (place) removals.push(await plot(place, describe(one, now, cursor), HEIGHT));
  }
  return () => removals.forEach((remove) => remove());
}

function describe(one, now, cursor) {
  const [low, high] = ends(now.courses).map(inUnit);
  return (uPlot, ink) => ({
    options: {
      legend: { show: false },
      cursor: { y: false, points: { show: false }, drag: { setScale: false, x: false, y: false } },
      scales: { x: { time: false, range: () => [low, high] }, y: { range: one.range, ...(one.logarithmic ? { distr: 3 } : {}) } },
      axes: axes(one, ink),
      series: [{}, ...one.lines.map((line) => ({
        label: line.name, stroke: ink(line.ink), width: line.width ?? 2, dash: line.dash, points: { show: line.points ?? false, size: 6 },
        paths: line.steps ? uPlot.paths.stepped({ align: 1 }) : undefined,
      }))],
      hooks: {
        drawClear: [(u) => shade(u, now.courses, ink)], ready: [cursor.join], destroy: [cursor.part], setCursor: [cursor.pointed],
      },
    },
    data: uPlot.join(one.lines.map((line) => line.data)),
  });
}

function axes(one, ink) {
  const grid = { stroke: ink('hair'), width: 1 };
  const own = one.splits ? { splits: one.splits, filter: (u, splits) => splits } : {};
  return [
    { label: `Thickness, ${unit()}`, labelSize: 22, size: 34, font: FONT, labelFont: FONT, grid },
    { size: 56, font: FONT, grid, values: (u, splits) => splits.map(one.label), ...own },
  ];
}

/** Every second band is shaded, and the edges of each are marked. */
function shade(u, courses, ink) {
  const { ctx, bbox } = u;
  const at = (cm) => Math.min(Math.max(u.valToPos(inUnit(cm), 'x', true), bbox.left), bbox.left + bbox.width);
  ctx.save();
  ctx.strokeStyle = ink('rule');
  ctx.setLineDash([3, 3]);
  courses.rows.forEach((row, index) => {
    const [left, right] = row.bandCm.map(at);
    ctx.fillStyle = ink(index % 2 === 0 ? 'paper' : 'sheet');
    ctx.fillRect(left, bbox.top, right - left, bbox.height);
    [left, right].forEach((x) => {
      ctx.beginPath();
      ctx.moveTo(x, bbox.top);
      ctx.lineTo(x, bbox.top + bbox.height);
      ctx.stroke();
    });
  });
  ctx.restore();
}

/** One cursor for several plots, a slider and the reading beside it. */
function joined(points, now) {
  const plots = new Set();
  const slider = document.getElementById('thickness');
  const reading = document.getElementById('reading');
  let moving = false;
  const move = (u, index) => {
    moving = true;
    u.setCursor({ left: u.valToPos(inUnit(points[index].thicknessCm), 'x'), top: 5 });
    moving = false;
  };
  const show = (index, except) => {
    const words = readingWords(points[index], predictedNear(points[index], now.physics), now.courses);
    slider.value = String(index);
    slider.setAttribute('aria-valuetext', words.map(([name, text]) => `${name}: ${text}`).join('; '));
    render(html`<dl>${words.map(([name, text]) => html`<div><dt>${name}</dt><dd>${text}</dd></div>`)}</dl>`, reading);
    plots.forEach((u) => u !== except && move(u, index));
  };
  slider.max = String(points.length - 1);
  slider.oninput = () => show(Number(slider.value), null);
  return {
    begin: () => show(middle(points), null),
    join: (u) => {
      plots.add(u);
      move(u, Number(slider.value));
    },
    part: (u) => plots.delete(u),
    pointed: (u) => {
      if (!moving && u.cursor.left >= 0 && plots.has(u)) show(nearest(points, u.posToVal(u.cursor.left, 'x')), u);
    },
  };
}

const away = (point, x) => Math.abs(inUnit(point.thicknessCm) - x);

const nearest = (points, x) => points.reduce((best, point, at) => (away(point, x) < away(points[best], x) ? at : best), 0);

/** Where the reading begins: at the reference thickness of the middle row. */
function middle(points) {
  const rows = [...new Set(points.map((point) => point.row))];
  const row = rows[Math.floor((rows.length - 1) / 2)];
  return Math.max(0, points.findIndex((point) => point.row === row && point.thicknessCm >= row.referenceThicknessCm));
}
