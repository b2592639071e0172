// No technique: what, the value, the limit, and the next step, with what can be asked instead to touch.
import { html, nothing } from '/pages/lit-html.js';
import { length, spoken } from '/pages/words.js';
import { bandWords, reach } from './thickness.js';
import { placing, withoutService } from './answer.js';
import { sentence } from './sentences.js';

export function refusal(state, act) {
  const { problem, source } = state.answer;
  return html`
    <section class="refusal tell blocking" role="alert" aria-labelledby="refused">
      <h2 id="refused">No technique${state.answer.question ? html` for ${length(state.answer.question.thicknessCm, state.unit)}` : nothing}</h2>
      <p class="why">${sentence(problem.detail ?? problem.title, state)}</p>
      ${source === 'pack' ? html`<p><strong>${withoutService(state.answer)}</strong> This is what the chart kept at this workstation says.</p>` : nothing}
      ${(problem.errors ?? []).length > 1 ? html`<ul>${problem.errors.map((error) => html`<li>${sentence(error.detail, state)}</li>`)}</ul>` : nothing}
      ${reasons(problem, state)}
      <div class="instead">${supports(problem, state, act)}${nearest(problem, state, act)}${others(problem, state, act)}${asCharted(state, act)}</div>
    </section>
    ${state.chosen ? placing(state.chosen.rows[0], state.head) : nothing}`;
}

const reasons = ({ reasons: all }, state) => ((all ?? []).length > 1 ? html`<ul>${all.map((text) => html`<li>${sentence(text, state)}</li>`)}</ul>` : nothing);

/** The same examination where the patient would be elsewhere; the thickness stays. */
function supports(problem, state, act) {
  const there = (problem.supports ?? [])
    .map((support) => state.exams.find((each) => each.support === support && sameExamination(each, state.chosen)))
    .filter((each) => each && each !== state.chosen);
  return there.map((each) => html`
    <button type="button" class="first" @click=${() => act.choose(each, 'touch')}>Ask at ${spoken(each.support)} (${reach(each, state.unit)})</button>`);
}

const sameExamination = (a, b) => b && a.bodyPart === b.bodyPart && a.projection === b.projection && a.patientGroup === b.patientGroup;

/** Looking at a neighbouring band is offered, and the answer goes on saying that it is not for the measured thickness. */
function nearest(problem, state, act) {
  const all = problem.nearestBandsCm ?? [];
  return all.map((band) => html`
    <button type="button" @click=${() => act.lookAt(band)}>Look at ${bandWords(band, state.unit)} ${state.unit}</button>`);
}

/** What would do, each tried by the service with this room's limits. */
function others(problem, state, act) {
  const asked = problem.alternativeQuestions ?? [];
  const texts = (problem.alternatives ?? []).filter((text) => !asked.some((each) => each.text === text) && !problem.detail.includes(text));
  return html`
    ${asked.map((each) => html`<button type="button" class="first" @click=${() => act.instead(each)}>Ask with ${sentence(each.text, state)}</button>`)}
    ${texts.length ? html`<p>${asked.length ? 'Or, by judgement:' : 'What would do, by judgement:'} ${sentence(texts.join('; '), state)}</p>` : nothing}`;
}

function asCharted(state, act) {
  const plain = state.sidCm === null && state.grid === null && state.adjust.length === 0;
  return plain || !state.chosen ? nothing : html`<button type="button" @click=${act.asCharted}>Ask as charted, without SID, grid and adjustments</button>`;
}
