// What the page shows of its state; `page` as chart.js holds it, `acts` what people may do.
import { html, nothing } from '/pages/lit-html.js';
import { trouble } from '/pages/shell.js';
import { room, toVersion, toComparison } from '/pages/chart/address.js';
import { versionHead, pickers } from '/pages/chart/head.js';
import { rowsPart } from '/pages/chart/rows.js';
import { progress, findingsPart } from '/pages/chart/findings.js';
import { curvesPart } from '/pages/chart/curves.js';
import { comparePart } from '/pages/chart/compare.js';
import { adjustmentWords } from '/pages/chart/terms.js';

const working = (words) => html`<p role="status"><progress></progress> ${words}</p>`;
const missing = (what, words, way = nothing) => html`<p class="tell caution"><strong>No such ${what}.</strong>${words} ${way}</p>`;

/** The whole page below its heading. */
export function view(page, acts) {
  if (page.versions === null) {
    return page.failed ? html`<div role="alert">${trouble(page.failed)}</div>
      <p class="row"><button type="button" @click=${acts.again}>Try again</button> <a href="/">To the rooms</a></p>`
      : working('Reading the chart');
  }
  const comparing = page.at.view === 'compare';
  return html`
    ${pickers({
    rooms: page.rooms, room: room(), versions: comparing ? [] : page.versions, inForce: page.inForce,
    shown: page.head?.version ?? null, goToVersion: (number) => acts.go(toVersion(number)),
  })}
    <div role="alert">${page.failed ? trouble(page.failed) : nothing}</div>
    ${page.failed ? html`<p><button type="button" @click=${acts.again}>Try again</button></p>` : nothing}
    ${comparing ? comparison(page, acts) : version(page, acts)}`;
}

function version(page, acts) {
  const { head, at } = page;
  if (page.versions.length === 0) return html`<p>This room has no chart yet: propose a change, or load a department's folder.</p>`;
  if (head === null) {
    return missing('version', `The chart of this room has no version ${at.version ?? at.unreadable}: choose one above.`);
  }
  const content = page.content?.version === head.version ? page.content : null;
  if (at.examination !== null) return content === null ? reading(page) : examination(page, content, acts);
  return html`
    ${versionHead({
    room: room(), head, inForce: page.inForce, newest: page.versions[0].version,
    counts: content && { rows: content.rows.length, adjustments: content.adjustments.length }, askBringBack: acts.askBringBack,
  })}
    ${content === null ? reading(page) : contentView(page, content, acts)}`;
}

const reading = (page) => (page.failed ? nothing : working('Reading the rows'));

const contentView = (page, content, acts) => html`
  ${progress(page.findings, page.head.version, acts.check)}
  ${page.at.row !== null && !content.rows.some((row) => row.key === page.at.row)
    ? missing('row', `Version ${page.head.version} has no row ${page.at.row}.`) : nothing}
  ${parts(page, content)}
  ${part(page, content, acts)}`;

function parts({ head, at, findings, versions }, content) {
  const number = head.version;
  const links = [
    ['rows', `Rows (${content.rows.length})`],
    ['adjustments', `Named adjustments (${content.adjustments.length})`],
    ['findings', `Findings (${findings.list.length}${findings.state === 'running' ? ' so far' : ''})`],
  ];
  return html`
    <nav class="parts" aria-label="Parts of version ${number}">
      ${links.map(([name, words]) => html`
        <a href=${toVersion(number, name)} aria-current=${at.part === name ? 'page' : nothing}>${words}</a>`)}
      ${versions.length > 1
    ? html`<a href=${toComparison(Math.max(1, number - 1), Math.max(2, number))}>Compare two versions</a>` : nothing}
    </nav>`;
}

function part(page, content, acts) {
  const number = page.head.version;
  if (page.at.part === 'findings') return findingsPart(page.findings, number);
  if (page.at.part === 'adjustments') return adjustmentsPart(content.adjustments);
  return rowsPart({
    content, version: number, look: page.look, findings: page.findings, physics: (key) => page.predicted.get(key), changed: acts.draw,
  });
}

const adjustmentsPart = (adjustments) => html`
  <h2 id="part" tabindex="-1">Named adjustments</h2>
  ${adjustments.length === 0 ? html`<p>This version has none.</p>` : html`
  <div class="scroll"><table id="adjustments"><caption>Asked for by name with a technique; each adds kV or multiplies mAs</caption>
    <thead><tr><th scope="col">Adjustment</th><th scope="col">Does</th><th scope="col">Notes</th><th scope="col">Asked as</th></tr></thead>
    <tbody>${adjustments.map((one) => html`<tr><th scope="row">${one.label}</th><td>${adjustmentWords(one)}</td><td>${one.notes}</td>
      <td><code>${one.name}</code></td></tr>`)}</tbody>
  </table></div>`}`;

function examination(page, content, acts) {
  const { curves, at, head } = page;
  if (curves === null || curves.examination !== at.examination || curves.version !== head.version) {
    const all = html`<a href=${toVersion(head.version)}>All rows of version ${head.version}</a>`;
    return page.loading || page.failed ? working('Working out the curves')
      : missing('examination', `Version ${head.version} has no rows of ${at.examination}.`, all);
  }
  const changed = (more) => {
    Object.assign(curves, more);
    acts.draw();
  };
  return curvesPart({ now: curves, content, head, inForce: page.inForce, again: acts.again, changed, go: acts.go });
}

const comparison = (page, acts) => html`
  ${comparePart({
    versions: page.versions, inForce: page.inForce, from: page.from, to: page.to, difference: page.difference, kinds: page.kinds,
    go: acts.go, turnKind: acts.turnKind,
  })}
  ${page.loading ? working('Comparing') : nothing}`;
