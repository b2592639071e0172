// What was entered into cells, to be taken back and entered again (Ctrl+Z, Ctrl+Y), edit by edit. Kept while the page is open.
import { Draft } from '/pages/change/draft.js';

const MOST = 100;

export class Undo {
  constructor(draft) {
    Object.assign(this, { draft, done: [], undone: [] });
  }

  /** Enters edits, `[[key, {name: text}], …]`, so that they can be taken back as one. */
  enter(edits) {
    const step = edits.flatMap(([key, fields]) => Object.entries(fields).map(([name, after]) =>
      ({ key, name, before: Draft.value(this.draft.line(key), name), after }))).filter(({ before, after }) => before !== after);
    this.draft.typeAll(edits);
    if (step.length === 0) return;
    this.done = [...this.done.slice(1 - MOST), step];
    this.undone = [];
  }

  /** A row has another key by now. */
  moved(from, to) {
    [...this.done, ...this.undone].flat().filter(({ key }) => key === from).forEach((cell) => { cell.key = to; });
  }

  /** Takes the last edit back; says where it was, null where there is none or something else stands there by now. */
  back() {
    return this.step(this.done, this.undone, 'after', 'before');
  }

  again() {
    return this.step(this.undone, this.done, 'before', 'after');
  }

  /** Only what still stands as that edit left it is moved: what came between is not overwritten unseen. */
  step(from, to, is, wanted) {
    const step = from.pop();
    const cells = (step ?? []).filter((cell) => {
      const line = this.draft.rows.get(cell.key);
      return line && !line.withdrawn && line.op !== 'withdraw' && Draft.value(line, cell.name) === cell[is];
    });
    if (cells.length === 0) return null;
    to.push(cells);
    const rows = {};
    cells.forEach((cell) => { (rows[cell.key] ??= {})[cell.name] = cell[wanted]; });
    this.draft.typeAll(Object.entries(rows));
    return cells[0];
  }
}
