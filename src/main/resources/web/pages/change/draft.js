// A change while its author works on it: what the service has, what is typed on top of it, and what became of each row.
import { DraftAdjustments, noAdjustments } from '/pages/change/draft-adjustments.js';
import { textsOf, keyOf } from '/pages/change/fields.js';

const SEND_SOON_MS = 400;

export class Draft extends DraftAdjustments {
  /**
   * `kept` keeps what is not confirmed; `changed()` is called whenever something is to be drawn anew.
   */
  constructor(kept, changed) {
    super();
    this.kept = kept;
    this.changed = changed;
    this.rows = new Map();
    this.order = [];
    this.keepFails = false;
    this.adjustments = noAdjustments();
  }

  /** What the base version says: its rows in their order. */
  takeBase(rows, adjustments) {
    this.baseAdjustments = adjustments;
    this.base = new Map(rows.map((row) => [row.key, textsOf(row)]));
    this.order = rows.map((row) => row.key);
    this.rows.forEach((line) => {
      line.base = this.base.get(line.key) ?? null;
      if (!line.base) this.place(line.key);
    });
  }

  /** What the service says now, with or without findings. Lines that nobody types in follow it. */
  takeChange(change) {
    this.change = change;
    const edits = new Map(change.edits.map((edit) => [edit.key, edit]));
    edits.forEach((edit, key) => this.line(key));
    this.rows.forEach((line) => {
      const edit = edits.get(line.key);
      line.kind = edit?.kind ?? null;
      line.withdrawn = edit?.kind === 'withdraw';
      if (line.server) line.last = line.server;
      line.server = edit ? (line.withdrawn ? null : textsOf(edit.row)) : line.base;
      if (line.state === 'saved' && !edit) line.state = 'untouched';
      if (line.state === 'untouched' && edit) line.state = 'saved';
    });
    const adjustments = this.adjustments;
    if (!adjustments.op) adjustments.state = change.adjustments ? 'saved' : 'untouched';
    this.forgetEmpty();
  }

  /** A row that is neither in the chart nor typed is no row any more. */
  forgetEmpty() {
    this.rows.forEach((line, key) => {
      if (!line.base && !line.server && !line.op && !line.withdrawn) this.rows.delete(key);
    });
  }

  /** The line of a row, made when first asked for. */
  line(key) {
    if (!this.rows.has(key)) {
      const base = this.base.get(key) ?? null;
      this.rows.set(key, {
        key, base, server: base, kind: null, withdrawn: false, state: 'untouched',
        op: null, typed: {}, seen: {}, errors: {}, why: '', theirs: {}, due: 0,
      });
      if (!base) this.place(key);
    }
    return this.rows.get(key);
  }

  /** New rows stand behind the bands of their examination that begin before them. */
  place(key) {
    if (this.order.includes(key)) return;
    const examination = key.slice(0, key.lastIndexOf('/') + 1);
    const from = (one) => parseFloat(one.slice(one.lastIndexOf('/') + 1));
    let at = -1;
    this.order.forEach((one, index) => {
      if (one.startsWith(examination) && (at < 0 || from(one) <= from(key))) at = index;
    });
    this.order.splice(at < 0 ? this.order.length : at + 1, 0, key);
  }

  /** What a cell holds now. */
  static value(line, name) {
    return line.typed[name] ?? (line.server ?? line.base ?? {})[name] ?? '';
  }

  static texts(line) {
    return { ...(line.server ?? line.base), ...line.typed };
  }

  isTouched(line) {
    return line.state !== 'untouched' || line.kind !== null;
  }

  /** Somebody typed into cells of one row: kept at once, sent soon. */
  type(key, fields) {
    const line = this.line(key);
    if (line.withdrawn || line.op === 'withdraw') return;
    Object.entries(fields).forEach(([name, value]) => {
      if (value === Draft.value(line, name) && !line.errors[name]) return;
      if (!(name in line.seen)) line.seen[name] = (line.server ?? {})[name] ?? '';
      line.typed[name] = value;
      if (value === (line.server ?? {})[name] && !line.isNew && !line.sending) {
        delete line.typed[name];
        delete line.seen[name];
      }
      delete line.errors[name];
      delete line.theirs[name];
    });
    if (Object.keys(line.typed).length === 0) {
      if (line.op === 'put' && !line.sending) this.settle(line);
    } else {
      this.want(line, 'put');
    }
    this.changed();
  }

  /** Several rows at once, as from a block: drawn once. */
  typeAll(edits) {
    const { changed } = this;
    this.changed = () => {};
    edits.forEach(([key, fields]) => this.type(key, fields));
    this.changed = changed;
    changed();
  }

  /** What stands in a cell that is still being typed in: kept with the row, not sent before it is entered. */
  keepCell(key, name, value) {
    const line = this.line(key);
    const typed = line.typed;
    line.typed = { ...typed, [name]: value };
    const seen = line.seen;
    if (!(name in seen)) line.seen = { ...seen, [name]: (line.server ?? {})[name] ?? '' };
    const op = line.op;
    line.op = 'put';
    this.store(line);
    Object.assign(line, { typed, seen, op });
  }

