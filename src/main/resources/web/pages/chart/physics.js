// What the check against beam physics says, in words beside a row.
import { html, nothing } from '/pages/lit-html.js';

const VERDICTS = { good: 'good', usable: 'usable', poor: 'poor', 'cannot-tell': 'physics cannot tell', 'not-predicted': 'not predicted' };
const KINDS = { good: 'good', poor: 'caution' };
const RULES = { thickness: 'Thickness', 'fifteen-percent': '15 % rule', grid: 'Grid' };

/** Microgray as people read them. */
export const milligrays = (microgray) => `${Number((microgray / 1000).toPrecision(3))} mGy`;

/** 'entrance 0.71 mGy with backscatter, …'. */
export const costWords = (dose) => `${dose.upperBound ? 'at most ' : ''}${milligrays(dose.entranceAirKermaMicroGy)} with backscatter, `
  + `${milligrays(dose.incidentAirKermaMicroGy)} without, within ${dose.uncertaintyPercent} %; output ${dose.outputSource}`;

/** How good each rule of thumb is in a row. */
export const gradeList = (grades) => (grades.length === 0 ? nothing : html`
  <h3>Rules of thumb here, held against beam physics</h3>
  <ul class="plain">${grades.map((grade) => html`
    <li><span class="mark ${KINDS[grade.verdict] ?? ''}">${RULES[grade.rule]}: ${VERDICTS[grade.verdict]}</span>
      ${grade.text}</li>`)}</ul>`);
