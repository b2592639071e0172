// What somebody at the workstation can do. Each act changes the state and draws; where the question changed, it is asked anew.
import { offered } from './finding.js';
import { rowNow } from './adjusting.js';
import { asker } from './question.js';
import { EMPTY, question, sameMeasurement } from './state.js';
import { bands, inCentimetres, nextTo, number, scale, stepped, unfinished } from './thickness.js';
import { centimetres } from '/pages/words.js';
import * as tokens from './token.js';

export function actions(state, { draw, redrawDialog, openDialog }) {
  const asking = asker({
    source: () => ({ room: state.room, token: tokens.token(state.room), pack: state.pack }),
    show: (answer) => { state.answer = answer; draw(); },
    heard,
  });

  /** Asks for what stands there now; what was answered before goes at once. */
  function askAgain() {
    const asked = question(state, state.chosen && inCentimetres(state.typed, state.unit));
    asking.forget();
    state.answer = null;
    if (asked && !unfinished(state.typed, state.chosen, state.unit)) asking.ask(asked);
    draw();
  }

  function reset(keep = {}) {
    asking.forget();
    Object.assign(state, EMPTY, { adjust: [] }, keep, { cleared: false });
  }

  function clear() {
    reset();
    draw();
    if (document.activeElement?.id === 'find' || document.activeElement === document.body) document.getElementById('find')?.focus();
  }

  function choose(each, by) {
    const kept = sameMeasurement(each, state.chosen) ? { typed: state.typed, adjust: state.adjust } : {};
    reset({ group: state.group, chosen: each, ...kept });
    askAgain();
    if (by === 'touch') document.getElementById('scale')?.focus({ preventScroll: true });
    else document.getElementById('thickness').focus();
    return true;
  }

  function chooseMarked(by) {
    const each = state.query.trim() === '' ? null : offered(state)[state.marked];
    return each ? choose(each, by) : false;
  }

  /** A new search forgets what stands there: letters are for another examination. */
  function search(letters) {
    reset({ group: state.group, query: letters });
    draw();
  }

  /** Also what a keyboard on the screen or a paste brings at once: 'ka12'. */
  function typedInFinder(field) {
    const [, letters, digits] = field.value.match(/^(.*?)(\d[\d.,]*)?\+*$/s);
    search(letters);
    if (digits && chooseMarked('keys')) type(digits);
  }

  function type(text) {
    state.typed = text.trim();
    state.measured = null;
    askAgain();
  }

  function step(direction) {
    if (number(state.typed) !== null) type(stepped(state.typed, direction, state.unit));
    return true;
  }

  function lookAt(band) {
    const measured = state.typed;
    state.typed = nextTo(band, inCentimetres(measured, state.unit), state.unit);
    state.measured = measured;
    askAgain();
  }

  function sid(cm) {
    const row = rowNow(state);
    Object.assign(state, { sidCm: cm === row.sidCm ? null : cm, sidTyped: null, sidWrong: false });
    askAgain();
  }

  function sidTyped(text) {
    const value = number(text);
    if (value !== null) sid(Number(centimetres(value, state.unit).toFixed(2)));
    else {
      asking.forget();
      Object.assign(state, { sidTyped: text, sidWrong: true, answer: null });
      draw();
    }
  }

  /** To the next whole centimetre or inch. */
  function sidStep(direction, nowCm) {
    const size = state.unit === 'in' ? 2.54 : 1;
    const steps = nowCm / size;
    const next = direction > 0 ? Math.floor(steps + 1e-6) + 1 : Math.ceil(steps - 1e-6) - 1;
    sid(Number((next * size).toFixed(2)));
  }

  function heard(word, told) {
    state.link = word; // without a token that is taken, only the kept chart answers, and says its age
    if (word === 'live') {
      state.tokenLater = false;
      asking.back();
      if (told?.chart) {
        state.liveChart = told.chart;
        state.pack?.noticed(told.chart, told.equipment);
      }
    } else if (word !== 'lost') needsToken(word === 'unknown-token' ? 401 : 403);
    draw();
  }

  /** Asked for in place; what was found and entered stays. After 'Not now' the foot goes on saying it, and 'Workstation' leads there. */
  function needsToken(status) {
    if (state.asksToken || state.tokenLater) return;
    state.asksToken = true;
    state.tokenTrouble = tokens.token(state.room) ? tokens.TROUBLE[status] : null;
    draw();
  }

  return {
    askAgain, clear, choose, chooseMarked, search, typedInFinder, type, step, lookAt, sid, sidTyped, sidStep, heard, needsToken,
    clearByItself: () => { reset(); state.cleared = true; document.getElementById('dialog').close(); draw(); },
    warn: (on) => { if (state.warned !== on) { state.warned = on; draw(); } },
    mark: (direction) => {
      if (state.query.trim() === '') return false;
      const last = offered(state).length - 1;
      state.marked = Math.max(0, Math.min(last, state.marked + direction));
      draw();
      return true;
    },
    inGroup: (group) => { reset({ group, query: state.query, part: state.part }); draw(); },
    openPart: (part) => {
      reset({ group: state.group, part });
      draw();
      document.getElementById(part ? 'opened' : 'find')?.focus({ preventScroll: true });
    },
    grid: (id) => { state.grid = id; askAgain(); },
    adjust: (name) => {
      state.adjust = state.adjust.includes(name) ? state.adjust.filter((each) => each !== name) : [...state.adjust, name];
      askAgain();
    },
    asCharted: () => { Object.assign(state, { sidCm: null, sidTyped: null, sidWrong: false, grid: null, adjust: [] }); askAgain(); },
    instead: ({ sidCm, grid }) => { Object.assign(state, { sidCm: sidCm ?? null, sidTyped: null, grid: grid ?? null }); askAgain(); },
    derive: () => { if (state.answer?.kind === 'technique') openDialog('steps'); return state.answer?.kind === 'technique'; },
    openWorkstation: () => openDialog('workstation'),
    changeToken: () => { document.getElementById('dialog').close(); state.asksToken = true; state.tokenTrouble = null; draw(); },
    notNow: () => { Object.assign(state, { asksToken: false, tokenLater: true }); draw(); },
    changeTheme: () => {
      const next = document.documentElement.dataset.theme === 'dim' ? 'light' : 'dim';
      document.documentElement.dataset.theme = next;
      localStorage.setItem('wallchart.theme', next);
      draw();
    },
    redrawDialog,
    restartIdle: () => {},
  };
}
