// Words and numbers as people read them. Nothing here computes a technique.

const DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
const MOMENT = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', hour: '2-digit', minute: '2-digit' });
const CM_PER_INCH = 2.54;
const FIELD = /^\d+(\.\d+)?x\d+(\.\d+)?$/;

/** What stands on every page and sheet of a demonstration. */
export const INVENTED = 'INVENTED. NOT FOR PATIENTS.';

/** '2026-10-15' or an instant -> '15 Oct 2026'. */
export const day = (text) => (text ? DAY.format(new Date(text)) : '');

/** An instant -> '15 Oct 2026, 11:16', in this screen's time zone. */
export const moment = (text) => (text ? MOMENT.format(new Date(text)) : '');

/** A length in centimetres in the site's unit: 12.4 -> '12.4 cm' or '4.9 in'. */
export const length = (cm, unit) => `${lengthNumber(cm, unit)} ${unit}`;

/** Without the unit; inches with one decimal, distances that stand for whole centimetres stay as they are. */
export function lengthNumber(cm, unit) {
  return unit === 'in' ? trimmed(cm / CM_PER_INCH, 1) : trimmed(cm, 2);
}

const CENTIMETRES = /(?<![\w.+-])([+-]?\d+(?:\.\d+)?(?:(?:, | and | or | to |-)\d+(?:\.\d+)?)*) cm(?![\w²^])/g;

/**
 * A sentence of the service with its lengths in the site's unit: 'no band holds 17 cm' -> 'no band holds 6.7 in (17 cm)'. A list or a
 * range is taken as a whole; 'kV per cm' is no length. Not for what people wrote: they chose their unit.
 */
export function inUnit(sentence, unit) {
  if (unit !== 'in') return sentence;
  return sentence.replace(CENTIMETRES, (cm, numbers) => `${numbers.replace(/\d+(?:\.\d+)?/g, (each) => lengthNumber(each, unit))} ${unit} (${cm})`);
}

/** What somebody typed in the site's unit, as centimetres with at most two decimals. */
export const centimetres = (typed, unit) => (unit === 'in' ? Math.round(typed * CM_PER_INCH * 100) / 100 : typed);

/** A field, '24x30' in centimetres, in the site's unit: '9.4x11.8'. What is none stays as it is. */
export const fieldSize = (text, unit, between = 'x') => (FIELD.test(text)
  ? text.split('x').map((side) => lengthNumber(Number(side), unit)).join(between) : text);

/** What somebody typed of a field in the site's unit, as centimetres: the very size of `sizes` that shows so, else what it comes to. */
export function fieldTyped(typed, unit, sizes) {
  const text = typed.trim().toLowerCase().replace(/\s*[x×*]\s*/, 'x');
  if (unit !== 'in' || !FIELD.test(text)) return typed.trim();
  return sizes.find((size) => fieldSize(size, unit) === text)
    ?? text.split('x').map((side) => trimmed(centimetres(Number(side), unit), 2)).join('x');
}

/** At most that many decimals, no trailing zeros. */
export const trimmed = (number, decimals) => String(Number(Number(number).toFixed(decimals)));

/** 'table-bucky' -> 'table bucky'. */
export const spoken = (slug) => String(slug ?? '').replaceAll('-', ' ');

/** Four significant digits, as the service writes computed numbers in sentences. */
export const computed = (number) => String(Number(Number(number).toPrecision(4)));
