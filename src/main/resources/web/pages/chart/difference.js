// One thing that differs between two versions, as lines of a table: as many as fields, or one for what came or went whole.
import { html, nothing } from '/pages/lit-html.js';
import { fieldText, fieldWords } from '/pages/chart/terms.js';

export const KINDS = [
  { kind: 'added', word: 'Added', mark: 'good' },
  { kind: 'withdrawn', word: 'Withdrawn', mark: 'blocking' },
  { kind: 'changed', word: 'Changed', mark: 'caution' },
];

const markOf = (kind) => {
  const { word, mark } = KINDS.find((one) => one.kind === kind);
  return html`<span class="mark ${mark}">${word}</span>`;
};

export const tableHead = (what, from, to) => html`
  <thead><tr><th scope="col">${what}</th><th scope="col">What</th><th scope="col">Field</th>
    <th scope="col">Version ${from}</th><th scope="col">Version ${to}</th></tr></thead>`;

const NOWHERE = html`<span class="small">not in it</span>`;
const EMPTY = html`<span class="small">empty</span>`;

/** `{key, kind, fields | whole}` under its title. */
export const differenceLines = (one, title) => (one.kind === 'changed' ? one.fields.map((field, at) => fieldLine(one, field, at, title))
  : html`<tr data-key=${one.key}><th scope="row">${title}</th><td>${markOf(one.kind)}</td><td>all</td>
    <td>${one.kind === 'withdrawn' ? one.whole : NOWHERE}</td><td>${one.kind === 'added' ? one.whole : NOWHERE}</td></tr>`);

const fieldLine = ({ key, kind, fields }, { field, before, after }, at, title) => html`
  <tr data-key=${key}>
    ${at > 0 ? nothing : html`<th scope="row" rowspan=${fields.length}>${title}</th><td rowspan=${fields.length}>${markOf(kind)}</td>`}
    <td>${fieldWords(field)}</td><td><del>${fieldText(field, before) || EMPTY}</del></td>
    <td><ins>${fieldText(field, after) || EMPTY}</ins></td>
  </tr>`;
