// Above the table of rows: finding rows of the chart, choosing columns, and what can be done to the row that has the focus.
import { html, nothing } from '/pages/lit-html.js';
import { GROUPS, MAIN_GROUPS, COLUMNS, keyWords, keyLine, keyOf, shown, spokenBack, choicesOf } from '/pages/change/fields.js';
import { Draft } from '/pages/change/draft.js';

const MOST_FOUND = 60;
const GROUPS_KEPT = 'wallchart.change.columns';

export const chosenGroups = () => {
  const kept = localStorage.getItem(GROUPS_KEPT)?.split('|').filter((one) => GROUPS.includes(one));
  return new Set(kept?.length ? kept : MAIN_GROUPS);
};

export function chooseGroup(groups, group, on) {
  const next = new Set(groups);
  if (on) next.add(group);
  else if (next.size > 1) next.delete(group);
  localStorage.setItem(GROUPS_KEPT, [...next].join('|'));
  return next;
}

export const columnsOf = (groups) => COLUMNS.filter(({ group }) => groups.has(group));

const searchable = (key, site) => `${key} ${keyLine(key, site)}`.toLowerCase().replaceAll('/', ' ');

/** Lines to show: those that are touched, and those of the chart in which every word is found. */
export function linesOf(draft, words, brought, site) {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean);
  const found = draft.order.filter((key) => wanted.length > 0 && wanted.every((word) => searchable(key, site).includes(word)));
  const listed = new Set([...found.slice(0, MOST_FOUND), ...brought]);
  const keys = draft.order.filter((key) => listed.has(key) || (draft.rows.has(key) && draft.isTouched(draft.rows.get(key))));
  const lines = keys.filter((key) => draft.rows.has(key) || draft.base.has(key)).map((key) => draft.line(key));
  return { lines, found: found.length, more: Math.max(0, found.length - MOST_FOUND) };
}

export const finder = ({ words, found, more, groups }, on) => html`
  <div class="row">
    <label class="field">Bring rows of the chart in: words of body part, projection, group, support, band
      <input type="search" id="find" size="36" .value=${words} autocomplete="off" @input=${(event) => on.find(event.target.value)}></label>
    <button type="button" @click=${on.keepFound} ?disabled=${found === 0}>Keep these in the table</button>
    <span role="status" class="small">${words.trim() === '' ? 'Edited rows are always shown.'
      : `${found} ${found === 1 ? 'row' : 'rows'} of the chart found${more ? `, ${more} more than are shown: write more words`
        : ''}.`}</span>
    <details class="columns"><summary>Columns</summary>
      <fieldset><legend>Groups of columns</legend>
        ${GROUPS.map((group) => html`<label class="tick"><input type="checkbox" .checked=${groups.has(group)}
          @change=${(event) => on.group(group, event.target.checked)}>${group}</label>`)}</fieldset></details>
  </div>`;

/** What may be done to the active row; what may not says why. */
export function tools(line, draft, site, on) {
  const words = line ? keyWords(line.key, site) : null;
  const untouched = !line || (line.kind === null && line.op === null);
  const out = line && (line.withdrawn || line.op === 'withdraw');
  const why = !line ? 'Choose a row in the table first.'
    : out ? 'This row is withdrawn: undo that to edit it.'
      : untouched ? 'Nothing to undo in this row.' : '';
  return html`<div class="row tools" role="group" aria-label="The row in the focus">
    <span>${line ? html`<strong>${words.part} ${words.projection}</strong> <span class="small">${words.group}, ${words.support},
      ${words.band}</span>` : nothing}</span>
    <button type="button" id="undo-row" ?disabled=${untouched} @click=${() => on.undo(line)}>Undo edits</button>
    <button type="button" ?disabled=${!line || out} @click=${() => on.withdraw(line)}>Withdraw row</button>
    <button type="button" ?disabled=${!line || out} @click=${() => on.split(line)}>Split band …</button>
    <button type="button" ?disabled=${!line} @click=${() => on.add(line)}>Add a row like this …</button>
    <button type="button" id="add-row" @click=${() => on.add(null)}>Add a row …</button>
    <span class="small">${why}</span>
  </div>`;
}

/** The two dialogs; `dialog.kind` is `add` or `split`. */
export const dialogOf = (dialog, site, room, on) => (dialog.kind === 'split' ? split(dialog, site, on) : add(dialog, site, room, on));

