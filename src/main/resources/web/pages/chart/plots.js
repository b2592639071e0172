// The plots of an examination: one cursor for all of them, moved by pointer or by the slider.
import { html, render } from '/pages/lit-html.js';
import { plot } from '/pages/plot.js';
import { unit } from '/pages/chart/terms.js';
import { pointsOf, readingWords } from '/pages/chart/curves.js';
import { series, inUnit } from '/pages/chart/lines.js';

/** Draws all plots that have a place in the document and joins them to the slider; gives what takes them away again. */
export async function drawPlots(now) {
  const points = pointsOf(now.courses);
  if (points.length === 0) return () => {};
  const cursor = joined(points, now);
  const removals = [];
  for (const one of series(now)) {
    const place = document.getElementById(one.place);
    if (place) removals.push(await plot(place, describe(one, now, cursor), 250));
  }
  cursor.begin();
  return () => removals.forEach((remove) => remove());
}

function describe(one, now, cursor) {
  return (uPlot, ink) => {
    const lines = one.lines.map((line) => ({
      label: line.name, stroke: ink(line.ink), width: line.width ?? 2, dash: line.dash, points: { show: line.points ?? false },
      paths: line.steps ? uPlot.paths.stepped({ align: 1 }) : undefined,
    }));
    return {
      options: {
        legend: { show: false },
        cursor: { y: false, drag: { setScale: false } },
        scales: { x: { time: false }, y: { range: one.range, ...(one.logarithmic ? { distr: 3 } : {}) } },
        axes: [
          { label: `Thickness, ${unit()}`, labelSize: 22, labelFont: '13px sans-serif', size: 36 },
          { size: 56, values: (u, splits) => splits.map(one.label), ...(one.splits ? { splits: one.splits, filter: (u, splits) => splits } : {}) },
        ],
        series: [{}, ...lines],
        hooks: { drawClear: [(u) => shade(u, now.courses, ink)], ready: [cursor.join], destroy: [cursor.part], setCursor: [cursor.pointed] },
      },
      data: uPlot.join(one.lines.map((line) => line.data)),
    };
  };
}

/** Every second band is shaded, and each band's edges are marked. */
function shade(u, courses, ink) {
  const { ctx, bbox } = u;
  ctx.save();
  courses.rows.forEach((row, at) => {
    const [left, right] = row.bandCm.map((cm) => Math.min(Math.max(u.valToPos(inUnit(cm), 'x', true), bbox.left), bbox.left + bbox.width));
    ctx.fillStyle = at % 2 === 0 ? ink('paper') : ink('sheet');
    ctx.fillRect(left, bbox.top, right - left, bbox.height);
    ctx.strokeStyle = ink('rule');
    ctx.setLineDash([3, 3]);
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
  const show = (index, except) => {
    const point = points[index];
    const words = readingWords(point, predictedNear(point, now.physics), now.courses);
    slider.value = String(index);
    slider.setAttribute('aria-valuetext', words.map(([name, text]) => `${name}: ${text}`).join('; '));
    render(html`<dl>${words.map(([name, text]) => html`<div><dt>${name}</dt><dd>${text}</dd></div>`)}</dl>`, reading);
    moving = true;
    plots.forEach((u) => {
      if (u !== except) u.setCursor({ left: u.valToPos(inUnit(point.thicknessCm), 'x'), top: 5 }, false);
    });
    moving = false;
  };
  slider.max = String(points.length - 1);
  slider.oninput = () => show(Number(slider.value), null);
  return {
    join: (u) => {
      plots.add(u);
      u.setCursor({ left: u.valToPos(inUnit(points[Number(slider.value)].thicknessCm), 'x'), top: 5 }, false);
    },
    part: (u) => plots.delete(u),
    pointed: (u) => {
      if (!moving && u.cursor.left >= 0 && plots.has(u)) show(nearest(points, u.posToVal(u.cursor.left, 'x')), u);
    },
    begin: () => show(middle(points), null),
  };
}

const distance = (point, x) => Math.abs(inUnit(point.thicknessCm) - x);

const nearest = (points, x) => points.reduce((best, point, at) => (distance(point, x) < distance(points[best], x) ? at : best), 0);

/** Where the reading begins: at the reference thickness of the middle row. */
function middle(points) {
  const rows = [...new Set(points.map((point) => point.row))];
  const row = rows[Math.floor((rows.length - 1) / 2)];
  const at = points.findIndex((point) => point.row === row && point.thicknessCm >= row.referenceThicknessCm);
  return Math.max(0, at);
}

function predictedNear(point, physics) {
  const curve = physics.rows.find((row) => row.row === point.row.row)?.curve ?? [];
  return curve.reduce((best, one) => (best === null || Math.abs(one.thicknessCm - point.thicknessCm) < Math.abs(best.thicknessCm - point.thicknessCm)
    ? one : best), null);
}

