// The page of one change. It holds what the service says, draws it, and takes steps; typing is kept and sent by draft and sender.
import { html, render, nothing } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { start, person, site, whenPersonChanges, trouble } from '/pages/shell.js';
import { moment } from '/pages/words.js';
import { Editor } from '/pages/change/editor.js';
import { impactOf } from '/pages/change/impact.js';
import { threadOf } from '/pages/change/thread.js';
import { stepsOf, isOpen, isAuthor, stateWords, KIND_WORDS } from '/pages/change/steps.js';
import { readAdjustments } from '/pages/change/adjustments.js';
import { LEVELS } from '/pages/change/cells.js';
import { keyLine, columnOf, inWords } from '/pages/change/fields.js';
import { keptText } from '/pages/kept.js';

const id = encodeURIComponent(location.pathname.split('/').at(-1));
const place = document.getElementById('change');
const IMPACT_SOON_MS = 700;

const state = {
  change: null, etag: null, room: null, impact: null, impactBefore: null, findings: null, history: null,
  failed: null, said: null, busy: false, confirming: false, renaming: false, left: null, stale: false,
};
let editor = null;
let timer = null;

const mayEdit = () => person() && state.change && isAuthor(state.change, person()) && isOpen(state.change)
  && state.change.kind !== 'revert';

/** Everything anew, as after a step or when somebody else signed in. */
async function load() {
  try {
    const { data, etag } = await api.get(`/changes/${id}`);
    if (!state.change || data.revision >= state.change.revision) take(data, etag);
    state.room ??= (await api.get(`/rooms/${data.room}`)).data;
    if (mayEdit()) {
      await edit();
      state.left = null;
    } else {
      leave();
    }
    draw();
    await Promise.all([learnFindings(), learnImpact(), learnHistory()]);
  } catch (failed) {
    state.failed = failed;
  }
  draw();
}

/** The page is no author's any more; what they typed stays in this browser, under their name. */
function leave() {
  if (editor?.unsent() > 0) state.left = { count: editor.unsent(), name: editor.me.printedName,
    own: editor.me.personId === person()?.personId };
  editor = null;
}

function take(change, etag) {
  state.change = change;
  state.etag = etag;
  document.title = `${change.title} · Wallchart`;
}

async function edit() {
  const base = state.change.baseVersion === 0 ? { rows: [], adjustments: [] }
    : (await api.get(`/charts/${state.change.room}/versions/${state.change.baseVersion}/rows`)).data;
  if (editor?.isFor(id, person())) editor.goOn(base, state.change, state.etag);
  else editor = await Editor.open({ id, me: person(), base, change: state.change, etag: state.etag, room: state.room, learned, draw });
}

/** The answer to a write: what the change is now, and what is to be said of it. */
function learned(change, etag) {
  take(change, etag);
  if (change.findings) state.findings = change.findings;
  state.stale = true;
  clearTimeout(timer);
  timer = setTimeout(() => Promise.all([change.findings ? null : learnFindings(), learnImpact(), learnHistory()])
    .then(draw, (failed) => { if (!(failed instanceof api.Unreachable)) state.failed = failed; draw(); }), IMPACT_SOON_MS);
}

const learnFindings = async () => { state.findings = (await api.get(`/changes/${id}/findings`)).data; };
async function learnImpact() {
  const { revision } = state.change;
  const seen = state.impact;
  state.impact = (await api.get(`/changes/${id}/impact`)).data;
  state.stale = revision !== state.change.revision;
  const moved = seen && seen.digest !== state.impact.digest;
  if (moved && state.change.state === 'submitted') state.impactBefore = seen; // somebody decides on it: they are told
}

const learnHistory = async () => { state.history = (await api.get(`/changes/${id}/history`)).data.steps; };

const SAID = {
  submit: 'Handed in.', withdraw: 'Withdrawn.', return: 'Returned to its author.', decline: 'Declined.',
    concur: 'Your concurrence is recorded.',
  sign: 'Signed.', 'second-review': 'The second review is recorded.', 'catch-up': 'The newest version is the base now.',
    rename: 'Title and reason are changed.',
};

