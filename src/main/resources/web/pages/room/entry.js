// Where a thickness is entered: by keys, by + and -, or on the scale that shows the bands of this examination.
import { html, nothing } from '/pages/lit-html.js';
import { bands, bandWords, holds, inCentimetres, number, scale } from './thickness.js';

export function entry(state, act) {
  const { unit, typed } = state;
  const entered = number(typed) !== null;
  return html`
    <div class="thickness" role="group" aria-label="Part thickness">
      <label for="thickness">Thickness</label>
      <button type="button" class="step" ?disabled=${!entered} aria-label="Thinner by one step" @click=${() => act.step(-1)}>−</button>
      <input id="thickness" inputmode="decimal" autocomplete="off" maxlength="6" size="4" placeholder="––"
        aria-describedby="measure" aria-invalid=${typed !== '' && !entered && typed !== '0' ? 'true' : nothing}
        .value=${typed} @beforeinput=${(event) => { event.target.wholeReplaced = allSelected(event.target); }}
        @input=${(event) => act.type(event.target.value, event.target.wholeReplaced)}>
      <span class="unit">${unit}</span>
      <button type="button" class="step" ?disabled=${!entered} aria-label="Thicker by one step" @click=${() => act.step(1)}>+</button>
    </div>`;
}

/** What is typed now stands for a number of its own, not for a correction. */
const allSelected = ({ value, selectionStart, selectionEnd }) => value !== '' && selectionStart === 0 && selectionEnd === value.length;

/** The chart's bands of the examination along one line; a touch anywhere on it enters that thickness. */
export function ruler(state, act) {
  const { chosen, unit, typed } = state;
  const ends = scale(chosen, unit);
  const cm = inCentimetres(typed, unit);
  const value = number(typed);
  const from = unit === 'in' ? ends.min * 2.54 : ends.min;
  const to = unit === 'in' ? (ends.max + ends.step) * 2.54 : ends.max + ends.step;
  const set = ({ target }) => {
    act.slide(target.value, target.touched);
    target.touched = false;
  };
  return html`
    <div class="ruler">
      <div class="bands" aria-hidden="true">
        ${pieces(bands(chosen), from, to).map(({ band, share }) => html`
          <span class=${band ? (cm !== null && holds(band, cm) ? 'band here' : 'band') : 'gap'} .style=${`flex-grow: ${share}`}>
            ${band ? bandWords(band, unit) : nothing}</span>`)}
      </div>
      <input type="range" id="scale" min=${ends.min} max=${ends.max} step=${ends.step} aria-label="Thickness in ${unit}"
        class=${value === null || value < ends.min || value > ends.max ? 'unset' : nothing}
        aria-valuetext=${value === null ? 'not entered yet' : `${value} ${unit}`}
        .value=${String(value ?? ends.min)} @pointerdown=${(event) => { event.target.touched = true; }} @input=${set} @click=${set}>
    </div>`;
}

/** The bands and the gaps between them, each with its share of the line. */
function pieces(all, from, to) {
  const found = [];
  let at = from;
  for (const band of [...all].sort((a, b) => a[0] - b[0])) {
    if (band[0] > at) found.push({ band: null, share: band[0] - at });
    found.push({ band, share: Math.max(0.1, Math.min(band[1], to) - Math.max(band[0], from)) });
    at = band[1];
  }
  return found;
}
