// Blocks of cells as spreadsheets hand them over: tab-separated lines, texts with breaks or quotes in quotes.
import { columnOf, shown, spokenBack } from '/pages/change/fields.js';
import { Draft } from '/pages/change/draft.js';

/** Tab-separated text -> rows of cells; the empty line that spreadsheets put last is none. */
export function cellsOf(text) {
  const rows = [[]];
  const pattern = /("(?:[^"]|"")*"|[^\t\r\n]*)(\t|\r\n|\n|\r|$)/g;
  let match;
  while ((match = pattern.exec(text)) !== null) {
    const [whole, cell, end] = match;
    if (whole === '' && pattern.lastIndex >= text.length && rows.at(-1).length === 0) break;
    rows.at(-1).push(/^".*"$/s.test(cell) ? cell.slice(1, -1).replaceAll('""', '"') : cell);
    if (end === '') break;
    if (end !== '\t') rows.push([]);
  }
  if (rows.at(-1).length === 0) rows.pop();
  return rows;
}

/** Cells -> tab-separated text that spreadsheets take. */
export const textOf = (rows) => rows.map((cells) => cells.map(quoted).join('\t')).join('\n');

const quoted = (cell) => (/["\t\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);

/**
 * What a block would write from a cell on: `{edits: [[key, fields], …]}`, or `{refused}` in words; then nothing is written at all.
 * `lines` and `columns` are those on the screen, in their order, `sizes` the fields that the room's receptors have.
 */
export function block(cells, lines, columns, active, unit, sizes) {
  const row = lines.findIndex((line) => line.key === active.key);
  const column = columns.findIndex(({ name }) => name === active.name);
  const width = Math.max(...cells.map((one) => one.length));
  const room = { rows: lines.length - row, columns: columns.length - column };
  if (cells.length > room.rows || width > room.columns) {
    return { refused: `The block has ${cells.length} rows and ${width} columns; from this cell on there are ${room.rows} rows and `
      + `${room.columns} columns. Nothing was pasted: start further up or left, bring further rows in, or show more columns.` };
  }
  const wrong = [];
  const edits = cells.map((texts, down) => {
    const line = lines[row + down];
    if (line.withdrawn || line.op === 'withdraw') wrong.push(`${line.key} is withdrawn by this change: take that back first.`);
    return [line.key, Object.fromEntries(texts.map((text, right) => {
      const { name, label, number } = columns[column + right];
      if (number && /^\s*-?\d+,\d+\s*$/.test(text)) wrong.push(`${label} "${text.trim()}" has a decimal comma: write a decimal point.`);
      return [name, spokenBack(name, text.replace(/[\r\n]+/g, ' '), Draft.value(line, name), unit, sizes)];
    }))];
  });
  return wrong.length > 0 ? { refused: `Nothing was pasted. ${wrong.slice(0, 5).join(' ')}` } : { edits };
}

/** The cells of a rectangle as they are shown. */
export const copied = (lines, columns, unit) =>
  textOf(lines.map((line) => columns.map(({ name }) => shown(columnOf(name).name, Draft.value(line, name), unit))));
