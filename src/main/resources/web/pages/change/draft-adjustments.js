// The named adjustments of a change while its author works on it: all of them are one line, typed and sent together.

export const noAdjustments = () => ({
  key: 'adjustments', op: null, list: null, seen: null, errors: [], why: '', theirs: null, state: 'untouched', due: 0,
});

/** The part of a draft that is about adjustments. */
export class DraftAdjustments {
  /** All named adjustments as the service has them now. */
  serverAdjustments() {
    return this.change.adjustments?.wanted ?? this.baseAdjustments;
  }

  /** All named adjustments as they were typed: kept at once, sent soon; null for those of the base version again. */
  typeAdjustments(list) {
    const line = this.adjustments;
    line.seen ??= JSON.stringify(this.serverAdjustments());
    Object.assign(line, { list, errors: [], theirs: null });
    this.want(line, list === null ? 'undo-adjustments' : 'put-adjustments');
    this.changed();
  }

  /** What stands in a field that is still being typed in: kept, not sent before it is entered. */
  keepAdjustments(list) {
    const line = this.adjustments;
    const { op, list: entered, seen } = line;
    Object.assign(line, { op: 'put-adjustments', list, seen: seen ?? JSON.stringify(this.serverAdjustments()) });
    this.store(line);
    Object.assign(line, { op, list: entered, seen });
  }

  /** The author chose between their adjustments and those that stand there by now. */
  chooseAdjustments(mine) {
    const line = this.adjustments;
    if (!mine) this.settle(line);
    else {
      line.seen = JSON.stringify(this.serverAdjustments());
      line.theirs = null;
      this.want(line, line.op);
    }
    this.changed();
  }
}
