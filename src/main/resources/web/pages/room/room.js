// The page of a room's workstation: find the examination, enter the thickness, see what to set. Keeps nothing of any patient.
import { html, nothing, render } from '/pages/lit-html.js';
import * as api from '/pages/api.js';
import { forget, open } from '/pages/room/pack.js';
import { whenNewer } from '/pages/room/install.js';
import { examinations } from './finder.js';
import { finding, groupMark, listWords } from './finding.js';
import { entry, ruler } from './entry.js';
import { placing, technique } from './answer.js';
import { refusal } from './refusal.js';
import { adjusting } from './adjusting.js';
import { droppedNote, forWords } from './differing.js';
import { newsNote } from './news.js';
import { steps } from './steps.js';
import { foot, head, keptTrouble } from './standing.js';
import { replaceForm, settings, tokenForm } from './workstation.js';
import { actions } from './actions.js';
import * as keys from './keys.js';
import * as idle from './idle.js';
import * as tokens from './token.js';
import { EMPTY } from './state.js';
import { number } from './thickness.js';
import { roomIn } from '/pages/address.js';

const PULSE_MS = 10_000;
const AGAIN_MS = 5_000;
const room = roomIn();
const state = {
  ...EMPTY, room, unit: 'cm', site: null, head: null, pack: null, exams: [], link: 'unknown',
  live: null, // {chart, equipment} as the service last said
  asksToken: false, tokenTrouble: null, tokenLater: false, otherToken: null, opening: true, failed: null, cleared: false, warned: false,
};
const place = (id) => document.getElementById(id);
const act = actions(state, { draw, redrawDialog, openDialog });

function draw() {
  render(head(state, act), place('head'));
  render(state.exams.length ? ask() : nothing, place('ask'));
  render(notes(), place('news'));
  render(body(), place('body'));
  render(foot(state, Date.now()), place('foot'));
  const said = spoken();
  if (place('said').textContent !== said) place('said').textContent = said;
}

const notes = () => (state.chosen ? html`${newsNote(state)}${droppedNote(state, act)}` : nothing);

/** For a screen reader: the one line that matters, also of a list that is longer than the screen. A refusal is an alert of its own. */
function spoken() {
  const { answer } = state;
  if (answer?.kind !== 'technique') return state.chosen ? '' : listWords(state);
  const { set } = answer.technique;
  const control = set.aec ? `AEC, back-up ${set.aec.backupMAs} mAs` : `${set.mAs} mAs`;
  return `${set.kV} kV, ${control}, ${forWords(answer.technique, state)}`;
}

const ask = () => html`
  <div class="bar">
    <label class="unseen" for="find">Find the examination: letters of body part and projection</label>
    <input id="find" type="text" role="combobox" autocomplete="off" autocapitalize="none" spellcheck="false" placeholder="Type: kn ap"
      aria-controls="matches" aria-expanded=${state.query !== ''} aria-autocomplete="list"
      aria-activedescendant=${state.query !== '' ? `match-${state.marked}` : nothing}
      .value=${state.query} @input=${(event) => act.typedInFinder(event.target)}>
    ${state.chosen ? title() : html`<p class="hint">${state.cleared
      ? html`<b>Cleared</b>: nobody touched this page for ${idle.minutes()} minutes.` : 'Type two or three letters, or touch.'}</p>`}
  </div>
  ${state.chosen ? ruler(state, act) : nothing}`;

const title = () => html`
  <h2 class="chosen" id="chosen" tabindex="-1"><span class="what">${state.chosen.words.part} ${state.chosen.words.projection}</span>
    <span class="where">${state.chosen.words.support}</span> ${groupMark(state.chosen)}</h2>
  ${entry(state, act)}`;

function body() {
  return html`
    ${state.warned ? html`<p class="tell caution warned" role="alert"><strong>Clears in 20 seconds.</strong>Touch the page or press a key to keep it.</p>` : nothing}
    ${state.otherToken ? replaceForm(() => changeTo(state.otherToken), () => { state.otherToken = null; draw(); }) : nothing}
    ${state.asksToken ? tokenForm(state.tokenTrouble, useToken, state.exams.length ? act.notNow : null) : nothing}
    ${state.failed ? html`<p class="tell blocking" role="alert"><strong>The chart cannot be shown.</strong> ${state.failed} Tried again every ${AGAIN_MS / 1000} seconds.</p>` : nothing}
    ${keptTrouble(state)}
    ${state.exams.length === 0 ? waiting() : state.chosen ? answered() : finding(state, act)}`;
}

const waiting = () => (state.opening && !state.asksToken ? html`<p class="hint" role="status">Opening the chart of this room…</p>` : nothing);

