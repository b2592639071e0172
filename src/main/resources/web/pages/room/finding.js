// The ways to an examination: patient group, body parts and examinations to touch, and the list for letters.
import { html, nothing } from '/pages/lit-html.js';
import { search } from './finder.js';
import { reach } from './thickness.js';

const AT_ONCE = 8;

/** What is offered at this moment: within the chosen group and fitting the letters. */
export function offered(state) {
  const inGroup = state.exams.filter((each) => !state.group || each.patientGroup === state.group);
  return state.query.trim() === '' ? inGroup : search(inGroup, state.query);
}

export function finding(state, act) {
  return html`
    ${groups(state, act)}
    ${state.query.trim() !== '' ? list(state, act) : state.part ? partTiles(state, act) : allParts(state, act)}`;
}

function groups(state, act) {
  const there = new Set(state.exams.map((each) => each.patientGroup));
  const known = state.site.patientGroups.filter((group) => there.has(group.id));
  if (known.length < 2) return nothing;
  return html`
    <div class="groups" role="group" aria-label="Patient group">
      <span class="quiet" aria-hidden="true">Patient</span>
      <button type="button" aria-pressed=${!state.group} @click=${() => act.inGroup(null)}>All, adults first</button>
      ${known.map((group) => html`
        <button type="button" aria-pressed=${state.group === group.id} @click=${() => act.inGroup(group.id)}>${group.label}</button>`)}
    </div>`;
}

function list(state, act) {
  const found = offered(state);
  if (found.length === 0) {
    return html`<p class="tell" id="matches"><strong>Nothing on this room's chart begins like that.</strong>
      Try fewer letters, such as <b>kn ap</b>${state.group ? ', or all patient groups' : nothing}; Esc clears.</p>`;
  }
  const first = state.marked - (state.marked % AT_ONCE);
  const shown = found.slice(first, first + AT_ONCE);
  return html`
    ${shown.length < found.length ? part(first, shown.length, found.length, act) : nothing}
    <ul class="matches" id="matches" role="listbox" aria-label="Examinations that fit">
      ${shown.map((each, index) => html`
        <li role="option" id="match-${first + index}" aria-selected=${first + index === state.marked}
          aria-setsize=${found.length} aria-posinset=${first + index + 1} class=${each.adult ? nothing : 'child'}
          @click=${() => act.choose(each, 'touch')}>
          <span class="what">${each.words.part} ${each.words.projection}</span>
          <span>${each.words.support}</span>
          ${groupMark(each)}
          <span class="reach">${reach(each, state.unit)}</span>
        </li>`)}
    </ul>
    ${shown.length < found.length ? nothing : keyWords}`;
}

/** Which part of a long list this is: what does not stand here is not missing from the chart. */
const part = (first, count, all, act) => html`
  <div class="part"><p><b>${partWords(first, count, all)}</b>: type another letter.</p>
    <button type="button" ?disabled=${first === 0} @click=${() => act.markAt(first - AT_ONCE)}>Earlier</button>
    <button type="button" ?disabled=${first + count === all} @click=${() => act.markAt(first + count)}>More</button>
    ${keyWords}</div>`;

const partWords = (first, count, all) => (first === 0 ? `${count} of ${all} that fit` : `${first + 1} to ${first + count} of ${all} that fit`);

/** For a screen reader: how much of the list stands there; nothing where it is all. */
export function listWords(state) {
  const all = state.query.trim() === '' ? 0 : offered(state).length;
  const first = state.marked - (state.marked % AT_ONCE);
  return all <= AT_ONCE ? '' : `${partWords(first, Math.min(AT_ONCE, all - first), all)}: type another letter`;
}

const keyWords = html`<p class="quiet keys"><kbd>↑</kbd> <kbd>↓</kbd> choose · digits are the thickness of the marked one · <kbd>Esc</kbd> clears</p>`;

/** The patient group in a mark of its own: a child's row taken for an adult's is the worst mistake here. */
export const groupMark = (each) => html`<span class="group ${each.adult ? '' : 'child'}">${each.words.group}</span>`;

function allParts(state, act) {
  const parts = new Map();
  for (const each of offered(state)) {
    if (!parts.has(each.bodyPart)) parts.set(each.bodyPart, each);
  }
  const listed = [...parts.values()].sort((a, b) => a.order[1] - b.order[1]);
  const regions = [...state.site.regions, { region: 'other', label: 'Other' }]
    .map((region) => ({ ...region, parts: listed.filter((each) => each.region === region.region) }))
    .filter((region) => region.parts.length > 0);
  return html`
    <div class="regions">
      ${regions.map((region) => html`
        <section aria-labelledby="region-${region.region}">
          <h2 id="region-${region.region}">${region.label}</h2>
          <div class="tiles parts">
            ${region.parts.map((each) => html`
              <button type="button" @click=${() => act.openPart(each.bodyPart)}>${each.words.part}</button>`)}
          </div>
        </section>`)}
    </div>`;
}

function partTiles(state, act) {
  const there = offered(state).filter((each) => each.bodyPart === state.part);
  const inGroups = state.site.patientGroups
    .map((group) => ({ ...group, exams: there.filter((each) => each.patientGroup === group.id) }))
    .concat({ id: 'other', label: 'Other', exams: there.filter((each) => !state.site.patientGroups.some(({ id }) => id === each.patientGroup)) })
    .filter((group) => group.exams.length > 0);
  return html`
    <div class="opened">
      <button type="button" class="back" @click=${() => act.openPart(null)}>‹ All parts</button>
      <h2 id="opened" tabindex="-1">${there[0]?.words.part ?? 'Nothing here for this patient group'}</h2>
    </div>
    <div class="ofgroups">${inGroups.map((group) => html`
      <section class="ofgroup ${group.id === 'adult' ? '' : 'child'}" aria-labelledby="group-${group.id}">
        <h3 id="group-${group.id}">${group.label}</h3>
        <div class="tiles">
          ${group.exams.map((each) => html`
            <button type="button" class="exam" @click=${() => act.choose(each, 'touch')}>
              <span class="what"><span class="unseen">${each.words.part} </span>${each.words.projection}</span>
              <span class="where">${each.words.support}<span class="unseen">, ${each.words.group}</span></span>
              <span class="reach">${reach(each, state.unit)}</span>
            </button>`)}
        </div>
      </section>`)}</div>`;
}
