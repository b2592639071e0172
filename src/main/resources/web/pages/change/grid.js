// The rows of a change as a spreadsheet: one cell has the focus (ARIA grid pattern), keys move it, typing edits it.
import { shown, spokenBack, choicesOf } from '/pages/change/fields.js';
import { Draft } from '/pages/change/draft.js';
import { block, cellsOf, copied } from '/pages/change/paste.js';
import { Undo } from '/pages/change/undo.js';
import { drawGrid } from '/pages/change/cells.js';

const PAGE = 10;

export class Grid {
  /** `leave()` moves the focus out of the table. */
  constructor({ place, draft, site, room, leave }) {
    Object.assign(this, { place, draft, site, room, leave });
    this.unit = site.lengthUnit;
    this.lines = [];
    this.columns = [];
    this.findings = new Map();
    this.active = null;
    this.anchor = null;
    this.editing = null;
    this.message = '';
    this.undo = new Undo(draft);
  }

  /** Draws what there is now; the focus stays where it was. */
  show(lines, columns, findings) {
    this.lines = lines;
    this.columns = columns;
    this.findings = findings;
    if (!this.cellIs(this.active)) this.active = lines.length ? { key: lines[0].key, name: columns[0].name } : null;
    if (!this.cellIs(this.anchor)) this.anchor = null;
    if (this.editing && !this.cellIs(this.editing)) this.editing = null;
    this.draw();
  }

  cellIs(cell) {
    return cell && this.lines.some((line) => line.key === cell.key) && this.columns.some(({ name }) => name === cell.name);
  }

  draw() {
    const had = this.place.contains(document.activeElement);
    drawGrid(this);
    if (this.wantsFocus || (had && !this.place.contains(document.activeElement))) this.focus(); // its row went
  }

  focus() {
    this.wantsFocus = false;
    const cell = this.place.querySelector('td[tabindex="0"]');
    const field = cell?.querySelector('input');
    (field ?? cell)?.focus();
    cell?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
    if (field && this.editing.all) field.select();
    if (this.editing) this.editing.all = false;
  }

  line(key) {
    return this.lines.find((line) => line.key === key);
  }

  choices(name) {
    return choicesOf(name, this.site, this.room);
  }

  spokenBack(name, typed, before) {
    return spokenBack(name, typed, before, this.unit, this.choices('fieldCm'));
  }

  at(cell) {
    return { row: this.lines.findIndex((line) => line.key === cell.key), column: this.columns.findIndex(({ name }) => name === cell.name) };
  }

  /** The focus goes to a cell; with `extend` the selection grows to it. */
  go(row, column, extend = false) {
    const to = {
      key: this.lines[Math.min(Math.max(row, 0), this.lines.length - 1)].key,
      name: this.columns[Math.min(Math.max(column, 0), this.columns.length - 1)].name,
    };
    this.anchor = extend ? this.anchor ?? this.active : null;
    this.active = to;
    this.message = '';
    this.wantsFocus = true;
    this.activated?.();
    this.draw();
  }

  /** Rows and columns of the selection, or of the one cell. */
  selection() {
    const one = this.at(this.active);
    const other = this.anchor ? this.at(this.anchor) : one;
    return {
      top: Math.min(one.row, other.row), bottom: Math.max(one.row, other.row),
      left: Math.min(one.column, other.column), right: Math.max(one.column, other.column),
    };
  }

  edit(text, all) {
    const line = this.line(this.active.key);
    if (line.withdrawn || line.op === 'withdraw') {
      this.message = 'The row is withdrawn by this change: undo that to edit it.';
      this.activated?.();
    } else {
      const value = shown(this.active.name, Draft.value(line, this.active.name), this.unit);
      this.editing = { ...this.active, text: text ?? value, over: text !== null, all };
      if (text !== null) this.draft.keepCell(this.active.key, this.active.name, text);
      this.anchor = null;
      this.wantsFocus = true;
    }
    this.draw();
  }

  typing(text) {
    this.editing.text = text;
    const { key, name } = this.editing;
    this.draft.keepCell(key, name, this.spokenBack(name, text, Draft.value(this.line(key), name)));
  }

  /** What was typed is entered; the draft keeps and sends it. */
  enter() {
    const editing = this.editing;
    if (!editing) return;
    this.editing = null;
    this.draft.forgetCell(editing.key);
    const before = Draft.value(this.line(editing.key), editing.name);
    this.undo.enter([[editing.key, { [editing.name]: this.spokenBack(editing.name, editing.text, before) }]]);
  }

  /** The focus left the field: into another window or the sign-in it comes back from; else what was typed is entered. */
  left() {
    if (document.hasFocus() && !document.querySelector('dialog[open]')) this.enter();
  }

  cancel() {
    this.draft.forgetCell(this.editing.key);
    this.editing = null;
    this.wantsFocus = true;
    this.draw();
  }

