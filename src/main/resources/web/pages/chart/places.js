// The places of the plots with their headings and keys; the plots themselves are drawn in when they are in the document.
import { html, nothing } from '/pages/lit-html.js';
import { lengthNumber } from '/pages/words.js';
import { unit } from '/pages/chart/terms.js';
import { isIncident } from '/pages/chart/reading.js';

const key = (number, words) => html`<li><span class="key key-${number}" aria-hidden="true"></span>${words}</li>`;

const place = (id, title, keys, note = nothing) => html`
  <figure>
    <figcaption><h3>${title}</h3><ul class="keys">${keys}</ul>${note}</figcaption>
    <div class="plot" id=${id} role="img" aria-label="${title}, along the thickness. The same numbers stand in the table below."></div>
  </figure>`;

const RULE = key('dashed', 'by the rows’ rules, before stations');

/** What stands for whom: of a level that it is no limit. */
const levelWords = (level) => `reference level ${level.value} ${level.unit} (${level.source}, ${level.year}), `
  + 'for patients of usual size, no limit for one';

/** All places that the examination has something for. */
export function places(courses, physics) {
  const costed = courses.rows.some((row) => row.points.some((point) => point.dose !== null));
  return html`<div class="plots">
    ${place('plot-kv', 'Tube voltage, kV', [key('solid', 'set at the console'), RULE])}
    ${currentTimePlace(courses, physics)}
    ${physics.reference === null ? nothing : exposurePlace(physics)}
    ${costed ? kermaPlace(courses) : nothing}
    ${costed && courses.kermaAreaProductLevel ? productPlace(courses.kermaAreaProductLevel) : nothing}
  </div>`;
}

function currentTimePlace(courses, physics) {
  const automatic = courses.rows.filter((row) => row.aec).length;
  const all = automatic === courses.rows.length;
  const set = all ? 'back-up set at the console; AEC ends the exposure before' : 'set at the console';
  return place('plot-mas', all ? 'Back-up current-time product, mAs' : 'Current-time product, mAs', [
    key('solid', automatic > 0 && !all ? `${set}; under AEC the back-up` : set), RULE,
    physics.reference === null ? nothing : key('dotted', 'would keep the receptor exposure even (beam physics)'),
  ], html`<p class="small">Logarithmic</p>`);
}

const exposurePlace = (physics) => place('plot-exposure', 'Receptor exposure, dB over the reference',
  [key('solid', 'predicted by beam physics, before stations')],
  html`<p class="small">0 dB is at ${lengthNumber(physics.reference.thicknessCm, unit())} ${unit()};
    ${physics.comparedAs}. 1 dB is 26 %.</p>`);

function kermaPlace(courses) {
  const level = courses.referenceLevel;
  const title = isIncident(courses) ? 'Incident air kerma without backscatter, mGy' : 'Entrance surface air kerma with backscatter, mGy';
  const automatic = courses.rows.some((row) => row.aec);
  return place('plot-kerma', title, [
    key('solid', `estimate${automatic ? '; under AEC at most this, at the back-up' : ''}`),
    level ? key('level', levelWords(level)) : html`<li>the site has no reference level for this examination</li>`,
  ]);
}

const productPlace = (level) => place('plot-product', 'Kerma-area product, µGy m²', [
  key('solid', 'estimate, of the field the row names'), key('level', levelWords(level))]);
