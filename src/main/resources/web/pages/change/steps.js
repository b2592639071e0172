// What may be done next to a change, by whom; what may not says why. Every step names the revision, a signature the impact that was seen.
import { html, nothing } from '/pages/lit-html.js';
import { overLimits } from '/pages/change/impact.js';
import { keptText } from '/pages/kept.js';
import { moment, spoken } from '/pages/words.js';

export const isOpen = (change) => change.state === 'drafting' || change.state === 'returned';
export const isAuthor = (change, me) => me !== null && change.author.personId === me.personId;

/** Whether the concurrence that was given is one with this impact. */
const holds = (change, impact) => change.concurrence !== null && impact !== null && change.concurrence.impactDigest === impact.digest;

/** `on.step(name, body, form)` takes the step; `busy` while one is under way. */
export function stepsOf(state, me, on) {
  const { change } = state;
  const parts = [];
  if (isAuthor(change, me)) parts.push(authorSteps(state, on));
  if (change.state === 'submitted') parts.push(...reviews(state, me, on));
  if (change.state === 'signed') parts.push(...afterwards(state, me, on));
  if (change.state === 'declined' || change.state === 'withdrawn') parts.push(html`<p>The change is closed: ${change.state}.</p>`);
  if (isOpen(change) && !isAuthor(change, me)) parts.push(html`<p>Its author works on it. There is nothing to sign yet.</p>`);
  return parts;
}

function authorSteps({ change, findings, unsent, busy }, on) {
  if (!isOpen(change) && change.state !== 'submitted') return nothing;
  const nothingEdited = change.edits.length === 0 && change.adjustments === null && change.kind !== 'revert';
  const why = unsent > 0 ? `${unsent} ${unsent === 1 ? 'row is' : 'rows are'} not saved yet.`
    : nothingEdited ? 'Nothing is edited yet.'
      : change.conflicts.length > 0 ? 'Others changed the same rows: take the newest version up first.'
        : findings?.blocking ? 'Blocking findings have to be mended first.' : '';
  return html`<div class="row">
    ${isOpen(change) ? html`<button type="button" class="first" ?disabled=${busy || why !== ''} @click=${() => on.step('submit',
      {})}>Hand in for signature</button>
      <span>${why}</span>` : html`<p>Handed in ${moment(change.submittedAt)}. Another person than its author signs it.</p>`}
    <button type="button" ?disabled=${busy} @click=${on.askWithdraw}>Withdraw the change …</button></div>`;
}

function reviews({ change, impact, findings, busy }, me, on) {
  const parts = [];
  const own = isAuthor(change, me);
  if (change.concurrence) {
    parts.push(html`<p class="tell ${holds(change, impact) ? 'good' : 'caution'}"><strong>${change.concurrence.by.printedName}</strong>
      concurred
      ${moment(change.concurrence.at)}${holds(change, impact) ? ' with this impact.'
        : ', with another impact than this one: it does not count any more.'}</p>`);
  }
  if (me.role === 'physicist') parts.push(concurrence({ change, impact, busy, own }, on));
  if (me.role === 'lead') parts.push(signature({ change, impact, findings, busy, own }, me, on));
  if ((me.role === 'lead' || me.role === 'physicist') && !own) parts.push(answers(change, me, busy, on));
  if (!own && me.role !== 'lead' && me.role !== 'physicist') parts.push(html`<p>It waits for a lead radiographer.</p>`);
  return parts;
}

function concurrence({ change, impact, busy, own }, on) {
  const why = own ? 'You are its author: another physicist has to concur.'
    : !impact ? 'The impact is still worked out.'
      : holds(change, impact) ? 'Somebody concurred with this impact.'
        : !impact.needsPhysicist ? 'The impact is within the limits: nobody has to concur.' : '';
  return html`<form class="panel" @submit=${on.submitted('concur', (form) => ({ password: form.elements.password.value,
    impactDigest: impact.digest }))}>
    <h3>Concur with the impact shown above</h3>
    <div class="row">${password(why !== '')}
      <button class="first" ?disabled=${busy || why !== ''}>Concur</button> <span>${why}</span></div></form>`;
}

function signature({ change, impact, findings, busy, own }, me, on) {
  const concurred = holds(change, impact);
  const needs = impact !== null && !concurred && overLimits(impact).length > 0;
  const early = impact?.earlyStarts.findLast((one) => one.needsPhysicist) ?? impact?.earlyStarts.at(-1);
  const needsEarly = impact?.needsPhysicist && !concurred && !needs;
  const fast = change.kind === 'fast-track';
  const waits = needsEarly && !fast;
  const why = own ? 'You are its author: another lead radiographer has to sign.'
    : !impact ? 'The impact is still worked out.'
      : findings?.blocking ? 'Blocking findings: return it to its author.'
        : needs && !fast ? 'A medical physicist has to concur first.' : '';
  const off = why !== '';
  const kept = keptText(`${change.id}|meaning`);
  return html`<form class="panel" @submit=${on.submitted('sign', statement(impact), kept)}>
    <h3>Sign the change with the impact shown above</h3>
    ${off ? html`<p class="tell caution"><strong>Not to be signed now.</strong>${why}</p>` : nothing}
    ${change.conflicts.length > 0
      ? html`<p class="tell caution"><strong>Others changed the same rows.</strong>Signing gives it back to its author.</p>` : nothing}
    ${fast && (needs || needsEarly) ? html`<p class="tell caution"><strong>Fast track.</strong>Signed without the physicist,
      who looks at it within 72 hours. ${needs ? 'With a later start it needs the physicist first.'
        : `With a later start that is before ${fromMinute(early.before)} it needs the physicist first.`}</p>` : nothing}
    ${early ? startWords(impact, early, waits) : nothing}
    <label class="field">What your signature states<input name="meaning" list="meanings" maxlength="200" required size="60" ?disabled=${off}
      .value=${kept.read()} @input=${(event) => kept.keep(event.target.value)}></label>
    <datalist id="meanings"><option value="Approved for use in this room"></option>
      <option value="Reviewed and approved for use in this room"></option>
      <option value="Signed at once for patient safety"></option></datalist>
    <div class="row">
      <label class="field">In force from${waits ? '' : ' (empty: at once)'}<input name="from" type="datetime-local" ?disabled=${off}
        ?required=${waits}></label>
      <label class="field">Review due (empty: as the site has it)<input name="due" type="date" ?disabled=${off}></label></div>
    <div class="row">${password(off)}<button class="first" ?disabled=${busy || off}>Sign</button></div></form>`;
}