/** Takes a step on the revision on the screen; says whether it was taken. */
async function step(name, body) {
  Object.assign(state, { busy: true, failed: null, said: null });
  draw();
  const act = (etag) => (name === 'rename' ? api.put(`/changes/${id}`, body, { ifMatch: etag })
    : api.post(`/changes/${id}/${name}`, body, { ifMatch: etag }));
  try {
    const answer = editor ? await editor.alone(act) : await act(state.etag);
    Object.assign(state, { said: SAID[name], impactBefore: null, confirming: false, renaming: false });
    take(answer.data, answer.etag);
    await load();
    return true;
  } catch (failed) {
    await refused(failed);
    return false;
  } finally {
    state.busy = false;
    draw();
    document.getElementById(state.failed ? 'trouble' : 'said')?.focus();
  }
}

/** Where the change moved on, the page shows what it is by now: nobody decides on what they did not see. */
async function refused(failed) {
  const moved = failed instanceof api.Problem && (failed.status === 412 || failed.status === 409);
  if (moved) {
    await load();
  }
  state.failed = failed;
}

const on = {
  step: (name, body) => step(name, body),
  askWithdraw: () => { state.confirming = true; draw(); document.getElementById('really')?.focus(); },
  submitted: (name, bodyOf, kept) => async (event) => {
    event.preventDefault();
    const form = event.target;
    const done = await step(name, bodyOf(form));
    if (form.elements.password) form.elements.password.value = '';
    if (done && kept) kept.forget();
    draw();
  },
};

function draw() {
  if (!site()) return;
  document.querySelector('h1').textContent = state.change ? state.change.title : `Change ${id}`;
  render(html`
    <div id="said" tabindex="-1" role="status">${state.said ? html`<p class="tell good"><strong>Done.</strong>${state.said}</p>`
      : nothing}</div>
    <div id="trouble" tabindex="-1" role="alert">${state.failed ? failedWords() : nothing}</div>
    ${state.left ? leftWords() : nothing}
    ${state.change ? whole() : nothing}`, place);
  editor?.draw(state.findings?.findings ?? []);
}

/** What an author typed and the service has not, once the page is not theirs any more. */
function leftWords() {
  const { count, name, own } = state.left;
  const edits = count === 1 ? '1 edit' : `${count} edits`;
  return html`<p class="tell caution"><strong>Not sent.</strong>${own
    ? `The change was handed in or closed in another window:
      ${edits} of yours came too late. They stay in this browser and are offered should it be returned.`
    : `${edits} of ${name} stay in this browser and are sent for nobody else: when they sign in here again, they find them.`}</p>`;
}

/** What stood against the step; an impact that moved is told in words, not by its digests. */
function failedWords() {
  if (state.failed.code !== 'impact-changed') return trouble(state.failed);
  const [seen, now] = [state.impactBefore?.onVersion, state.impact?.onVersion];
  return html`<p class="tell caution"><strong>The impact moved.</strong>Nothing was signed. What you saw was worked out ${seen === now
    ? 'for an earlier state of the change or of the equipment' : `against version ${seen} of the chart, version
      ${now} is the newest by now`}:
    look at the new impact below, where figures that moved are marked, then decide again.</p>`;
}

function whole() {
  const { change, impact, impactBefore, findings } = state;
  const me = person();
  const unsent = editor?.unsent() ?? 0;
  return html`
    ${head(change)}
    <nav class="inner" aria-label="On this page">${editor ? html`<a href="#rows">Rows</a> <a href="#adjustments">Adjustments</a>` : nothing}
      <a href="#findings">Findings</a> <a href="#impact">Impact</a> <a href="#next">Next step</a> <a href="#discussion">Discussion</a></nav>
    ${change.conflicts.length > 0 ? conflicts(change) : nothing}
    ${editor ? editor.frame() : nothing}
    <section aria-labelledby="findings"><h2 id="findings">Findings</h2>
      ${unsent > 0 ? html`<p class="small">Of what is saved: ${unsent === 1 ? '1 edit is' : `${unsent} edits are`} not saved yet.</p>`
        : nothing}
      ${findingsOf(findings)}</section>
    <section aria-labelledby="impact"><h2 id="impact">Impact</h2>
      ${state.stale && impact
        ? html`<p class="tell caution" role="status"><strong>Older than the last edit.</strong>Working the impact out anew …</p>`
        : nothing}
      ${impactOf(impact, impactBefore, site(), change)}</section>
    ${!editor && change.adjustments
      ? html`<section><h2>Named adjustments as they would be</h2>${readAdjustments(change.adjustments.wanted)}</section>` : nothing}
    <section aria-labelledby="next"><h2 id="next">Next step</h2>
      ${me ? stepsOf({ change, impact, findings, unsent, busy: state.busy }, me, on) : nothing}
      ${state.confirming ? html`<p class="tell caution"><strong>Withdraw this change for good?</strong> Its edits stay readable,
        it can not be opened again.
        <button type="button" id="really" @click=${() => step('withdraw', {})}>Yes, withdraw it</button>
        <button type="button" @click=${() => { state.confirming = false; draw(); }}>No</button></p>` : nothing}</section>
    <section aria-labelledby="discussion"><h2 id="discussion">Discussion</h2>${threadOf(state.history, site())}</section>`;
}

