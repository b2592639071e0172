// The fields of a row as columns of the table and as facts of an opened row.
import { fieldSize, lengthNumber, spoken } from '/pages/words.js';
import { bandWords, controlWords, group, ruleWords, unit } from '/pages/chart/terms.js';

/** A field whose text stands on the screen as it is. */
const plain = (name, head, more) => ({ name, head, text: (row) => row[name] ?? '', ...more });

/** A figure, or words where the row says nothing; sorted as a number. */
const figure = (name, head, otherwise, more) => ({
  name, head, number: true,
  text: (row) => (row[name] === null ? otherwise : String(row[name])), sort: (row) => row[name] ?? -Infinity, ...more,
});

/** A length, in the site's unit. */
const lengthOf = (name, head, more) => ({
  name, head: `${head}, ${unit()}`, number: true, text: (row) => lengthNumber(row[name], unit()), sort: (row) => row[name], ...more,
});

const main = true;

/**
 * The columns: `name` as rows have it, `head`, `text(row)`, `sort(row)` where not the text, `number` for figures (but where
 * `isWords(row)`), `main` where always shown.
 */
export const columns = () => [
  { name: 'patientGroup', head: 'Patients', main, text: (row) => group(row.patientGroup) },
  { name: 'support', head: 'Support', main, text: (row) => spoken(row.support) },
  {
    name: 'band', head: `Thickness, ${unit()}`, main, number: true,
    text: (row) => bandWords(row.bandCm), sort: (row) => row.bandCm[0],
  },
  figure('kV', 'kV', '', { main }),
  {
    name: 'mAs', head: 'mAs', main, number: true, isWords: (row) => row.aec !== null,
    text: controlWords, sort: (row) => row.mAs ?? row.aec.backupMAs,
  },
  plain('focalSpot', 'Focal spot', { main }),
  plain('grid', 'Grid', { main }),
  lengthOf('sidCm', 'SID', { main }),
  lengthOf('referenceThicknessCm', 'Reference thickness'),
  { name: 'thicknessMethod', head: 'With thickness', text: (row) => ruleWords(row.thicknessMethod, row.thicknessRate) },
  plain('receptor', 'Receptor'),
  { name: 'fieldCm', head: `Field, ${unit()}`, text: (row) => fieldSize(row.fieldCm, unit()) },
  plain('orientation', 'Orientation'),
  plain('addedFiltration', 'Added filter'),
  figure('targetExposureIndex', 'Target exposure index', 'of the receptor'),
  { name: 'kVWindow', head: 'kV allowed', text: (row) => (row.kVWindow ? row.kVWindow.join(' to ') : 'as the generator') },
  figure('longestTimeMs', 'Longest time, ms', 'no limit'),
  figure('centralRayAngleDeg', 'Ray angle, degrees', ''),
  plain('measureAt', 'Measure at'),
  plain('centring', 'Centring'),
  plain('breathing', 'Breathing'),
  plain('shielding', 'Shielding'),
  plain('notes', 'Notes'),
];
