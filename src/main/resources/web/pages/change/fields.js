// The fields of a row as the table shows them: by the names of a chart file, in groups, with their units; and rows as texts.
import { lengthNumber, fieldSize, fieldTyped, centimetres, moment, spoken } from '/pages/words.js';

/** A column: `number` where plain digits are wanted, `length` where they are a length in the site's unit, `field` where two. */
const column = (name, label, group, more = {}) => ({ name, label, group, unit: '', ...more });

export const COLUMNS = [
  column('bodyPart', 'Body part', 'Examination'),
  column('projection', 'Projection', 'Examination'),
  column('patientGroup', 'Patient group', 'Examination'),
  column('support', 'Support', 'Examination'),
  column('bandFromCm', 'From', 'Band', { number: true, length: true }),
  column('bandToCm', 'To, under', 'Band', { number: true, length: true }),
  column('referenceThicknessCm', 'Reference', 'Band', { number: true, length: true }),
  column('kV', 'kV', 'Exposure', { number: true }),
  column('mAs', 'mAs', 'Exposure', { number: true }),
  column('focalSpot', 'Focal spot', 'Exposure'),
  column('grid', 'Grid', 'Exposure'),
  column('sidCm', 'SID', 'Exposure', { number: true, length: true }),
  column('aecChambers', 'AEC chambers', 'AEC'),
  column('aecDensity', 'AEC density', 'AEC', { number: true }),
  column('backupMAs', 'Back-up mAs', 'AEC', { number: true }),
  column('thicknessMethod', 'Thickness method', 'Thickness rule'),
  column('thicknessRate', 'Rate', 'Thickness rule', { number: true, unit: 'kV per cm, or cm per doubling' }),
  column('receptor', 'Receptor', 'Receptor'),
  column('fieldCm', 'Field', 'Receptor', { field: true }),
  column('orientation', 'Orientation', 'Receptor'),
  column('addedFiltration', 'Added filtration', 'Receptor'),
  column('targetExposureIndex', 'Target exposure index', 'Receptor', { number: true }),
  column('kVFrom', 'kV window from', 'Limits', { number: true }),
  column('kVTo', 'kV window to', 'Limits', { number: true }),
  column('longestTimeMs', 'Longest time', 'Limits', { number: true, unit: 'ms' }),
  column('measureAt', 'Where to measure', 'Positioning', { wide: true }),
  column('centralRayAngleDeg', 'Central ray', 'Positioning', { number: true, unit: 'degrees, cephalad is positive' }),
  column('centring', 'Centring', 'Positioning', { wide: true }),
  column('breathing', 'Breathing', 'Positioning', { wide: true }),
  column('shielding', 'Shielding', 'Positioning', { wide: true }),
  column('notes', 'Notes', 'Notes', { wide: true }),
];

export const NAMES = COLUMNS.map(({ name }) => name);
export const GROUPS = [...new Set(COLUMNS.map(({ group }) => group))];
export const MAIN_GROUPS = ['Band', 'Exposure', 'Thickness rule', 'Notes'];
export const columnOf = (name) => COLUMNS.find((one) => one.name === name);

const text = (value) => (value === null || value === undefined ? '' : String(value));

/** A row as the interface answers it -> texts by the names of a chart file; nothing written is ''. */
export function textsOf(row) {
  const texts = Object.fromEntries(NAMES.map((name) => [name, text(row[name])]));
  [texts.bandFromCm, texts.bandToCm] = row.bandCm.map(text);
  [texts.kVFrom, texts.kVTo] = (row.kVWindow ?? ['', '']).map(text);
  texts.aecChambers = row.aec ? row.aec.chambers.join('+') : '';
  texts.aecDensity = text(row.aec?.density);
  texts.backupMAs = text(row.aec?.backupMAs);
  return texts;
}

/** The key that these texts name. */
export const keyOf = (t) => `${t.bodyPart}/${t.projection}/${t.patientGroup}/${t.support}/${t.bandFromCm}-${t.bandToCm}`;

/** A row's key as a part of an address. */
export const pathOf = (key) => key.split('/').map(encodeURIComponent).join('/');

