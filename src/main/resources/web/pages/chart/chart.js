// The chart of a room: its versions, their rows, the curves of an examination, and what differs between two versions.
import { html, render, nothing } from '/pages/lit-html.js';
import { start, trouble, whenPersonChanges } from '/pages/shell.js';
import { readAddress, room, toVersion, toComparison, examinationOf } from '/pages/chart/address.js';
import { versionHead, pickers } from '/pages/chart/head.js';
import { rowsPart, newLook } from '/pages/chart/rows.js';
import { ask, unasked, progress, findingsPart } from '/pages/chart/findings.js';
import { askCurves, curvesPart } from '/pages/chart/curves.js';
import { drawPlots } from '/pages/chart/plots.js';
import { comparePart } from '/pages/chart/compare.js';
import { askBringBack } from '/pages/chart/back.js';
import { adjustmentWords } from '/pages/chart/terms.js';
import * as service from '/pages/chart/service.js';

const place = document.getElementById('chart');
const page = {
  at: readAddress(), rooms: [], versions: null, inForce: null, content: null, findings: unasked(), predicted: new Map(),
  curves: null, difference: null, kinds: new Set(['added', 'withdrawn', 'changed']), look: newLook(), failed: null, plotted: null, loading: true,
};

const shownVersion = () => page.at.version ?? (page.at.unreadable ? null : page.inForce ?? page.versions[0]?.version ?? null);
const headOf = (number) => page.versions.find((one) => one.version === number);
const go = (fragment) => {
  location.hash = fragment;
};

/** Everything that the address asks for; `moved` puts the focus where it was asked to. */
async function load(moved) {
  const at = readAddress();
  const same = at.view === page.at.view && at.version === page.at.version;
  leaveLongWork(at, same);
  Object.assign(page, { at, failed: null, loading: true, difference: at.view === 'compare' ? null : page.difference });
  draw();
  try {
    await (at.view === 'compare' ? loadComparison(at) : loadVersion(at));
  } catch (failed) {
    page.failed = failed;
  }
  if (at !== page.at) return; // somebody has gone on meanwhile
  page.loading = false;
  draw();
  if (moved) focusPart(at);
}

function leaveLongWork(at, same) {
  if (!same && page.findings.state === 'running') page.findings.leave();
  if (page.curves?.state === 'running' && page.curves.examination !== at.examination) page.curves.leave();
}

async function loadHeads() {
  const [rooms, versions] = await Promise.all([service.rooms(), service.versions(room())]);
  const here = rooms.find((one) => one.room === room());
  Object.assign(page, { rooms, versions, inForce: here?.chart?.version ?? null });
  document.querySelector('h1').textContent = `Chart of ${here?.name ?? room()}`;
  document.title = `Chart of ${here?.name ?? room()} · Wallchart`;
}

async function loadVersion(at) {
  if (page.versions === null) await loadHeads();
  const number = shownVersion();
  if (!headOf(number)) {
    page.content = null;
    return;
  }
  const content = await service.rows(room(), number);
  if (at !== page.at) return;
  if (page.content !== content) Object.assign(page, { content, findings: unasked(), predicted: new Map() });
  if (at.row !== null && content.rows.some((row) => row.key === at.row)) page.look.open.add(at.row);
  if (at.examination !== null) {
    await loadCurves(at, number);
  } else {
    page.curves = null;
    if (page.findings.state === 'unasked') check(number);
  }
}

/** Not waited for: the rows are there at once, what is said about them comes when it is worked out. */
function check(number) {
  ask(room(), number, (now) => {
    if (shownVersion() !== number) return;
    page.findings = now;
    if (now.state === 'done') keepPredictions(number);
    draw();
  });
}

async function keepPredictions(number) {
  const { examinations } = await service.physics(room(), number);
  if (shownVersion() !== number) return;
  page.predicted = new Map(examinations.flatMap((one) => one.rows.map((row) => [row.row, row])));
  draw();
}

async function loadCurves(at, number) {
  if (!page.content.rows.some((row) => examinationOf(row.key) === at.examination)) {
    page.curves = null;
    return;
  }
  await askCurves(room(), number, at.examination, (now) => {
    if (page.at.examination !== at.examination || shownVersion() !== number) return;
    page.curves = now;
    draw();
  });
}

async function loadComparison(at) {
  if (page.versions === null) await loadHeads();
  const newest = page.versions[0]?.version;
  page.from = at.from ?? Math.max(1, (at.to ?? page.inForce ?? newest) - 1);
  page.to = at.to ?? page.inForce ?? newest;
  const difference = await service.compare(room(), page.from, page.to);
  if (at === page.at) page.difference = difference;
}

function focusPart(at) {
  const row = at.row === null ? null : document.querySelector(`tr[data-row="${CSS.escape(at.row)}"]`);
  row?.scrollIntoView({ block: 'center' });
  (row?.querySelector('button') ?? document.getElementById('part') ?? document.getElementById('version-title'))?.focus({ preventScroll: row !== null });
}

function draw() {
  render(view(), place);
  place.setAttribute('aria-busy', String(page.loading));
  plots();
}