  clear() {
    const { top, bottom, left, right } = this.selection();
    const fields = Object.fromEntries(this.columns.slice(left, right + 1).map(({ name }) => [name, '']));
    this.undo.enter(this.lines.slice(top, bottom + 1).map((line) => [line.key, fields]));
  }

  /** Ctrl+Z takes the last edit back, Ctrl+Y or Ctrl+Shift+Z enters it again. */
  goBack(again) {
    const cell = again ? this.undo.again() : this.undo.back();
    const place = cell ? this.at(cell) : { row: -1, column: -1 };
    if (place.row >= 0 && place.column >= 0) this.go(place.row, place.column);
    this.message = cell ? '' : `There is no edit to ${again ? 'enter again' : 'take back'}, or something else stands there by now.`;
    this.activated?.();
    this.draw();
  }

  key(event) {
    if (!this.active || event.target.closest('.beside')) return;
    const done = this.editing ? this.keyWhileEditing(event) : this.keyWhileMoving(event);
    if (done) event.preventDefault();
  }

  keyWhileEditing(event) {
    const { row, column } = this.at(this.editing);
    const arrows = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] };
    if (event.key === 'Escape') {
      this.cancel();
    } else if (event.key === 'Enter') {
      this.enter();
      this.go(row + (event.shiftKey ? -1 : 1), column);
    } else if (event.key === 'Tab') {
      this.enter();
      return this.tab(row, column, event.shiftKey);
    } else if (arrows[event.key] && this.editing.over && this.choices(this.editing.name).length === 0) {
      this.enter();
      this.go(row + arrows[event.key][0], column + arrows[event.key][1]);
    } else {
      return false;
    }
    return true;
  }

  keyWhileMoving(event) {
    const { row, column } = this.at(this.active);
    const last = { row: this.lines.length - 1, column: this.columns.length - 1 };
    const extend = event.shiftKey;
    const whole = event.ctrlKey || event.metaKey;
    switch (event.key) {
      case 'ArrowUp': this.go(whole ? 0 : row - 1, column, extend); return true;
      case 'ArrowDown': this.go(whole ? last.row : row + 1, column, extend); return true;
      case 'ArrowLeft': this.go(row, whole ? 0 : column - 1, extend); return true;
      case 'ArrowRight': this.go(row, whole ? last.column : column + 1, extend); return true;
      case 'Home': this.go(whole ? 0 : row, 0, extend); return true;
      case 'End': this.go(whole ? last.row : row, last.column, extend); return true;
      case 'PageUp': this.go(row - PAGE, column, extend); return true;
      case 'PageDown': this.go(row + PAGE, column, extend); return true;
      case 'Tab': return this.tab(row, column, event.shiftKey);
      case 'Enter': case 'F2': this.edit(null, event.key === 'Enter'); return true;
      case 'Escape': this.leave(); return true;
      case 'Delete': case 'Backspace': this.clear(); return true;
      default:
        if (whole && !event.altKey && ['z', 'y'].includes(event.key.toLowerCase())) {
          this.goBack(event.key.toLowerCase() === 'y' || extend);
          return true;
        }
        if (event.key.length !== 1 || whole || event.altKey) return false;
        this.edit(event.key, false);
        return true;
    }
  }

  /** To the next cell, over the end of the row; out of the table at its ends. */
  tab(row, column, back) {
    const width = this.columns.length;
    const next = row * width + column + (back ? -1 : 1);
    if (next < 0 || next >= width * this.lines.length) {
      this.draw();
      return false;
    }
    this.go(Math.floor(next / width), next % width);
    return true;
  }

  copy(event) {
    if (this.editing || !this.active || event.target.closest('.beside')) return;
    const { top, bottom, left, right } = this.selection();
    event.clipboardData.setData('text/plain', copied(this.lines.slice(top, bottom + 1), this.columns.slice(left, right + 1), this.unit));
    event.preventDefault();
  }

  paste(event) {
    const text = event.clipboardData.getData('text/plain');
    if (!this.active || (this.editing && !/[\t\n]/.test(text))) return;
    event.preventDefault();
    if (this.editing) this.cancel();
    const { top, left } = this.selection();
    const from = { key: this.lines[top].key, name: this.columns[left].name };
    const cells = cellsOf(text);
    const { edits, refused } = cells.length ? block(cells, this.lines, this.columns, from, this.unit, this.choices('fieldCm')) : { refused: 'Nothing was copied.' };
    this.message = refused ?? '';
    if (edits) this.undo.enter(edits);
    this.activated?.();
    this.draw();
  }

  pointed(event, key, name) {
    if (this.editing?.key === key && this.editing.name === name) return;
    this.enter();
    const { row, column } = this.at({ key, name });
    if (row >= 0) this.go(row, column, event.shiftKey);
  }

  pointedTwice(key, name) {
    this.active = { key, name };
    this.edit(null, false);
  }
}
