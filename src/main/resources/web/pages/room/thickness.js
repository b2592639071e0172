// What is typed for a thickness, the steps of + and -, and where the chart's bands lie; no rule of technique.
import { centimetres, lengthNumber } from '/pages/words.js';

const STEP = { cm: 0.5, in: 0.2 };
const WRITTEN = /^\d{1,3}([.,]\d{0,2})?$/;
const TINY = 1e-9;

export const step = (unit) => STEP[unit] ?? STEP.cm;

/** '12,5' -> 12.5; null where it is no number or nothing. */
export function number(typed) {
  const text = typed.trim();
  return WRITTEN.test(text) && Number(text.replace(',', '.')) > 0 ? Number(text.replace(',', '.')) : null;
}

/** In centimetres as the interface takes it, or null. */
export function inCentimetres(typed, unit) {
  const value = number(typed);
  return value === null ? null : Number(centimetres(value, unit).toFixed(2));
}

/** The next whole step up (1) or down (-1) in the site's unit, as text; never under one step. */
export function stepped(typed, direction, unit) {
  const size = step(unit);
  const value = number(typed);
  if (value === null) return typed;
  const steps = direction > 0 ? Math.floor(value / size + TINY) + 1 : Math.ceil(value / size - TINY) - 1;
  return tidy(Math.max(1, steps) * size);
}

const tidy = (value) => String(Number(value.toFixed(2)));

/** The bands of an examination without repetition, by thickness. */
export const bands = (examination) => examination.rows.map((row) => row.bandCm);

export const holds = ([from, to], cm) => from <= cm && cm < to;

/** The ends of the scale in the site's unit: what a half-open band holds at these steps. */
export function scale(examination, unit) {
  const all = bands(examination);
  const size = step(unit);
  const per = (cm) => (unit === 'in' ? cm / 2.54 : cm);
  const first = Math.ceil(per(all[0][0]) / size - TINY);
  const last = Math.ceil(per(Math.max(...all.map((band) => band[1]))) / size - TINY) - 1;
  return { min: Number(tidy(first * size)), max: Number(tidy(Math.max(first, last) * size)), step: size };
}

/** Whether more digits would make a thickness of the chart out of what stands outside it: '1' on the way to '12'. */
export function unfinished(typed, examination, unit) {
  const text = typed.trim();
  if (text === '' || text === '0') return true;
  if (!/^\d+$/.test(text)) return /^\d+[.,]$/.test(text) && number(text) === null;
  const cm = inCentimetres(text, unit);
  const all = bands(examination);
  if (cm !== null && all.some((band) => holds(band, cm))) return false;
  const { max } = scale(examination, unit);
  for (let longer = Number(text) * 10; longer <= max && longer > 0; longer *= 10) {
    const width = longer / Number(text);
    for (let value = longer; value < longer + width && value <= max; value++) {
      const there = inCentimetres(String(value), unit);
      if (all.some((band) => holds(band, there))) return true;
    }
  }
  return false;
}

/** '10–13' in the site's unit. */
export const bandWords = ([from, to], unit) => `${lengthNumber(from, unit)}–${lengthNumber(to, unit)}`;

/** '8–16 cm': from the thinnest to the thickest that the examination has. */
export function reach(examination, unit) {
  const all = bands(examination);
  return `${bandWords([all[0][0], Math.max(...all.map((band) => band[1]))], unit)} ${unit}`;
}

/** The thickness of a band that is next to one outside it, as text in the site's unit. */
export function nextTo([from, to], cm, unit) {
  const size = step(unit);
  const per = (value) => (unit === 'in' ? value / 2.54 : value);
  return tidy((to <= cm ? Math.ceil(per(to) / size - TINY) - 1 : Math.ceil(per(from) / size - TINY)) * size);
}
