// How the technique was derived: one rule at a time, as the service tells it.
import { html, nothing } from '/pages/lit-html.js';
import { computed, length } from '/pages/words.js';
import { adjustmentWords } from './differing.js';
import { ruleWords, sentence } from './sentences.js';

export function steps(state, act) {
  const { technique: told } = state.answer ?? {};
  if (!told) return nothing;
  return html`
    <div class="derivation">
      <h2 id="steps-title">How it was derived</h2>
      <p>Row <code>${told.row.key}</code>, for ${length(told.asked.thicknessCm, state.unit)}${told.asked.adjustments.length
        ? html`, with ${told.asked.adjustments.map((name) => adjustmentWords(name, state.head)).join('; ')}` : nothing}</p>
      ${told.steps ? table(told, state) : html`<p class="tell caution"><strong>Derivation not kept offline.</strong>Ask again when the service is back.</p>`}
      <p>${rounding(told)}</p>
      <form method="dialog"><button class="first" autofocus>Back <kbd>Esc</kbd></button></form>
    </div>`;
}

const table = (told, state) => html`
  <div class="scroll"><table>
    <thead><tr><th scope="col">Rule</th><th scope="col">What it does</th><th scope="col" class="number">kV</th><th scope="col" class="number">mAs</th></tr></thead>
    <tbody>${told.steps.map((step) => html`
      <tr><th scope="row">${ruleWords(step.rule)}</th><td>${sentence(step.text, state)}</td>
        <td class="number">${number(step.kV)}</td><td class="number">${number(step.mAs)}</td></tr>`)}</tbody>
  </table></div>`;

const number = (value) => (value === null || value === undefined ? '' : computed(value));

function rounding({ roundingDeviation: deviation, exact, set }) {
  if (deviation === null || deviation === undefined) return nothing;
  const sign = deviation > 0 ? '+' : '';
  return html`Before stations ${computed(exact.kV)} kV and ${computed(exact.mAs)} mAs; set to ${set.kV} kV and ${set.mAs ?? ''} mAs,
    which is <b>${sign}${Number(deviation.toFixed(2))} dB</b> at the receptor (1 dB is 26 %).`;
}
