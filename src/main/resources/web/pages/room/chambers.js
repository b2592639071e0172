// The three fields of an AEC as one looks at the receptor: which are on.
import { html } from '/pages/lit-html.js';

const on = (chosen, name) => (chosen.includes(name) ? 'on' : 'off');

export const chambers = (chosen) => html`
  <svg class="chambers" viewBox="0 0 66 66" role="img" aria-label="Chambers on: ${chosen.join(' and ')}">
    <rect class="plate" x="1" y="1" width="64" height="64" rx="3"></rect>
    <rect class=${on(chosen, 'left')} x="9" y="11" width="15" height="22"></rect>
    <rect class=${on(chosen, 'right')} x="42" y="11" width="15" height="22"></rect>
    <rect class=${on(chosen, 'centre')} x="25.5" y="36" width="15" height="22"></rect>
  </svg>`;
