// One thickness of an examination in words: what the room is told there, and what physics makes of it.
import { lengthNumber, trimmed } from '/pages/words.js';
import { bandWords, signed, unit } from '/pages/chart/terms.js';

/** Every thickness that the room was asked for, with what it was told, by ascending thickness. */
export const pointsOf = (courses) => courses.rows.flatMap((row) => row.points.map((point) => ({ ...point, row })));

/** Whether the site's reference level is of the kerma without backscatter. */
export const isIncident = (courses) => courses.referenceLevel?.quantityId === 'incident-air-kerma';

const away = (one, point) => Math.abs(one.thicknessCm - point.thicknessCm);

/** The nearest thickness that beam physics predicts in the same row; null where it predicts none. */
export function predictedNear(point, physics) {
  const curve = physics.rows.find((row) => row.row === point.row.row)?.curve ?? [];
  return curve.reduce((best, one) => (best === null || away(one, point) < away(best, point) ? one : best), null);
}

const settingWords = (point) => `${point.kV} kV, ${point.row.aec ? `AEC, back-up ${point.mAs} mAs`
  : `${point.mAs} mAs (${point.mA} mA, ${trimmed(point.timeMs, 1)} ms)`}`;

const ruleWords = ({ row, exact }) => `${trimmed(exact.kV, 2)} kV, ${row.aec ? 'back-up ' : ''}${trimmed(exact.mAs, 2)} mAs`;

function receptorWords(point, near) {
  if (near === null) return 'not predicted';
  const where = near.thicknessCm === point.thicknessCm ? '' : ` at ${lengthNumber(near.thicknessCm, unit())} ${unit()}`;
  return `${signed(near.receptorExposureDb, 2)} dB${where}`;
}

function skinWords(dose, courses) {
  if (dose === null) return 'not predicted';
  const incident = isIncident(courses);
  const kerma = trimmed((incident ? dose.incidentAirKermaMicroGy : dose.entranceAirKermaMicroGy) / 1000, 3);
  const share = dose.referenceLevelPercent === null ? '' : `, ${trimmed(dose.referenceLevelPercent, 0)} % of the reference level`;
  return `${dose.upperBound ? 'at most ' : ''}${kerma} mGy ${incident ? 'without' : 'with'} backscatter${share}`;
}

/** Pairs of a name and its words. */
export const readingWords = (point, near, courses) => [
  ['Thickness', `${lengthNumber(point.thicknessCm, unit())} ${unit()}, band ${bandWords(point.row.bandCm)}`],
  ['Set by the console', settingWords(point)],
  ['Exact, before stations', ruleWords(point)],
  ['At the receptor, predicted of the exact values', receptorWords(point, near)],
  ['At the skin, estimated of what is set', skinWords(point.dose, courses)],
];
