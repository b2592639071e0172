// Sends what is typed, one write at a time and in the order in which rows were first touched, each on the revision that was seen.
// What cannot be sent now stays and is tried again; what others wrote in between is compared field by field, never overwritten unseen.
import * as api from '/pages/api.js';
import { Draft } from '/pages/change/draft.js';
import { NAMES, keyOf, pathOf } from '/pages/change/fields.js';

const FIRST_WAIT_MS = 1000;
const LONGEST_WAIT_MS = 30_000;
const PARTS = { band: 'bandFromCm' };

export class Sender {
  /** `isAuthor()` says whether the one who typed is still signed in; `moved(from, to)` that a row has another key by now. */
  constructor({ draft, id, isAuthor, learned, moved }) {
    Object.assign(this, { draft, id, isAuthor, learned, moved });
    this.etag = null;
    this.busy = null;
    this.failures = 0;
    this.unreachable = false;
    this.stopped = '';
    this.timer = null;
    draft.wanted = () => this.soon();
    window.addEventListener('online', () => this.now());
  }

  /** Without waiting any longer: the network is back, or somebody pressed the button. */
  now() {
    this.failures = 0;
    this.retryAt = 0;
    if (!this.stopped) this.soon();
  }

  /** The author is here again. */
  goOn() {
    this.stopped = '';
    this.now();
  }

  soon() {
    clearTimeout(this.timer);
    const next = this.next();
    if (!next || this.busy || this.stopped) return;
    this.timer = setTimeout(() => this.send(), Math.max(0, next.due - Date.now(), (this.retryAt ?? 0) - Date.now()));
  }

  next() {
    const waiting = this.draft.unsent().filter((line) => line.state === 'waiting' || line.state === 'saving');
    return waiting.sort((one, other) => one.since - other.since)[0];
  }

  /** Runs a step of the whole change when nothing is under way: `step(etag)`; others wait for it. */
  async alone(step) {
    while (this.busy) await this.busy;
    const work = step(this.etag);
    this.busy = work.catch(() => {});
    try {
      return await work;
    } finally {
      this.busy = null;
      this.soon();
    }
  }

  async send() {
    const line = this.next();
    if (!line || this.busy || this.stopped) return;
    if (!this.isAuthor()) {
      this.stop();
      return;
    }
    this.busy = this.sendLine(line);
    await this.busy;
    this.busy = null;
    this.draft.changed();
    this.soon();
  }

  stop() {
    this.stopped = 'somebody else is signed in';
    this.draft.changed();
  }

  async sendLine(line) {
    const sent = { op: line.op, typed: { ...line.typed }, list: line.list };
    line.sending = true;
    line.state = 'saving';
    this.draft.changed();
    try {
      const answer = await this.write(line, sent);
      this.failures = 0;
      this.unreachable = false;
      const before = new Set(this.draft.change.edits.map((edit) => edit.key));
      line.sending = false;
      this.take(answer);
      this.confirm(line, sent, before);
    } catch (failed) {
      line.sending = false;
      line.state = 'waiting';
      await this.failed(line, failed);
    }
  }

  take(answer) {
    this.etag = answer.etag;
    this.draft.takeChange(answer.data);
    this.learned(answer.data);
  }

  write(line, { op, list }) {
    const options = { ifMatch: this.etag };
    const at = `/changes/${this.id}`;
    switch (op) {
      case 'put-adjustments': return api.put(`${at}/adjustments`, { adjustments: list }, options);
      case 'undo-adjustments': return api.remove(`${at}/adjustments`, options);
      case 'withdraw': return api.remove(`${at}/rows/${pathOf(line.key)}`, options);
      case 'undo': return api.remove(`${at}/edits/${pathOf(line.key)}`, options);
      default: return api.put(`${at}/rows/${pathOf(line.isNew ? keyOf(Draft.texts(line)) : line.key)}`, written(line), options);
    }
  }

