// What is plotted, as the interface gives it: one line is a list of thicknesses and a list of values, null where it breaks off.
import { unit } from '/pages/chart/terms.js';
import { computed } from '/pages/words.js';
import { isIncident } from '/pages/chart/reading.js';

const CM_PER_INCH = 2.54;

/** A thickness in the site's unit, not rounded. */
export const inUnit = (cm) => (unit() === 'in' ? cm / CM_PER_INCH : cm);

/** Just inside the edge of a band: where a line ends that begins anew on the other side. */
const INSIDE_CM = 0.001;

/** `value` of each point of the rows; `toEdge` draws on to the end of the band, which steps do. */
function line(rows, pointsOf, value, toEdge) {
  const xs = [];
  const ys = [];
  const add = (cm, y) => {
    xs.push(inUnit(cm));
    ys.push(y);
  };
  rows.forEach((row) => {
    const points = pointsOf(row);
    points.forEach((point, at) => {
      const before = points[at - 1];
      if (before && isBroken(row, before, point)) add(before.thicknessCm + INSIDE_CM, null);
      add(point.thicknessCm, value(point));
    });
    if (points.length > 0) {
      const last = points.at(-1);
      if (toEdge && row.bandCm[1] - last.thicknessCm < 0.15) add(row.bandCm[1] - 2 * INSIDE_CM, value(last));
      add(row.bandCm[1] - INSIDE_CM, null);
    }
  });
  return [xs, ys];
}

/** Whether something between two points was refused or not predicted. */
const isBroken = (row, before, point) => (row.refused ?? row.notPredicted ?? [])
  .some((one) => one.fromCm > before.thicknessCm && one.fromCm < point.thicknessCm);

const settings = (row) => row.points;
const predictions = (row) => row.curve;
const costed = (row) => row.points.filter((point) => point.dose !== null);

/** The thinnest and the thickest that the examination covers. */
export const ends = ({ rows }) => [rows[0].bandCm[0], Math.max(...rows.map((row) => row.bandCm[1]))];

/** A line that runs through from end to end. */
const level = (courses, value) => ({ name: 'level', ink: 'plot-3', dash: [10, 5], data: [ends(courses).map(inUnit), [value, value]] });

const atLeast = (span) => (u, low, high) => {
  const middle = (low + high) / 2;
  const half = Math.max(span, (high - low) * 1.15) / 2;
  return [middle - half, middle + half];
};
const fromNothing = (u, low, high) => [0, (high || 1) * 1.1];
const logarithmic = (u, low, high) => [low / 1.2, high * 1.2];

/** 1, 2, 5, 10 … within the range, and the steps between where that leaves fewer than three. */
function splits(u, axis, low, high) {
  const within = (steps) => [-3, -2, -1, 0, 1, 2, 3]
    .flatMap((power) => steps.map((step) => Number((step * 10 ** power).toPrecision(3))))
    .filter((value) => value >= low && value <= high);
  const coarse = within([1, 2, 5]);
  return coarse.length >= 3 ? coarse : within([1, 1.25, 1.6, 2, 2.5, 3.2, 4, 5, 6.3, 8]);
}

/** All plots of an examination, each for the place of that id. */
export function series({ courses, physics }) {
  const kerma = isIncident(courses) ? 'incidentAirKermaMicroGy' : 'entranceAirKermaMicroGy';
  const { rows } = courses;
  const beside = courses.referenceLevel ? [level(courses, courses.referenceLevel.inBase / 1000)] : [];
  const product = courses.kermaAreaProductLevel ? [level(courses, courses.kermaAreaProductLevel.inBase)] : [];
  return [
    {
      place: 'plot-kv', range: atLeast(6), label: computed,
      lines: [
        { name: 'set', ink: 'plot-1', steps: true, data: line(rows, settings, (point) => point.kV, true) },
        { name: 'rule', ink: 'plot-2', dash: [6, 4], data: line(rows, settings, (point) => point.exact.kV, true) },
      ],
    },
    {
      place: 'plot-mas', logarithmic: true, range: logarithmic, splits, label: computed,
      lines: [
        { name: 'set', ink: 'plot-1', steps: true, data: line(rows, settings, (point) => point.mAs, true) },
        { name: 'rule', ink: 'plot-2', dash: [6, 4], data: line(rows, settings, (point) => point.exact.mAs, true) },
        { name: 'even', ink: 'plot-3', dash: [2, 3], data: line(physics.rows, predictions, (point) => point.evenMAs, false) },
      ],
    },
    {
      place: 'plot-exposure', range: atLeast(4), label: (value) => computed(value).replace('-', '\u2212'),
      lines: [
        { ...level(courses, 0), ink: 'rule', width: 1, dash: [4, 4] },
        {
          name: 'predicted', ink: 'plot-1', points: true,
          data: line(physics.rows, predictions, (point) => point.receptorExposureDb, false),
        },
      ],
    },
    {
      place: 'plot-kerma', range: fromNothing, label: computed,
      lines: [{ name: 'estimate', ink: 'plot-1', data: line(rows, costed, (point) => point.dose[kerma] / 1000, true) }, ...beside],
    },
    {
      place: 'plot-product', range: fromNothing, label: computed,
      lines: [
        { name: 'estimate', ink: 'plot-1', data: line(rows, costed, (point) => point.dose.kermaAreaProductMicroGyM2, true) }, ...product],
    },
  ];
}
