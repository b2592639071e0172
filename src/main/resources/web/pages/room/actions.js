// What somebody at the workstation can do. Each act changes the state and draws; where the question changed, it is asked anew.
import { offered } from './finding.js';
import { rowNow } from './adjusting.js';
import { asker } from './question.js';
import { asCharted, differing } from './differing.js';
import { moved, movedTo, newsOf } from './news.js';
import { AS_CHARTED, EMPTY, question, sameMeasurement } from './state.js';
import { inCentimetres, nextTo, number, step as stepOf, stepped, unfinished } from './thickness.js';
import { centimetres } from '/pages/words.js';
import * as tokens from './token.js';

export function actions(state, { draw, redrawDialog, openDialog }) {
  const asking = asker({
    source: () => ({ room: state.room, token: tokens.token(state.room), pack: state.pack }),
    show,
    heard,
  });

  function show(answer) {
    state.answer = answer;
    if (answer.source === 'live' && answer.kind === 'technique') {
      state.news = newsOf(state.stood, answer) ?? state.news;
      state.stood = answer;
    }
    draw();
  }

  /** Asks for what stands there now; what was answered before goes at once. `news` says why, where nobody at the screen did anything. */
  function askAgain(news = null) {
    state.news = news;
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
    reset({ group: state.group, chosen: each, ...takenOver(each) });
    askAgain();
    if (by === 'touch') document.getElementById('scale')?.focus({ preventScroll: true });
    else document.getElementById('thickness').focus();
    return true;
  }

  /** Elsewhere in the room the thickness and the patient's condition stay; SID and grid were the support's. */
  function takenOver(each) {
    const { chosen, typed, adjust, dropped } = state;
    if (sameMeasurement(each, chosen)) return { typed, adjust, dropped: differing({ ...state, adjust: [] }) };
    if (!dropped) return {};
    return { dropped: each.id === dropped.of ? dropped : differing({ ...AS_CHARTED, adjust: dropped.adjust }) };
  }

  function chooseMarked(by) {
    const each = state.query.trim() === '' ? null : offered(state)[state.marked];
    return each ? choose(each, by) : false;
  }

  /** What a new search does not take over; the examination it was asked of beside it. */
  function dropped() {
    const now = differing(state);
    return now ? { ...now, of: state.chosen?.id } : state.dropped;
  }

  /** A new search forgets what stands there: letters are for another examination. */
  function search(letters) {
    reset({ group: state.group, query: letters, dropped: dropped() });
    draw();
  }

  /** Also what a keyboard on the screen or a paste brings at once: 'ka12'. */
  function typedInFinder(field) {
    const [, letters, digits] = field.value.match(/^(.*?)(\d[\d.,]*)?\+*$/s);
    search(letters);
    if (digits && chooseMarked('keys')) type(digits);
  }

  /**
   * What stands in the field now. A digit more, or one less, corrects; where a number begins in the place of another (`begun`), it
   * may be of another patient.
   */
  function type(text, begun = false) {
    const typed = text.trim();
    if (state.typed !== '' && (begun || typed === '')) Object.assign(state, asCharted(state));
    state.typed = typed;
    state.measured = null;
    askAgain();
  }

  /** A step on the scale corrects, and so does pulling on; a touch anywhere else on it is another number. */
  function slide(text, touched) {
    const before = number(state.typed);
    const now = Number(Number(text).toFixed(2));
    if (now === before) return;
    type(String(now), touched && before !== null && Math.abs(now - before) > stepOf(state.unit) + 0.001);
  }

  function putBack() {
    const { adjust, sidCm, grid } = state.dropped;
    Object.assign(state, { adjust, sidCm, grid, dropped: null });
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
      if (told?.chart) now(told);
      if (['pack', 'none'].includes(state.answer?.source)) asking.ask(state.answer.question); // stays until the live one is there
      asking.back();
    } else if (word !== 'lost') needsToken(word === 'unknown-token' ? 401 : 403);
    draw();
  }

  /** What answers in the room now: an answer by another version, or other equipment, does not stand a moment longer. */
  function now({ chart, equipment }) {
    const before = state.answer?.technique ?? state.live;
    if (before && (chart.version < before.chart.version || equipment.revision < before.equipment.revision)) return; // came late
    state.live = { chart, equipment };
    state.pack?.noticed(chart, equipment);
    const standing = state.answer !== null && state.answer.kind !== 'waiting';
    if (standing && before && moved(before, state.live)) askAgain(movedTo(before, state.live));
  }

  /** Asked for in place; what was found and entered stays. After 'Not now' the foot goes on saying it, and 'Workstation' leads there. */
  function needsToken(status) {
    if (state.asksToken || state.tokenLater) return;
    state.asksToken = true;
    state.tokenTrouble = tokens.token(state.room) ? tokens.TROUBLE[status] : null;
    draw();
  }

  return {
    askAgain, clear, choose, chooseMarked, search, typedInFinder, type, slide, putBack, step, lookAt, sid, sidTyped, sidStep, heard, needsToken,
    clearByItself: () => { reset(); state.cleared = true; document.getElementById('dialog').close(); draw(); },
    warn: (on) => { if (state.warned !== on) { state.warned = on; draw(); } },
    mark: (direction) => {
      if (state.query.trim() === '') return false;
      const last = offered(state).length - 1;
      state.marked = Math.max(0, Math.min(last, state.marked + direction));
      draw();
      return true;
    },
    markAt: (index) => { state.marked = index; draw(); document.getElementById('find').focus({ preventScroll: true }); },
    inGroup: (group) => { reset({ group, query: state.query, part: state.part, dropped: dropped() }); draw(); },
    openPart: (part) => {
      reset({ group: state.group, part, dropped: dropped() });
      draw();
      document.getElementById(part ? 'opened' : 'find')?.focus({ preventScroll: true });
    },
    grid: (id) => { state.grid = id; askAgain(); },
    adjust: (name) => {
      state.adjust = state.adjust.includes(name) ? state.adjust.filter((each) => each !== name) : [...state.adjust, name];
      askAgain();
    },
    asCharted: () => { Object.assign(state, AS_CHARTED, { adjust: [] }); askAgain(); },
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
