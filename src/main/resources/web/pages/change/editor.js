// The part of the page in which the author works: table, adjustments, what waits to be saved.
import { html, render, nothing } from '/pages/lit-html.js';
import { person, site } from '/pages/shell.js';
import { Draft } from '/pages/change/draft.js';
import { Sender } from '/pages/change/sender.js';
import { Grid } from '/pages/change/grid.js';
import { Kept, thisWindow } from '/pages/change/kept.js';
import { keyLine, NAMES } from '/pages/change/fields.js';
import { editAdjustments } from '/pages/change/adjustments.js';
import { chosenGroups, chooseGroup, columnsOf, linesOf, finder, tools, dialogOf, splitAt, added } from '/pages/change/rows.js';

export class Editor {
  static async open(options) {
    const editor = new Editor(options, await thisWindow());
    editor.begin(options.base);
    return editor;
  }

  constructor({ id, me, change, etag, room, learned, draw }, window) {
    Object.assign(this, { id, me, room, window, change });
    this.redraw = draw;
    this.words = '';
    this.brought = new Set();
    this.groups = chosenGroups();
    this.dialog = null;
    this.findings = [];
    this.kept = new Kept(id, me.personId, window.name);
    this.draft = new Draft(this.kept, draw);
    this.sender = new Sender({
      draft: this.draft, id, isAuthor: () => person()?.personId === me.personId,
      learned: (data) => learned(data, this.sender.etag), moved: (from, to) => this.moved(from, to),
    });
    this.sender.etag = etag;
  }

  begin(base) {
    this.draft.takeBase(base.rows, base.adjustments);
    this.draft.takeChange(this.change);
    this.kept.takeOver(this.window.isOpen).forEach(([row, record]) => this.draft.offer(row, record));
  }

  isFor(id, me) {
    return this.id === id && this.me.personId === me?.personId;
  }

  /** The author is here again, or a step was taken: what is typed goes on top of what the service has now. */
  goOn(base, change, etag) {
    if (change.revision < this.draft.change.revision) return; // read before what is on the screen was written
    this.draft.takeBase(base.rows, base.adjustments);
    this.sender.etag = etag;
    this.draft.takeChange(change);
    this.sender.goOn();
  }

  alone(step) {
    return this.sender.alone(async (etag) => {
      const answer = await step(etag);
      this.sender.etag = answer.etag;
      return answer;
    });
  }

  unsent() {
    return this.draft.unsent().length + (this.grid?.editing ? 1 : 0);
  }

  /** A row has another key by now: the focus goes with it. */
  moved(from, to) {
    this.brought.add(to);
    const { grid } = this;
    grid?.undo.moved(from, to);
    if (grid?.active?.key === from) grid.active = { ...grid.active, key: to };
    if (grid?.editing?.key === from) grid.editing = { ...grid.editing, key: to };
    grid.wantsFocus = grid.place.contains(document.activeElement);
  }

  /** Where the parts are drawn into; they keep their own elements, so that nothing typed is drawn over. */
  frame() {
    return html`
      <section aria-labelledby="rows"><h2 id="rows">Rows</h2>
        <div id="kept"></div><div id="finder"></div><div id="tools"></div>
        <p class="small" id="keys">Arrows, Tab and Enter move; typing, F2 or Enter edits,
          Esc breaks off; Ctrl+C and Ctrl+V copy and paste blocks of
          cells, also from a spreadsheet; Delete empties; Ctrl+Z takes the last edit back,
          Ctrl+Y enters it again. Esc, when nothing is edited, leaves the table.</p>
        <div role="alert" id="refusal"></div>
        <div id="sheet"></div></section>
      <section aria-labelledby="adjustments"><h2 id="adjustments">Named adjustments</h2>
        <details ?open=${this.draft.adjustments.state !== 'untouched'}>
          <summary>Edit the named adjustments of this room</summary><div id="named"></div></details></section>
      <dialog id="row-dialog" aria-labelledby="dialog-title" @close=${() => this.closed()}></dialog>`;
  }

  draw(findings = this.findings) {
    this.findings = findings;
    const at = (name) => document.getElementById(name);
    if (!at('sheet')) return;
    this.grid ??= this.makeGrid(at('sheet'));
    this.grid.place = at('sheet');
    const listed = linesOf(this.draft, this.words, this.brought, site());
    this.grid.show(listed.lines, columnsOf(this.groups), byRow(findings));
    const active = this.grid.active ? this.grid.line(this.grid.active.key) : null;
    render(this.keptOf(), at('kept'));
    render(finder({ ...listed, words: this.words, groups: this.groups }, this.finding(listed)), at('finder'));
    render(tools(active, this.draft, site(), this.acting()), at('tools'));
    render(this.grid.message ? html`<p class="tell blocking"><strong>Not done.</strong>${this.grid.message}</p>` : nothing, at('refusal'));
    render(editAdjustments(this.draft, findings.filter(({ row }) => this.isAdjustment(row))), at('named'));
    if (this.dialog) render(dialogOf(this.dialog, site(), this.room, this.acting()), at('row-dialog'));
  }

