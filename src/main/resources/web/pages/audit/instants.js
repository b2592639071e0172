// Instants as an auditor reads them: in the time of this screen, with UTC beside. Days are those of this screen.
import { html } from '/pages/lit-html.js';

const ZONE = Intl.DateTimeFormat().resolvedOptions().timeZone;
const CLOCK = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit', second: '2-digit' });
const LONG_DAY = new Intl.DateTimeFormat('en-GB', { weekday: 'long', day: 'numeric', month: 'long', year: 'numeric' });
const SHORT_DAY = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** The time zone of this screen by its name, such as Europe/Berlin. */
export const zone = () => ZONE;

export const clock = (at) => CLOCK.format(new Date(at));
export const longDay = (at) => LONG_DAY.format(new Date(at));

/** '2026-10-15 11:16:29 UTC', cut to the second. */
export const utc = (at) => `${at.slice(0, 10)} ${at.slice(11, 19)} UTC`;

/** Whether the clock of this screen shows UTC then: nobody needs to read the same twice. */
const isUtc = (at) => new Date(at).getTimezoneOffset() === 0;

/** Local with UTC beside. */
export const instant = (at) => html`<time datetime=${at}>${SHORT_DAY.format(new Date(at))}, ${clock(at)}
  ${isUtc(at) ? 'UTC' : html`<span class="small">= ${utc(at)}</span>`}</time>`;

/** The time of the day alone, with UTC beside. */
export const timeOfDay = (at) => html`<time datetime=${at}>${clock(at)}</time> <span class="small">${isUtc(at)
  ? 'UTC' : utc(at).slice(11)}</span>`;

const two = (number) => String(number).padStart(2, '0');

/** An instant as the local day that a date field takes. */
export function localDay(at) {
  const date = new Date(at);
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** An instant as the local text that a date-and-time field takes, cut to the second. */
export function localMoment(at) {
  const date = new Date(at);
  return `${localDay(at)}T${two(date.getHours())}:${two(date.getMinutes())}:${two(date.getSeconds())}`;
}

/** What a field for a local day or moment holds, as an instant of UTC; empty where it holds none. */
export function toUtc(local) {
  const date = new Date(local.includes('T') ? local : `${local}T00:00:00`);
  return Number.isNaN(date.getTime()) ? '' : date.toISOString().replace('.000Z', 'Z');
}

/** The instant at which a local day is over. */
export function endOfDay(day) {
  const date = new Date(`${day}T00:00:00`);
  if (Number.isNaN(date.getTime())) return '';
  date.setDate(date.getDate() + 1);
  return date.toISOString().replace('.000Z', 'Z');
}