const split = ({ line, refused }, site, on) => html`<form @submit=${on.doSplit}>
  <h2 id="dialog-title">Split the band</h2>
  <p>${keyLine(line.key, site)}</p>
  <div role="alert">${refused ? html`<p class="tell blocking"><strong>Not split.</strong>${refused}</p>` : nothing}</div>
  <label class="field">At, ${site.lengthUnit}<input name="at" inputmode="decimal" required autocomplete="off"></label>
  <p class="small">Both rows keep the technique of this one; each has the middle of its band as reference
    thickness. Adjust them afterwards.</p>
  <div class="row"><button class="first">Split</button><button type="button" @click=${on.close}>Cancel</button></div></form>`;

const CHOSEN = ['bodyPart', 'projection', 'patientGroup', 'support'];

function add({ texts, like, refused }, site, room, on) {
  return html`<form @submit=${on.doAdd}>
  <h2 id="dialog-title">${like ? 'Add a row like this one' : 'Add a row'}</h2>
  ${like ? html`<p>As ${keyLine(like, site)}, for another band or examination.</p>` : nothing}
  <div role="alert">${refused ? html`<p class="tell blocking"><strong>Not added.</strong>${refused}</p>` : nothing}</div>
  ${CHOSEN.map((name) => html`<label class="field">${COLUMNS.find((one) => one.name === name).label}
    <select name=${name}>${choicesOf(name, site, room).map((one) =>
      html`<option value=${one} ?selected=${texts[name] === one}>${labelOf(name, one, site)}</option>`)}
    </select></label>`)}
  <div class="row">
    <label class="field">Band from,
      ${site.lengthUnit}<input name="bandFromCm" inputmode="decimal" required autocomplete="off" size="8"></label>
    <label class="field">to under,
      ${site.lengthUnit}<input name="bandToCm" inputmode="decimal" required autocomplete="off" size="8"></label>
  </div>
  <div class="row"><button class="first">Add</button><button type="button" @click=${on.close}>Cancel</button></div></form>`;
}

function labelOf(name, value, site) {
  const words = keyWords({ bodyPart: `${value}/x/x/x/0-1`, projection: `x/${value}/x/x/0-1`, patientGroup: `x/x/${value}/x/0-1`,
    support: `x/x/x/${value}/0-1` }[name], site);
  return { bodyPart: words.part, projection: words.projection, patientGroup: words.group, support: words.support }[name];
}

/** A typed length as the interface takes it, or null where it is none. */
export function lengthTyped(text, unit) {
  const typed = text.trim();
  if (!/^\d+(\.\d+)?$/.test(typed)) return null;
  return String(Number(spokenBack('bandFromCm', typed, '', unit)));
}

/** What comes of splitting a row: `{edits, rest}`, or `{refused}`. */
export function splitAt(line, text, site) {
  const at = lengthTyped(text, site.lengthUnit);
  const [from, to] = ['bandFromCm', 'bandToCm'].map((name) => Draft.value(line, name));
  if (at === null) return { refused: `"${text}" is no length: write plain digits with a decimal point.` };
  if (!(Number(at) > Number(from) && Number(at) < Number(to))) {
    return { refused: `${text} ${site.lengthUnit} lies not inside the band from ${shown('bandFromCm', from, site.lengthUnit)} to `
      + `${shown('bandToCm', to, site.lengthUnit)} ${site.lengthUnit}.` };
  }
  return {
    edits: { bandToCm: at, referenceThicknessCm: '' },
    rest: { ...Draft.texts(line), bandFromCm: at, referenceThicknessCm: '' },
  };
}

/** The texts of a row that is to be added, or `{refused}`. */
export function added(form, texts, draft, site) {
  const band = ['bandFromCm', 'bandToCm'].map((name) => lengthTyped(form.elements[name].value, site.lengthUnit));
  if (band.includes(null)) return { refused: 'The band needs two lengths: plain digits with a decimal point.' };
  const next = { ...texts, bandFromCm: band[0], bandToCm: band[1], referenceThicknessCm: '' };
  CHOSEN.forEach((name) => { next[name] = form.elements[name].value; });
  const key = keyOf(next);
  const there = draft.rows.get(key);
  return draft.base.has(key) || (there && (there.server || there.op))
    ? { refused: `There is a row ${keyLine(key, site)} already: find it in the table.` } : { texts: next };
}