/** What a cell shows of a text that the interface speaks: lengths in the site's unit. */
export function shown(name, value, unit) {
  if (columnOf(name).field) return fieldSize(value, unit);
  return columnOf(name).length && value !== '' && Number.isFinite(Number(value)) ? lengthNumber(Number(value), unit) : value;
}

/**
 * What somebody typed into a cell, as the interface takes it. Where it shows the same as before, it is the same; of fields, the size of
 * `sizes` that shows so.
 */
export function spokenBack(name, typed, before, unit, sizes = []) {
  const trimmed = typed.trim();
  if (trimmed === shown(name, before, unit)) return before;
  if (columnOf(name).field) return fieldTyped(trimmed, unit, sizes);
  const isLength = columnOf(name).length && unit === 'in' && trimmed !== '' && Number.isFinite(Number(trimmed));
  return isLength ? String(centimetres(Number(trimmed), unit)) : trimmed;
}

export const unitOf = (name, site) => (columnOf(name).length || columnOf(name).field ? site.lengthUnit : columnOf(name).unit);

/** A label inside a sentence: 'Cross table lateral' -> 'cross table lateral'; 'AP' stays. */
const inside = (label) => (/^[A-Z][a-z]/.test(label) ? label[0].toLowerCase() + label.slice(1) : label);

/** 'KNEE/ap/adult/table-bucky/10-13' -> {part, projection, group, support, band} in words. */
export function keyWords(key, site) {
  const [part, projection, group, support, band] = key.split('/');
  const [from, to] = (band ?? '').split('-');
  const unit = site.lengthUnit;
  return {
    part: site.bodyParts.find((one) => one.bodyPart === part)?.label ?? part,
    projection: inside(site.projections.find((one) => one.projection === projection)?.label ?? projection),
    group: inside(site.patientGroups.find((one) => one.id === group)?.label ?? group),
    support: spoken(support),
    band: Number.isFinite(Number(from)) && to !== undefined
      ? `${shown('bandFromCm', from, unit)} to ${shown('bandToCm', to, unit)} ${unit}` : band,
  };
}

/** The same in one line; what is no key stays as it is. */
export function keyLine(key, site) {
  if (key.split('/').length !== 5) return key;
  const words = keyWords(key, site);
  return `${words.part} ${words.projection}, ${words.group}, ${words.support}, ${words.band}`;
}

/** What the service says about a chart, with its keys and instants in words. */
export const inWords = (reason, site) => reason
  .replace(/[A-Z0-9_]+\/[a-z0-9-]+\/[a-z0-9-]+\/[a-z-]+\/\d+(\.\d+)?-\d+(\.\d+)?/g,
    (key) => keyLine(key, site))
  .replace(/\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d(\.\d+)?)?Z/g, (instant) => moment(instant));

/** What may be chosen in a cell, from what the room and the site have; for a list beside the field. */
export function choicesOf(name, site, room) {
  switch (name) {
    case 'bodyPart': return site.bodyParts.map((one) => one.bodyPart);
    case 'projection': return site.projections.map((one) => one.projection);
    case 'patientGroup': return site.patientGroups.map((one) => one.id);
    case 'support': return room.supports.map((one) => one.support);
    case 'focalSpot': return room.tube.focalSpots.map((one) => one.name);
    case 'grid': return ['none', ...room.grids.map((one) => one.id)];
    case 'receptor': return room.receptors.map((one) => one.id);
    case 'fieldCm': return [...new Set(room.receptors.flatMap((one) => one.sizesCm))];
    case 'orientation': return ['lengthwise', 'crosswise'];
    case 'thicknessMethod': return ['kv-per-cm', 'mas-per-cm', 'fixed', 'attenuation'];
    default: return [];
  }
}

/** Named states of a row; each has its words. */
export const STATES = {
  untouched: 'as in the chart',
  saved: 'saved',
  offered: 'from before, not sent',
  waiting: 'not yet saved',
  saving: 'saving',
  refused: 'not taken',
  conflict: 'choose which',
};