function head(change) {
  const decision = change.decision;
  const author = isAuthor(change, person()) && isOpen(change);
  return html`
    <p class="lead-line"><span class="mark">${stateWords(change)}</span> ${state.room?.name ?? change.room}
      <span class="small">${change.room}</span> ·
      change ${change.id}, ${KIND_WORDS[change.kind]}${change.revertsTo ? ` (${change.revertsTo})` : ''} · ${change.author.printedName} ·
      opened ${moment(change.openedAt)} on version ${change.baseVersion}</p>
    ${change.state === 'returned' ? html`<p class="tell caution"><strong>Returned.</strong>${decision.by.printedName},
      ${moment(decision.at)}: “${decision.reason}”</p>` : nothing}
    ${change.state === 'declined' ? html`<p class="tell blocking"><strong>Declined.</strong>${decision.by.printedName},
      ${moment(decision.at)}: “${decision.reason}”</p>` : nothing}
    ${state.renaming ? rename(change) : html`<p>Reason: ${change.reason}
      ${author ? html`<button type="button" @click=${() =>
        { state.renaming = true; draw(); document.getElementById('title')?.focus(); }}>Edit title and reason</button>` : nothing}</p>`}`;
}

function rename(change) {
  const [title, reason] = ['title', 'reason'].map((name) => keptText(`${id}|${name}`));
  const submit = on.submitted('rename', ({ elements }) => ({ title: elements.title.value, reason: elements.reason.value }), title);
  return html`<form class="panel" @submit=${async (event) => { await submit(event); if (!state.failed) reason.forget(); }}>
    <label class="field">Title<input id="title" name="title" required maxlength="120" size="60"
      .value=${title.read() || change.title}
      @input=${(event) => title.keep(event.target.value)}></label>
    <label class="field">Reason: 10 characters or more; line breaks become spaces
      <textarea name="reason" required minlength="10" maxlength="2000"
      .value=${reason.read() || change.reason}
      @input=${(event) => reason.keep(event.target.value)}></textarea></label>
    <div class="row"><button class="first" ?disabled=${state.busy}>Save</button>
      <button type="button" @click=${() =>
        { state.renaming = false; title.forget(); reason.forget(); draw(); }}>Cancel</button></div></form>`;
}

const conflicts = (change) => html`<div class="tell blocking"><strong>Others changed the same rows.</strong>Version
  ${change.onVersion} of the chart is newer
  than version ${change.baseVersion}, which this change was made on, and moved: ${change.conflicts.map((key) => keyLine(key,
    site())).join('; ')}.
  ${isAuthor(change, person()) && isOpen(change) ? html`<p>Take the newest version as the base,
    then write each of these rows again or undo it.
    <button type="button" ?disabled=${state.busy} @click=${() => step('catch-up', {})}>Take up version ${change.onVersion}</button></p>`
      : nothing}</div>`;

function findingsOf(findings) {
  if (!findings) return html`<p>Reading the findings …</p>`;
  const list = ['blocking', 'caution', 'note'].flatMap((level) => findings.findings.filter((one) => one.level === level));
  return html`
    ${findings.blocking ? html`<p><strong>Blocking findings keep the change from being handed in and signed.</strong></p>` : nothing}
    ${list.length === 0 ? html`<p>Nothing is to be said about the chart as this change would make it.</p>`
      : html`<ul class="plain">${list.map((one) => html`
      <li class="tell ${one.level}"><strong>${LEVELS[one.level]}.</strong>${one.row ? html`<b>${keyLine(one.row,
        site())}</b>${columnOf(one.field)
        ? `, ${columnOf(one.field).label}` : ''}: ` : nothing}${inWords(one.reason, site())}</li>`)}</ul>`}`;
}

whenPersonChanges(() => load());
start().then(() => { if (!state.change && person()) draw(); });
window.addEventListener('beforeunload', (event) => {
  if (editor?.unsent() > 0) event.preventDefault();
});
