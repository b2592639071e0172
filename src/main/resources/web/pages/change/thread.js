// Who did what to a change, and why: the discussion, by the reasons that people gave.
import { html, nothing } from '/pages/lit-html.js';
import { keyLine } from '/pages/change/fields.js';
import { moment } from '/pages/words.js';

const DID = {
  opened: 'opened the change', submitted: 'handed it in', returned: 'returned it to its author', declined: 'declined it',
  withdrawn: 'withdrew it', concurred: 'concurred with its impact', signed: 'signed it', 'second-review': 'looked at it a second time',
};
const MOST_ROWS = 5;

export const threadOf = (steps, site) => (steps
  ? html`<ol class="thread">${steps.map((step) => html`<li>
      <p><strong>${step.printedName ?? step.by}</strong> ${did(step, site)}
        <span class="small">${moment(step.at)}${step.until === step.at ? nothing : html` to ${moment(step.until)}`}</span></p>
      ${step.words ? html`<blockquote>${step.words}</blockquote>` : nothing}</li>`)}</ol>`
  : html`<p>Reading what was said …</p>`);

function did(step, site) {
  if (step.step === 'signed') return `signed it: version ${step.version} of the chart`;
  if (step.step !== 'edited') return DID[step.step];
  const rows = step.rows.slice(0, MOST_ROWS).map((key) => keyLine(key, site)).join('; ');
  const more = step.rows.length > MOST_ROWS ? ` and ${step.rows.length - MOST_ROWS} more` : '';
  return `edited ${rows}${more}${step.edits > 1 ? ` (${step.edits} edits)` : ''}`;
}