/** The first minute that is not before an instant: the field of the start knows no seconds. */
const fromMinute = (instant) => moment(new Date(Math.ceil(Date.parse(instant) / 60_000) * 60_000).toISOString());

/** A version waits for its day below this change: what the start decides, said where the start is chosen. */
const startWords = (impact, early, waits) => html`<p class="tell caution"><strong>The start decides.</strong>Before
  ${fromMinute(early.before)} this change answers in place of version ${impact.onVersion} and brings its rows into force with it, earlier than
  signed; see the impact.${waits
    ? ` For that a medical physicist has to concur first: name a start from ${fromMinute(early.before)} on, or wait for the physicist.` : ''}</p>`;

const statement = (impact) => ({ elements }) => ({
  password: elements.password.value,
  meaning: elements.meaning.value,
  impactDigest: impact.digest,
  ...(elements.from.value ? { inForceFrom: new Date(elements.from.value).toISOString() } : {}),
  ...(elements.due.value ? { reviewDue: elements.due.value } : {}),
});

const password = (off) => html`<label class="field">Your password again
  <input name="password" type="password" autocomplete="current-password" required ?disabled=${off}></label>`;

function answers(change, me, busy, on) {
  const kept = keptText(`${change.id}|answer`);
  const say = (name) => on.submitted(name, (form) => ({ reason: form.elements.reason.value }), kept);
  return html`<form class="panel" @submit=${(event) => say(event.submitter?.value ?? 'return')(event)}>
    <h3>Or give it back</h3>
    <label class="field">Reason, for its author: 10 characters or more; line breaks become spaces
      <textarea name="reason" required minlength="10" maxlength="2000" .value=${kept.read()}
        @input=${(event) => kept.keep(event.target.value)}></textarea></label>
    <div class="row"><button value="return" ?disabled=${busy}>Return to its author</button>
      ${me.role === 'lead' ? html`<button value="decline" ?disabled=${busy}>Decline for good</button>` : nothing}</div></form>`;
}

function afterwards({ change, busy }, me, on) {
  const review = change.secondReview;
  const parts = [html`<p class="tell good"><strong>Signed.</strong>It is version ${change.signedVersion} of the chart of room
    ${change.room}.
    <a href="/charts/${change.room}">See the chart</a> · <a href="/sheets">Print the wall sheet</a></p>`];
  if (change.concurrence) {
    parts.push(html`<p>${change.concurrence.by.printedName} concurred with this impact, ${moment(change.concurrence.at)}.</p>`);
  }
  if (review?.done) {
    parts.push(html`<p class="tell good"><strong>Second review.</strong>${review.done.by.printedName},
      ${moment(review.done.at)}: “${review.done.reason}”</p>`);
  } else if (review) {
    parts.push(html`<p class="tell caution"><strong>Second review due
      ${moment(review.due)}.</strong>A physicist looks at what was signed on the fast track.</p>`);
    if (me.role === 'physicist') parts.push(secondReview(change, me, busy, on));
  }
  return parts;
}

function secondReview(change, me, busy, on) {
  const why = isAuthor(change, me) ? 'You are its author: another physicist has to look at it.'
    : change.decision.by.personId === me.personId ? 'You signed it: another physicist has to look at it.' : '';
  const kept = keptText(`${change.id}|findings`);
  return html`<form class="panel" @submit=${on.submitted('second-review', ({ elements }) => ({
    password: elements.password.value, findings: elements.findings.value,
  }), kept)}>
    <h3>Record the second review</h3>
    <label class="field">What you found: 10 characters or more; line breaks become spaces
      <textarea name="findings" required minlength="10" maxlength="2000"
      ?disabled=${why !== ''}
      .value=${kept.read()} @input=${(event) => kept.keep(event.target.value)}></textarea></label>
    <div class="row">${password(why !== '')}<button class="first" ?disabled=${busy || why !== ''}>Record</button>
      <span>${why}</span></div></form>`;
}

/** The state of a change in words. */
export const stateWords = (change) => ({
  drafting: 'being drafted', submitted: 'waits for signature', returned: 'returned to its author', signed: `signed: version
    ${change.signedVersion}`,
  declined: 'declined', withdrawn: 'withdrawn',
})[change.state] ?? spoken(change.state);

export const KIND_WORDS = { ordinary: 'ordinary', 'fast-track': 'fast track', revert: 'brings a version back' };
