// What is said about a version: by the checks of a chart and by beam physics. The second may take seconds the first time after a start.
import { html, nothing } from '/pages/lit-html.js';
import { trouble } from '/pages/shell.js';
import { toRow, toExamination, toVersion, examinationOf } from '/pages/chart/address.js';
import { examinationWords, whereWords, bandWords, bandOfKey, unit } from '/pages/chart/terms.js';
import * as service from '/pages/chart/service.js';

const WEIGHT = { blocking: 0, caution: 1, note: 2 };
const WORDS = { blocking: 'Blocking', caution: 'Caution', note: 'Note' };

/** Nothing asked yet. */
export const unasked = () => ({
  state: 'unasked', list: [], byRow: new Map(), holdsFor: [], predicted: null, busy: null, failed: null, leave: null,
});

/** Asks for all that is said about a version; `changed` is called with what is known whenever that grows. */
export async function ask(room, version, changed) {
  const stop = new AbortController();
  const now = { ...unasked(), state: 'running', leave: () => stop.abort() };
  const how = {
    signal: stop.signal,
    whenBusy: (tries, message) => changed(Object.assign(now, { busy: `${message} (try ${tries})` })),
  };
  changed(now);
  try {
    const checks = service.findings(room, version, how);
    const physics = service.physics(room, version, how);
    add(now, (await checks).findings);
    changed(now);
    const said = await physics;
    add(now, said.findings.concat(said.examinations.flatMap((one) => one.findings)));
    const predicted = new Map(said.examinations.flatMap((one) => one.rows.map((row) => [row.row, row])));
    Object.assign(now, { state: 'done', busy: null, holdsFor: said.holdsFor, predicted });
  } catch (failed) {
    Object.assign(now, stop.signal.aborted ? { state: 'left', busy: null } : { state: 'failed', failed, busy: null });
  }
  changed(now);
}

function add(now, findings) {
  now.list = now.list.concat(findings).sort((one, other) => WEIGHT[one.level] - WEIGHT[other.level]);
  now.byRow = Map.groupBy ? Map.groupBy(now.list, (one) => one.row) : grouped(now.list);
}

function grouped(list) {
  const byRow = new Map();
  list.forEach((one) => byRow.set(one.row, [...(byRow.get(one.row) ?? []), one]));
  return byRow;
}

export const count = (list, level) => list.filter((one) => one.level === level).length;

const some = (number, word) => (number === 0 ? '' : `${number} ${word}${number > 1 ? 's' : ''}`);

/** '2 cautions, 6 notes', or that there are none. */
export const countWords = (list) => [
  some(count(list, 'blocking'), 'blocking finding'), some(count(list, 'caution'), 'caution'), some(count(list, 'note'), 'note'),
].filter((words) => words !== '').join(', ') || 'no findings';

/** The mark of a row in the table; its words are the most pressing level and how many. */
export const rowMark = (list) => (list === undefined ? nothing
  : html`<span class="mark ${list[0].level}">${countWords(list)}</span>`);

/** Long work that goes on, with what the service said of waiting, and a way to leave it. */
export const busyLine = (words, now) => html`
  <p class="row checks" role="status"><label class="tick"><progress></progress> ${words}</label>
    ${now.busy ? html`<span>${now.busy}</span>` : nothing}
    <button type="button" @click=${now.leave}>Leave it</button></p>`;

/** How far the checks are, with a way to leave them and to take them up again. */
export function progress(now, version, again) {
  if (now.state === 'running') return busyLine('Holding the chart against its checks and beam physics', now);
  if (now.state === 'failed') {
    return html`<div role="alert">${trouble(now.failed)}</div><p><button type="button" @click=${again}>Check again</button></p>`;
  }
  if (now.state === 'left') {
    return html`<p class="row checks">The chart was not held against beam physics.
      <button type="button" @click=${again}>Check now</button></p>`;
  }
  return html`<p class="checks">Checked against the rules of a chart and beam physics, with the room's equipment of today:
    <a href=${toVersion(version, 'findings')}>${countWords(now.list)}</a>.</p>`;
}

/** A finding in words, for a list. */
export const said = (finding) => html`
  <p class="tell ${finding.level}"><strong>${WORDS[finding.level]}.</strong>${finding.reason}</p>`;

/** The part of the page with all of them. */
export const findingsPart = (now, version) => html`
  <h2 id="part" tabindex="-1">Findings</h2>
  ${now.list.length === 0 && now.state === 'done' ? html`<p>Nothing is to be said about this version.</p>` : nothing}
  <ul class="plain beside">${now.list.map((finding) => html`<li>
    ${finding.row === '' ? html`<h3>The chart as a whole</h3>` : rowHeading(finding, version)}${said(finding)}</li>`)}</ul>
  ${now.holdsFor.length === 0 ? nothing : html`
    <h3>What the predictions of beam physics hold for</h3>
    <ul>${now.holdsFor.map((sentence) => html`<li>${sentence}</li>`)}</ul>`}`;

const rowHeading = ({ row }, version) => html`
  <h3>${examinationWords(row)}, ${whereWords(row)}, ${bandWords(bandOfKey(row))} ${unit()}</h3>
  <p class="row"><a href=${toRow(version, row)}>The row</a> <a href=${toExamination(version, examinationOf(row))}>Its curves</a></p>`;