function answered() {
  return html`
    <div class="answer" aria-busy=${state.answer?.kind === 'waiting'}>
      ${state.answer?.kind === 'technique' ? technique(state, act)
        : state.answer?.kind === 'refusal' ? refusal(state, act)
        : html`<section class="technique"><p class="prompt">${prompt()}</p></section>
            ${placing(state.chosen.rows[0], state.head)}`}
    </div>
    ${adjusting(state, act)}`;
}

function prompt() {
  if (state.answer?.kind === 'waiting') return 'Asking…';
  const wrong = state.typed !== '' && number(state.typed) === null && Number(state.typed) !== 0;
  return wrong ? 'That is no thickness: type a number such as 12.5.' : 'Measure, then enter the thickness.';
}

function redrawDialog() {
  const what = state.dialog;
  render(what === 'steps' ? steps(state, act) : what === 'workstation' ? settings(act) : nothing, place('dialog'));
}

function openDialog(what) {
  state.dialog = what;
  redrawDialog();
  place('dialog').setAttribute('aria-labelledby', `${what}-title`);
  place('dialog').showModal();
}

/** One that the service does not take leaves everything as it was: the kept token, chart and key. */
async function useToken(text) {
  state.tokenTrouble = await tokens.findTrouble(room, text);
  if (state.tokenTrouble) return draw();
  if (state.pack?.trouble?.code === 'other-key') await forget(room); // whoever has the token again answers for the new key
  return changeTo(text);
}

async function changeTo(text) {
  tokens.keep(room, text);
  Object.assign(state, { asksToken: false, tokenTrouble: null, otherToken: null });
  await start();
  act.askAgain();
}

/** A token that came by a link is offered once the service takes it, and never taken unasked. */
async function offer(text) {
  if (text === null || await tokens.findTrouble(room, text)) return;
  state.otherToken = text;
  draw();
}

/** An address with a token that was pasted over this one. */
async function fromAddress() {
  const before = tokens.token(room);
  const text = tokens.fromAddress(room);
  if (tokens.token(room) !== before) await changeTo(tokens.token(room));
  else await offer(text);
}

/** Opens the kept pack, or fetches it; everything that the page lists comes from it. */
async function start() {
  state.opening = true;
  draw();
  try {
    take(await open(room, tokens.token(room)));
    state.failed = null;
  } catch (failed) {
    refused(failed);
  }
  state.opening = false;
  draw();
  findWhatWasTyped();
  if (state.failed) window.setTimeout(() => { if (!state.pack) start(); }, AGAIN_MS);
}

/** Somebody typed while the chart was being opened: all of it counts, never the rest of a word. */
function findWhatWasTyped() {
  const typed = state.exams.length ? keys.takeEarly() : '';
  if (typed === '') return;
  act.search(typed);
  place('find').focus();
}

function take(pack) {
  state.pack = pack;
  state.head = pack.head;
  state.site = pack.head.site;
  state.unit = pack.head.site.lengthUnit;
  state.exams = examinations(pack.rows, pack.head.site);
  if (state.chosen) state.chosen = state.exams.find((each) => each.id === state.chosen.id) ?? null;
  document.title = `${pack.head.roomName} · Wallchart`;
  pack.whenRenewed(() => {
    if (state.pack !== pack) return;
    take(pack);
    act.askAgain(state.news);
  });
  pack.whenTroubled(() => {
    if (state.pack !== pack) return;
    if (pack.trouble?.code === 'token-refused') act.heard(pack.trouble.cause?.status === 403 ? 'other-room' : 'unknown-token');
    draw();
  });
}

function refused(failed) {
  const token = failed instanceof api.Problem && (failed.status === 401 || failed.status === 403);
  state.failed = token ? null : failed.message;
  if (token) act.needsToken(failed.status);
}

/** Whether the service answers, and which version it has, also while nobody asks. */
async function pulse() {
  if (!state.pack) return;
  try {
    const { data } = await api.get(`/rooms/${encodeURIComponent(room)}`, { token: tokens.token(room), timeoutMs: 5000 });
    act.heard('live', data);
  } catch (failed) {
    act.heard(failed instanceof api.Problem && failed.status < 500 ? { 401: 'unknown-token', 403: 'other-room' }[failed.status] ?? 'live' : 'lost');
  }
  draw();
}

/** Whether something stands here of a patient who may still be in the room. */
function busy() {
  return state.chosen !== null || state.query !== '' || state.part !== null;
}

const linked = tokens.fromAddress(room);
place('head').textContent = '';
place('body').textContent = '';
document.title = `${room} · Wallchart`;
keys.listen(act, () => state);
act.restartIdle = idle.watch({ busy, warn: act.warn, clear: act.clearByItself });
whenNewer((changeOver) => window.setInterval(() => { if (!busy()) changeOver(); }, PULSE_MS));
window.setInterval(pulse, PULSE_MS);
window.addEventListener('online', pulse);
window.addEventListener('offline', pulse);
window.addEventListener('hashchange', fromAddress);
await start();
await offer(linked);
await pulse();
