// Events in words. What is not known here is shown by its own name: a ledger is older, and younger, than any page.
import { spoken } from '/pages/words.js';

const names = { people: new Map(), rooms: new Map() };

/** Up to the first comma: 'Wren Alderby, lead radiographer' -> 'Wren Alderby'. */
const brief = (text) => text.split(',')[0];

export function learnPeople(people) {
  people.forEach((person) => names.people.set(person.name, person));
}

export function learnRooms(rooms) {
  rooms.forEach((room) => names.rooms.set(room.room, room.name));
}

export const people = () => [...names.people.values()];
export const rooms = () => [...names.rooms];

/** The printed name of an account, else the name in the event. */
export const actorName = (actor) => brief(names.people.get(actor)?.printedName ?? actor);
export const roomName = (room) => brief(names.rooms.get(room) ?? `room ${room}`);

/** Which number stands at the end of what an event was done to; null where none does. */
export function objectNumber(event) {
  const number = /\/(\d+)$/.exec(event.object);
  return number ? Number(number[1]) : null;
}

const of = (event) => (event.room ? ` of ${roomName(event.room)}` : '');
const change = (event) => `change ${objectNumber(event)}${of(event)}`;
const token = (event) => `room token ${objectNumber(event)}${of(event)} (${event.details.label ?? 'no label'})`;
const sheet = (event) => `${event.object.replace('/', ' ')}${of(event)}, version ${event.details.version}`;
const account = (event) => event.details.printedName ?? event.details.name ?? event.object;

/** By action: the words of a filter, and the sentence about one event, without who did it. */
const ACTS = {
  'version-signed': ['Signed a version', (event) => `signed version ${event.details.number ?? objectNumber(event)}${of(event)}`],
  'change-opened': ['Opened a change', (event) => `opened ${change(event)}${event.details.title ? `, “${event.details.title}”` : ''}`],
  'change-edited': ['Edited a change', (event) => `edited ${change(event)}${event.details.row ? `: ${event.details.row}` : ''}`],
  'change-submitted': ['Handed a change in', (event) => `handed ${change(event)} in`],
  'change-returned': ['Returned a change', (event) => `returned ${change(event)} to its author`],
  'change-declined': ['Declined a change', (event) => `declined ${change(event)}`],
  'change-withdrawn': ['Withdrew a change', (event) => `withdrew ${change(event)}`],
  'change-concurred': ['Concurred with a change', (event) => `concurred with ${change(event)}`],
  'second-review-done': ['Reviewed a fast-track change', (event) => `looked at fast-track ${change(event)} afterwards`],
  'equipment-installed': ['Entered equipment',
    (event) => `entered ${event.details.entered ?? 'equipment'}${of(event)}, revision ${objectNumber(event)}`],
  'account-added': ['Added an account', (event) => `added the account of ${brief(account(event))} (${event.details.role ?? 'no role'})`],
  'account-disabled': ['Disabled an account', (event) => `disabled the account ${account(event)}`],
  'account-enabled': ['Enabled an account', (event) => `enabled the account ${account(event)}`],
  'role-changed': ['Changed a role', (event) => `changed the role of ${account(event)} from ${event.details.from} to ${event.details.to}`],
  'password-set': ['Set a password', (event) => `set ${event.details.own ? 'their own password' : `the password of ${account(event)}`}`],
  'room-token-issued': ['Issued a room token', (event) => `issued ${token(event)}`],
  'room-token-revoked': ['Revoked a room token', (event) => `revoked ${token(event)}`],
  'sheet-printed': ['Printed a wall sheet', (event) => `printed wall ${sheet(event)}`],
  'sheet-taken-down': ['Took a wall sheet down', (event) => `took down wall ${sheet(event)}`],
  'audit-reviewed': ['Recorded a review', () => 'recorded a review of the ledger'],
  'ledger-resumed': ['Went on after a doubt', () => 'went on with the ledger after a doubt'],
};

/** `[slug, words]` of every act that is known here. */
export const knownActs = () => Object.entries(ACTS).map(([slug, [words]]) => [slug, words]);

/** What was done, without who did it. */
export function act(event) {
  const known = ACTS[event.action];
  return known ? known[1](event) : `${spoken(event.action)}: ${event.object}${of(event)} (${event.action})`;
}

/** 'Wren Alderby signed version 3 of Room 2'. */
export const sentence = (event) => `${actorName(event.actor)} ${act(event)}`;