/** Plots are drawn once their places are in the document, and taken away with them. */
async function plots() {
  const wanted = page.curves?.state === 'done' && document.getElementById('thickness') ? page.curves : null;
  if (page.plotted?.curves === wanted) return;
  page.plotted?.removal.then((remove) => remove());
  page.plotted = wanted && { curves: wanted, removal: drawPlots(wanted) };
  page.plotted?.removal.catch((failed) => {
    page.failed = failed;
    draw();
  });
}

function view() {
  if (page.versions === null) return page.failed ? html`<div role="alert">${trouble(page.failed)}</div><p><a href="/">To the rooms</a></p>` : html`<p><progress></progress> Reading the chart</p>`;
  const number = shownVersion();
  return html`
    ${pickers({ rooms: page.rooms, room: room(), versions: page.versions, inForce: page.inForce, shown: page.at.view === 'version' && headOf(number) ? number : null, goToVersion: (one) => go(toVersion(one)) })}
    <div role="alert">${page.failed ? trouble(page.failed) : nothing}</div>
    ${page.at.view === 'compare' ? comparison() : version(number)}`;
}

function version(number) {
  const head = headOf(number);
  if (page.versions.length === 0) return html`<p>This room has no chart yet: propose a change, or load a department's folder.</p>`;
  if (!head) return html`<p class="tell caution"><strong>No such version.</strong>The chart of this room has no version ${number ?? page.at.unreadable}: choose one above.</p>`;
  const content = page.content?.version === number ? page.content : null;
  if (page.at.examination !== null) return examination(number, content);
  return html`
    ${versionHead({
      room: room(), head, inForce: page.inForce, newest: page.versions[0].version,
      counts: content && { rows: content.rows.length, adjustments: content.adjustments.length }, askBringBack: () => askBringBack(room(), head),
    })}
    ${content === null ? html`<p><progress></progress> Reading the rows</p>` : html`
      ${progress(page.findings, number, () => check(number))}
      ${missingRow(content, number)}
      ${parts(number, content)}
      ${part(number, content)}`}`;
}

const missingRow = (content, number) => (page.at.row !== null && !content.rows.some((row) => row.key === page.at.row)
  ? html`<p class="tell caution"><strong>No such row.</strong>Version ${number} has no row ${page.at.row}.</p>` : nothing);

const parts = (number, content) => html`
  <nav class="parts" aria-label="Parts of version ${number}">
    ${[['rows', `Rows (${content.rows.length})`], ['adjustments', `Named adjustments (${content.adjustments.length})`],
      ['findings', `Findings (${page.findings.list.length}${page.findings.state === 'running' ? ' so far' : ''})`]].map(([name, words]) => html`
      <a href=${toVersion(number, name)} aria-current=${page.at.part === name ? 'page' : nothing}>${words}</a>`)}
    ${page.versions.length > 1 ? html`<a href=${toComparison(number > 1 ? number - 1 : 1, number > 1 ? number : 2)}>Compare two versions</a>` : nothing}
  </nav>`;

function part(number, content) {
  if (page.at.part === 'findings') return findingsPart(page.findings, number);
  if (page.at.part === 'adjustments') return adjustmentsPart(content.adjustments);
  return rowsPart({
    content, version: number, look: page.look, findings: page.findings, physics: (key) => page.predicted.get(key), changed: draw,
  });
}

const adjustmentsPart = (adjustments) => html`
  <h2 id="part" tabindex="-1">Named adjustments</h2>
  ${adjustments.length === 0 ? html`<p>This version has none.</p>` : html`
  <div class="scroll"><table id="adjustments"><caption>Asked for by name with a technique; each adds kV or multiplies mAs</caption>
    <thead><tr><th scope="col">Adjustment</th><th scope="col">Does</th><th scope="col">Notes</th><th scope="col">Asked as</th></tr></thead>
    <tbody>${adjustments.map((one) => html`<tr><th scope="row">${one.label}</th><td>${adjustmentWords(one)}</td><td>${one.notes}</td><td><code>${one.name}</code></td></tr>`)}</tbody>
  </table></div>`}`;

function examination(number, content) {
  if (content === null) return html`<p><progress></progress> Reading the rows</p>`;
  if (page.curves === null || page.curves.examination !== page.at.examination || page.curves.version !== number) {
    return page.loading ? html`<p><progress></progress> Working out the curves</p>`
      : html`<p class="tell caution"><strong>No such examination.</strong>Version ${number} has no rows of ${page.at.examination}. <a href=${toVersion(number)}>All rows of version ${number}</a></p>`;
  }
  const changed = (more) => {
    Object.assign(page.curves, more);
    draw();
  };
  return curvesPart({ now: page.curves, content, version: number, inForce: page.inForce, again: () => load(false), changed, go });
}

const comparison = () => html`
  ${comparePart({
    versions: page.versions, inForce: page.inForce, from: page.from ?? page.at.from, to: page.to ?? page.at.to, difference: page.difference, kinds: page.kinds, go,
    turnKind: (kind) => {
      if (!page.kinds.delete(kind)) page.kinds.add(kind);
      draw();
    },
  })}
  ${page.loading ? html`<p><progress></progress> Comparing</p>` : nothing}`;

window.addEventListener('hashchange', () => load(true));
await start();
whenPersonChanges(() => draw());
load(false);