  isAdjustment(row) {
    return row !== '' && !row.includes('/');
  }

  makeGrid(place) {
    const grid = new Grid({ place, draft: this.draft, site: site(), room: this.room, leave: () =>
      document.getElementById('add-row').focus() });
    grid.activated = () => queueMicrotask(() => this.draw());
    return grid;
  }

  finding({ lines }) {
    return {
      find: (words) => { this.words = words; this.draw(); },
      keepFound: () => { lines.forEach((line) => this.brought.add(line.key)); this.words = ''; this.draw(); },
      group: (group, on) => { this.groups = chooseGroup(this.groups, group, on); this.draw(); },
    };
  }

  acting() {
    return {
      undo: (line) => { this.brought.add(line.key); this.draft.undo(line.key); },
      withdraw: (line) => this.draft.withdraw(line.key),
      split: (line) => this.ask({ kind: 'split', line }),
      add: (line) => this.ask({ kind: 'add', like: line?.key, texts: line ? Draft.texts(line) : Object.fromEntries(NAMES.map((name) =>
        [name, ''])) }),
      close: () => document.getElementById('row-dialog').close(),
      doSplit: (event) => this.doSplit(event),
      doAdd: (event) => this.doAdd(event),
    };
  }

  ask(dialog) {
    this.dialog = dialog;
    this.draw();
    const element = document.getElementById('row-dialog');
    element.querySelector('form').reset();
    element.showModal();
  }

  closed() {
    this.dialog = null;
    render(nothing, document.getElementById('row-dialog'));
  }

  doSplit(event) {
    event.preventDefault();
    const { line } = this.dialog;
    const { refused, edits, rest } = splitAt(line, event.target.elements.at.value, site());
    if (refused) {
      this.dialog = { ...this.dialog, refused };
      this.draw();
      return;
    }
    this.acting().close();
    this.draft.type(line.key, edits);
    this.brought.add(this.draft.add(rest));
    this.redraw();
  }

  doAdd(event) {
    event.preventDefault();
    const { refused, texts } = added(event.target, this.dialog.texts, this.draft, site());
    if (refused) {
      this.dialog = { ...this.dialog, refused };
      this.draw();
      return;
    }
    this.acting().close();
    const key = this.draft.add(texts);
    this.brought.add(key);
    this.grid.active = { key, name: this.grid.columns[0]?.name ?? columnsOf(this.groups)[0].name };
    this.grid.wantsFocus = true;
    this.redraw();
  }

  /** What waits, what does not, and what an earlier window left behind. */
  keptOf() {
    const { draft, sender } = this;
    const offered = draft.offered();
    const waiting = draft.unsent().filter(({ state }) => state === 'waiting' || state === 'saving').length;
    const stuck = draft.unsent().filter(({ state }) => state === 'refused' || state === 'conflict').length;
    return html`
      ${offered.length === 0 ? nothing : html`<div class="tell caution"><strong>From before.</strong>${offered.length === 1
        ? 'What you typed in one row' : `What you typed in ${offered.length} rows`}
        was not saved when this page was closed: ${offered.map(({ key }) => keyLine(key, site())).join('; ')}. It stands in the table again.
        <button type="button" class="first" @click=${() => draft.takeUp()}>Save it now</button>
        <button type="button" @click=${() => draft.forgetOffered()}>Forget it</button></div>`}
      <p id="saving" role="status" class="tell ${(sender.unreachable || sender.stopped) && waiting ? 'caution' : stuck ? 'blocking'
        : 'good'}">${this.savingWords(waiting, stuck)}
        ${waiting && sender.unreachable ? html`<button type="button" @click=${() => sender.now()}>Try now</button>` : nothing}</p>
      ${draft.keepFails ? html`<p class="tell blocking" role="alert">
        <strong>Not kept.</strong>This browser keeps nothing for this page: do not close it before everything is saved.</p>` : nothing}`;
  }

  savingWords(waiting, stuck) {
    const rows = (count) => (count === 1 ? '1 edit' : `${count} edits`);
    if (this.sender.stopped) return `${rows(waiting)} not yet saved: ${this.sender.stopped}. They are kept in this browser for
      ${this.me.printedName}.`;
    const words = [];
    if (waiting && this.sender.unreachable) {
      words.push(`${rows(waiting)} not yet saved: the service cannot be reached. Kept in this browser, tried again by itself.`);
    } else if (waiting) words.push(`Saving ${rows(waiting)} …`);
    if (stuck) words.push(`${rows(stuck)} not taken: see beside the rows.`);
    return words.join(' ') || 'Everything that is entered is saved.';
  }
}

function byRow(findings) {
  const rows = new Map();
  findings.filter(({ row }) => row).forEach((one) => rows.set(one.row, [...(rows.get(one.row) ?? []), one]));
  return rows;
}
