// What differs from the row for this patient, in words; and what of it was not taken over when another measurement began.
import { html, nothing } from '/pages/lit-html.js';
import { length, spoken } from '/pages/words.js';
import { gridName } from './answer.js';
import { AS_CHARTED } from './state.js';

/** The parts of a state that differ from the row, or null where nothing does. */
export function differing({ adjust, sidCm, grid }) {
  return adjust.length === 0 && sidCm === null && grid === null ? null : { adjust, sidCm, grid };
}

/** 'Wet plaster cast (mAs × 3)'. */
export function adjustmentWords(name, { adjustments }) {
  const found = adjustments.find((each) => each.name === name);
  if (!found) return spoken(name);
  const { label, addKV, timesMAs } = found;
  return `${label} (${timesMAs ? `mAs × ${timesMAs}` : `${addKV > 0 ? '+' : '−'}${Math.abs(addKV)} kV`})`;
}

const adjustments = ({ asked }, { head }) => asked.adjustments.map((name) => adjustmentWords(name, head));

/** All that the technique has otherwise than its row, each in words. */
function withWords(technique, state) {
  const { set, row } = technique;
  const { head, unit } = state;
  return [
    ...adjustments(technique, state),
    ...(set.sidCm === row.sidCm ? [] : [`SID ${length(set.sidCm, unit)}, chart ${length(row.sidCm, unit)}`]),
    ...(set.grid === row.grid ? [] : [`${gridWords(set.grid, head, unit)}, chart ${gridName(row.grid, head.grids, unit)}`]),
  ];
}

const gridWords = (id, { grids }, unit) => (id === 'none' ? 'no grid' : `grid ${gridName(id, grids, unit)}`);

/** Beside the figures: the adjustments in them. SID and grid are figures themselves, and say so where their names stand. */
export function withLine(technique, state) {
  const all = adjustments(technique, state);
  return all.length === 0 ? nothing : html`<p class="with"><strong>With:</strong> ${all.join('; ')}</p>`;
}

/**
 * The changes to a state where another measurement begins: the next patient does not get the last one's cast. What differed is kept
 * aside, to be said and put back by one touch.
 */
export const asCharted = (state) => ({ ...AS_CHARTED, adjust: [], dropped: differing(state) });

export function droppedNote({ dropped, head, unit, chosen }, act) {
  if (!dropped || !chosen) return nothing;
  return html`
    <p class="tell caution note"><strong>As charted again.</strong> <span>Not taken over: ${droppedWords(dropped, head, unit).join('; ')}.</span>
      <button type="button" @click=${act.putBack}>Same patient: put back</button></p>`;
}

function droppedWords({ adjust, sidCm, grid }, head, unit) {
  return [
    ...adjust.map((name) => adjustmentWords(name, head)),
    ...(sidCm === null ? [] : [`SID ${length(sidCm, unit)}`]),
    ...(grid === null ? [] : [gridWords(grid, head, unit)]),
  ];
}

/** 'for 12.4 cm', and what is not as the row has it behind it. */
export function forWords(told, state) {
  const differs = withWords(told, state);
  return `for ${length(told.asked.thicknessCm, state.unit)}${differs.length ? `, with ${differs.join('; ')}` : ''}`;
}
