// The chart's terms in words that people use. Nothing here changes a number but its unit of length.
import { site } from '/pages/shell.js';
import { fieldSize, lengthNumber, length, spoken, trimmed } from '/pages/words.js';

const labels = (list, id) => new Map((list ?? []).map((one) => [one[id], one]));
let known = null;

function terms() {
  known ??= {
    parts: labels(site().bodyParts, 'bodyPart'),
    projections: labels(site().projections, 'projection'),
    groups: labels(site().patientGroups, 'id'),
    regions: site().regions,
  };
  return known;
}

export const unit = () => site().lengthUnit;
export const bodyPart = (id) => terms().parts.get(id)?.label ?? id;
export const projection = (id) => terms().projections.get(id)?.label ?? spoken(id);
export const group = (id) => terms().groups.get(id)?.label ?? spoken(id);
export const regions = () => terms().regions;

/** The region that pages list a body part under; of one that the site does not know, the last. */
export const regionOf = (id) => terms().parts.get(id)?.region ?? terms().regions.at(-1).region;

/** 'KNEE/ap/adult/table-bucky' or a row's key -> 'Knee AP'. */
export function examinationWords(key) {
  const [part, view] = key.split('/');
  return `${bodyPart(part)} ${projection(view)}`;
}

/** The rest of an examination: 'Adult, table bucky'. */
export function whereWords(key) {
  const [, , patients, support] = key.split('/');
  return `${group(patients)}, ${spoken(support)}`;
}

/** [10, 13] -> '10 to 13', in the site's unit. */
export const bandWords = (band) => `${lengthNumber(band[0], unit())} to ${lengthNumber(band[1], unit())}`;

/** The band at the end of a row's key. */
export const bandOfKey = (key) => key.split('/')[4].split('-').map(Number);

const plus = (number) => `${number > 0 ? '+' : ''}${number}`;

const aecWords = ({ chambers, density, backupMAs }) =>
  `AEC ${chambers.join(' + ')}, density ${plus(density)}, back-up ${backupMAs} mAs`;

/** What ends the exposure: '16', or the AEC with its back-up. */
export const controlWords = (row) => (row.aec ? aecWords(row.aec) : String(row.mAs));

const RULES = {
  'kv-per-cm': (rate) => `${rate} kV per cm`,
  'mas-per-cm': (rate) => `mAs doubles per ${rate} cm`,
  fixed: () => 'fixed',
  attenuation: () => 'attenuation of water',
};

export const ruleWords = (method, rate) => RULES[method]?.(rate) ?? spoken(method);

/** Fields as a comparison names them: what they are called, and their text in the site's unit. */
const inUnit = (text) => (text === '' ? '' : length(Number(text), unit()));
const FIELDS = {
  referenceThicknessCm: ['Reference thickness', inUnit],
  sidCm: ['SID', inUnit],
  kV: ['kV'], mAs: ['mAs'], aecChambers: ['AEC chambers'], aecDensity: ['AEC density'], backupMAs: ['Back-up mAs'],
  focalSpot: ['Focal spot'], grid: ['Grid'], receptor: ['Receptor'], fieldCm: ['Field', (text) => (text === '' ? '' : `${fieldSize(text, unit())} ${unit()}`)], orientation: ['Orientation'],
  addedFiltration: ['Added filter'], targetExposureIndex: ['Target exposure index'], centralRayAngleDeg: ['Ray angle, degrees'],
  centring: ['Centring'], breathing: ['Breathing'], shielding: ['Shielding'], measureAt: ['Measure at'], notes: ['Notes'],
  thicknessMethod: ['With thickness', spoken], thicknessRate: ['Rate with thickness'], kVFrom: ['kV allowed from'],
  kVTo: ['kV allowed to'], longestTimeMs: ['Longest time, ms'], label: ['Label'], addKv: ['Adds kV'], timesMas: ['Multiplies mAs by'],
};

export const fieldWords = (field) => FIELDS[field]?.[0] ?? field;
export const fieldText = (field, text) => (FIELDS[field]?.[1] ?? String)(text);

/** A row in one line, for lists of whole rows. */
export const techniqueWords = (row) =>
  `${row.kV} kV, ${controlWords(row)}${row.aec ? '' : ' mAs'}, ${row.focalSpot} focal spot, `
  + `grid ${row.grid}, SID ${length(row.sidCm, unit())}, ${ruleWords(row.thicknessMethod, row.thicknessRate)}`;

export const adjustmentWords = ({ addKV, timesMAs }) =>
  (addKV === null ? `mAs x ${timesMAs}` : `${plus(addKV)} kV`.replace('-', '\u2212'));

/** 1.234 -> '+1.2', with a true minus sign. */
export const signed = (value, decimals) => `${value > 0 ? '+' : ''}${trimmed(value, decimals)}`.replace('-', '\u2212');
