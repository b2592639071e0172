// The chart of a room: its versions, their rows, the curves of an examination, and what differs between two versions.
import { render } from '/pages/lit-html.js';
import { start, whenPersonChanges } from '/pages/shell.js';
import { readAddress, room, examinationOf } from '/pages/chart/address.js';
import { newLook } from '/pages/chart/filters.js';
import { ask, unasked } from '/pages/chart/findings.js';
import { askCurves } from '/pages/chart/curves.js';
import { drawPlots } from '/pages/chart/plots.js';
import { askBringBack } from '/pages/chart/back.js';
import { view } from '/pages/chart/view.js';
import * as service from '/pages/chart/service.js';

const place = document.getElementById('chart');

const page = {
  at: readAddress(), rooms: [], versions: null, inForce: null, head: null, content: null, findings: unasked(), predicted: new Map(),
  curves: null, from: null, to: null, difference: null, kinds: new Set(['added', 'withdrawn', 'changed']), look: newLook(),
  failed: null, plotted: null, loading: true,
};

const acts = {
  draw,
  go: (fragment) => {
    location.hash = fragment;
  },
  again: () => load(false),
  check: () => check(page.head.version),
  askBringBack: () => askBringBack(room(), page.head),
  turnKind: (kind) => {
    if (!page.kinds.delete(kind)) page.kinds.add(kind);
    draw();
  },
};

/** Everything that the address asks for; `moved` puts the focus on what came. */
async function load(moved) {
  const at = readAddress();
  Object.assign(page, { at, failed: null, loading: true, difference: null });
  try {
    if (page.versions === null) await loadHeads();
    if (at !== page.at) return; // somebody has gone on meanwhile
    chooseVersions(at);
    leaveLongWork(at);
    draw();
    await (at.view === 'compare' ? loadComparison(at) : loadVersion(at));
  } catch (failed) {
    if (at === page.at) page.failed = failed;
  }
  if (at !== page.at) return;
  page.loading = false;
  draw();
  if (moved) focusPart(at);
}

async function loadHeads() {
  draw();
  const [rooms, versions] = await Promise.all([service.rooms(), service.versions(room())]);
  const here = rooms.find((one) => one.room === room());
  Object.assign(page, { rooms, versions, inForce: here?.chart?.version ?? null });
  document.querySelector('h1').textContent = `Chart of ${here?.name ?? room()}`;
  document.title = `Chart of ${here?.name ?? room()} · Wallchart`;
}

/** Where the address names none: the version in force, or the newest. */
function chooseVersions(at) {
  const usual = page.inForce ?? page.versions[0]?.version ?? null;
  const wanted = at.unreadable === null ? at.version ?? usual : null;
  page.head = page.versions.find((one) => one.version === wanted) ?? null;
  page.to = at.to ?? usual;
  page.from = at.from ?? Math.max(1, page.to - 1);
}

function leaveLongWork(at) {
  const moved = at.view === 'compare' || page.content?.version !== page.head?.version;
  if (moved && page.findings.state === 'running') page.findings.leave();
  if (page.curves?.state === 'running') page.curves.leave();
}

async function loadVersion(at) {
  if (page.head === null) return;
  const number = page.head.version;
  const content = await service.rows(room(), number);
  if (at !== page.at) return;
  if (page.content !== content) Object.assign(page, { content, findings: unasked(), predicted: new Map() });
  if (at.row !== null) page.look.open.add(at.row);
  if (at.examination === null) {
    if (page.findings.state !== 'running' && page.findings.state !== 'done') check(number);
  } else if (content.rows.some((row) => examinationOf(row.key) === at.examination)) {
    await loadCurves(at, number);
  }
}

/** Not waited for: the rows are there at once, what is said about them comes when it is worked out. */
function check(number) {
  ask(room(), number, (now) => {
    if (page.content?.version !== number) return;
    page.findings = now;
    if (now.state === 'done') page.predicted = now.predicted;
    draw();
  });
}

const loadCurves = (at, number) => askCurves(room(), number, at.examination, (now) => {
  if (at !== page.at) return;
  page.curves = now;
  draw();
});

async function loadComparison(at) {
  const difference = await service.compare(room(), page.from, page.to);
  if (at === page.at) page.difference = difference;
}

function focusPart(at) {
  const row = at.row === null ? null : document.querySelector(`tr[data-row="${CSS.escape(at.row)}"]`);
  row?.scrollIntoView({ block: 'center' });
  const part = row?.querySelector('button') ?? document.getElementById('part') ?? document.getElementById('version-title');
  part?.focus({ preventScroll: row !== null });
}

function draw() {
  render(view(page, acts), place);
  place.setAttribute('aria-busy', String(page.loading));
  drawWhatIsPlotted();
}

/** Plots are drawn once their places are in the document, and taken away with them. */
function drawWhatIsPlotted() {
  const wanted = page.curves?.state === 'done' && document.getElementById('thickness') ? page.curves : null;
  if ((page.plotted?.curves ?? null) === wanted) return;
  page.plotted?.removal.then((remove) => remove(), () => {});
  page.plotted = wanted && { curves: wanted, removal: drawPlots(wanted) };
  page.plotted?.removal.catch((failed) => {
    page.failed = failed;
    draw();
  });
}

window.addEventListener('hashchange', () => load(true));
await start();
whenPersonChanges(() => draw());
load(false).then(() => page.at.row !== null && focusPart(page.at));