  /** The service has it; what was typed meanwhile still waits. */
  confirm(line, sent, before) {
    if (line === this.draft.adjustments) {
      if (line.list === sent.list) this.draft.settle(line);
      else line.state = 'waiting';
      return;
    }
    const came = this.draft.change.edits.find((edit) => edit.kind !== 'withdraw' && !before.has(edit.key));
    const target = sent.op === 'put' && came && came.key !== line.key ? this.draft.line(came.key) : line;
    const rest = Object.entries(line.typed).filter(([name, value]) => value !== sent.typed[name]);
    const op = line.op;
    this.draft.settle(line);
    if (target !== line) this.moved(line.key, target.key);
    this.draft.forgetEmpty();
    if (op !== sent.op) this.draft.want(target, op);
    else if (op === 'put' && rest.length > 0) this.draft.type(target.key, Object.fromEntries(rest));
  }

  async failed(line, failed) {
    if (failed instanceof api.SomebodyElse) {
      this.stop();
    } else if (failed instanceof api.Problem && failed.status === 412) {
      await this.compare();
    } else if (failed instanceof api.Problem && failed.status < 500 && failed.status !== 429) {
      await this.refused(line, failed);
    } else {
      this.unreachable = true;
      this.retryAt = Date.now() + Math.min(LONGEST_WAIT_MS, FIRST_WAIT_MS * 2 ** this.failures);
      this.failures += 1;
    }
  }

  async refused(line, problem) {
    line.state = 'refused';
    line.why = problem.errors.length > 0 ? '' : problem.detail;
    if (line === this.draft.adjustments) {
      line.errors = problem.errors;
    } else {
      problem.errors.forEach((error) => {
        const field = error.pointer?.slice(1) ?? PARTS[error.parameter] ?? error.parameter;
        if (NAMES.includes(field)) line.errors[field] = error.detail;
        else line.why = error.detail;
      });
    }
    if (problem.status !== 400) await this.compare(line);
  }

  /** Reads the change as it is by now, and holds what is typed against it. */
  async compare(refused = null) {
    try {
      this.take(await api.get(`/changes/${this.id}`));
    } catch (failed) {
      await this.failed(null, failed instanceof api.Problem ? new api.Unreachable(failed) : failed);
      return;
    }
    this.draft.unsent().filter((line) => line !== refused).forEach((line) => this.compareLine(line));
  }

  compareLine(line) {
    if (line.state === 'offered') return;
    if (line === this.draft.adjustments) compareAdjustments(this.draft);
    else if (line.op === 'withdraw') settleIf(this.draft, line, line.withdrawn || (!line.base && !line.server));
    else if (line.op === 'undo') settleIf(this.draft, line, line.kind === null);
    else compareFields(this.draft, line);
  }
}

function written(line) {
  return Object.fromEntries(Object.entries(Draft.texts(line)).filter(([, value]) => value !== ''));
}

function settleIf(draft, line, done) {
  if (done) draft.settle(line);
}

function compareFields(draft, line) {
  if (!line.server && !line.isNew) {
    line.gone = true;
    line.state = 'conflict';
    return;
  }
  const now = line.server ?? {};
  Object.keys(line.typed).forEach((name) => {
    const theirs = now[name] ?? '';
    if (line.server && theirs === line.typed[name]) {
      delete line.typed[name];
      delete line.seen[name];
      delete line.theirs[name];
    } else if (line.server && theirs !== (line.seen[name] ?? '')) {
      line.theirs[name] = theirs;
    }
  });
  if (Object.keys(line.typed).length === 0) draft.settle(line);
  else if (Object.keys(line.theirs).length > 0) line.state = 'conflict';
}

function compareAdjustments(draft) {
  const line = draft.adjustments;
  const now = draft.serverAdjustments();
  if (line.op === 'undo-adjustments' ? !draft.change.adjustments : same(now, line.list)) draft.settle(line);
  else if (line.seen !== JSON.stringify(now)) {
    line.theirs = now;
    line.state = 'conflict';
  }
}

/** Whether what is typed says what the service has. */
function same(now, typed) {
  const words = (list) => JSON.stringify(list.map((one) => ['name', 'label', 'addKV', 'timesMAs', 'notes'].map((name) =>
    String(one[name] ?? ''))));
  return words(now) === words(typed);
}