  /** The typing was broken off: what was kept of it goes. */
  forgetCell(key) {
    const line = this.line(key);
    if (line.op) this.store(line);
    else this.kept.forget(key);
  }

  /** A row that the chart has not. */
  add(texts) {
    const key = keyOf(texts);
    const line = this.line(key);
    line.isNew = true;
    line.typed = { ...texts };
    line.seen = {};
    this.want(line, 'put');
    this.changed();
    return key;
  }

  /** The row goes out of the chart; one that only this change has is taken back. */
  withdraw(key) {
    this.wantInstead(key, 'withdraw');
  }

  /** The row is again as the base version has it. */
  undo(key) {
    const line = this.line(key);
    if (line.kind === null && !line.sending) this.settle(line);
    else this.wantInstead(key, 'undo');
    this.forgetEmpty();
    this.changed();
  }

  wantInstead(key, op) {
    const line = this.line(key);
    if (line.isNew && !line.server && !line.sending) {
      this.settle(line);
      this.forgetEmpty();
    } else {
      line.typed = {};
      line.seen = {};
      line.errors = {};
      line.theirs = {};
      this.want(line, op);
    }
    this.changed();
  }

  want(line, op) {
    line.op = op;
    line.why = '';
    line.due = Date.now() + SEND_SOON_MS;
    if (!line.theirs || Object.keys(line.theirs).length === 0) line.state = line.sending ? 'saving' : 'waiting';
    line.since ??= Date.now() + this.rows.size / 1e6;
    this.store(line);
    this.wanted?.();
  }

  store(line) {
    try {
      this.kept.keep(line.key, line === this.adjustments
        ? { op: line.op, list: line.list, seen: line.seen }
        : { op: line.op, fields: line.typed, seen: line.seen, isNew: line.isNew === true });
      this.keepFails = false;
    } catch {
      this.keepFails = true; // storage is full or shut: the page says so
    }
  }

  /** Nothing of the row waits any more. */
  settle(line) {
    this.kept.forget(line.key);
    if (line === this.adjustments) {
      Object.assign(line, { op: null, list: null, seen: null, errors: [], why: '', theirs: null, since: undefined });
      line.state = this.change.adjustments ? 'saved' : 'untouched';
      return;
    }
    Object.assign(line, { op: null, typed: {}, seen: {}, errors: {}, theirs: {}, why: '', since: undefined, isNew: false });
    line.state = line.kind ? 'saved' : 'untouched';
  }

  /** What an earlier window left behind; whatever the service has by now is not offered again. */
  offer(row, record) {
    if (row === 'adjustments') {
      Object.assign(this.adjustments, { op: record.op, list: record.list, seen: record.seen, state: 'offered', since: Date.now() });
      return;
    }
    const line = this.line(row);
    const fields = record.fields ?? {};
    const has = record.op === 'put'
      ? line.server && Object.entries(fields).every(([name, value]) => line.server[name] === value)
      : record.op === 'withdraw' ? line.withdrawn || (!line.base && !line.server) : line.kind === null;
    if (has) {
      this.settle(line);
      this.forgetEmpty();
      return;
    }
    Object.assign(line, {
      op: record.op, typed: fields, seen: record.seen ?? {}, isNew: record.isNew === true, state: 'offered', since: Date.now(),
    });
  }

  offered() {
    return this.unsent().filter((line) => line.state === 'offered');
  }

  takeUp() {
    this.offered().forEach((line) => this.want(line, line.op));
    this.changed();
  }

  forgetOffered() {
    this.offered().forEach((line) => this.settle(line));
    this.forgetEmpty();
    this.changed();
  }

  /** Lines with something that the service has not confirmed. */
  unsent() {
    return [...this.rows.values(), this.adjustments].filter((line) => line.op !== null);
  }

  /** The author chose between what they typed and what stands there by now. */
  choose(key, name, mine) {
    const line = this.line(key);
    if (mine) line.seen[name] = line.theirs[name];
    else {
      delete line.typed[name];
      delete line.seen[name];
    }
    delete line.theirs[name];
    if (Object.keys(line.theirs).length > 0) this.store(line);
    else if (Object.keys(line.typed).length === 0) this.settle(line);
    else this.want(line, 'put');
    this.changed();
  }

  /** Whether the author takes a row back that another window withdrew meanwhile. */
  chooseRow(key, mine) {
    const line = this.line(key);
    line.gone = false;
    if (!mine) this.settle(line);
    else {
      line.isNew = !line.base;
      line.typed = { ...(line.last ?? line.base ?? {}), ...line.typed };
      this.want(line, 'put');
    }
    this.forgetEmpty();
    this.changed();
  }
}
