// Factors and focal range of one grid.
import { html, nothing } from '/pages/lit-html.js';
import { site, trouble } from '/pages/shell.js';
import { centimetres, lengthNumber } from '/pages/words.js';
import { fragment } from '/pages/address.js';
import { entryOf, keep, outcome, putInForce, reasonAndEnter, tryOut } from '/pages/equipment/entry.js';
import { effectsPanel } from '/pages/equipment/history.js';
import { number, pairsEditor } from '/pages/equipment/pairs.js';

const entry = (room, grid) => entryOf(`${room}.grid.${grid.id}`, () => asInForce(grid));

function asInForce(grid) {
  const cm = (one) => (one === undefined ? '' : lengthNumber(one, site().lengthUnit));
  return {
    factors: grid.factors.map((one) => [String(one.kV), String(one.factor)]), from: cm(grid.focalRangeCm?.from),
      to: cm(grid.focalRangeCm?.to), reason: '',
  };
}

/** Factors and range as the interface takes them; a range that nobody touched goes back as it came. */
function body(draft, grid) {
  const told = (text) => number(text) ?? text;
  const untouched = asInForce(grid);
  const cm = (text) => (number(text) === null ? text : centimetres(number(text), site().lengthUnit));
  const sent = { factors: draft.factors.map(([kV, factor]) => ({ kV: told(kV), factor: told(factor) })) };
  if (draft.from === untouched.from && draft.to === untouched.to) {
    if (grid.focalRangeCm) sent.focalRangeCm = grid.focalRangeCm;
  } else if (draft.from || draft.to) sent.focalRangeCm = { from: cm(draft.from), to: cm(draft.to) };
  return sent;
}

/** The whole equipment with this grid as it is typed, to be tried out. */
function whole(document, grid, changed) {
  const other = { ...grid, ...changed };
  if (!changed.focalRangeCm) delete other.focalRangeCm;
  return { document: { ...document, grids: document.grids.map((one) => (one.id === grid.id ? other : one)) } };
}

const gridOf = (all, id) => all.equipment.document.grids.find((one) => one.id === id);

/** `all` is what the page knows of the room; it is read anew before anything is tried, because all of the equipment is sent. */
export function gridPanel(all, id, draw) {
  const { room, mayEnter, reload } = all;
  const grid = gridOf(all, id);
  if (!grid) return html`<p class="tell caution"><strong>No such grid.</strong>The room has no grid ${id}.</p>`;
  const now = entry(room.room, grid);
  now.empty = () => asInForce(grid);
  const trying = async (event) => {
    event.preventDefault();
    const changes = body(now.draft, grid);
    try {
      await reload();
    } catch (failed) {
      now.failed = failed;
      draw();
      return;
    }
    tryOut(now, `/rooms/${room.room}/equipment/effects`, whole(all.equipment.document, gridOf(all, id), changes), draw);
  };
  const enter = (event) => {
    event.preventDefault();
    putInForce(now, room.room, `/rooms/${room.room}/equipment/grids/${encodeURIComponent(id)}`, { ...body(now.draft, grid),
      reason: now.draft.reason }, draw, reload);
  };
  const put = (name, event) => {
    now.draft[name] = event.target.value;
    keep(now, draw);
  };
  return html`
    <section aria-labelledby="grid-heading">
      <h2 id="grid-heading">Grid ${id}, ${grid.ratio}:1</h2>
      <p>mAs with the grid over mAs without, at equal receptor exposure;
        between these tube voltages it is read off a straight line. <a href=${fragment({ view: 'room' }, {})}>Back to the grids</a></p>
      <form class="panel" @submit=${trying}>
        ${pairsEditor({
          caption: `Factors of ${id}`, heads: ['kV', 'mAs with over without'], pairs: now.draft.factors, said: now.said,
            changed: () => keep(now, draw),
          wrong: (i) => wrongAt(now, i),
        })}
        <div class="row">
          <label class="field">Used from, ${site().lengthUnit}<input inputmode="decimal" size="8" .value=${now.draft.from}
            @input=${(event) => put('from', event)}></label>
          <label class="field">up to, ${site().lengthUnit}<input inputmode="decimal" size="8" .value=${now.draft.to}
            @input=${(event) => put('to', event)}></label>
          <button class="first" ?disabled=${now.busy !== ''}>Try it</button>
          <button type="button" @click=${() => { now.draft = asInForce(grid); keep(now, draw); }}>As in force</button>
        </div>
      </form>
      ${differs(now.draft, grid) ? html`<p class="small">What stands in these fields is not in force: it was typed at this screen.</p>`
        : nothing}
      ${outcome(now, (failed) => trouble(failed))}
      ${now.tried ? html`<section class="panel" aria-labelledby="tried-heading">
        <h3 id="tried-heading">What it would do (compared with revision ${now.tried.comparedWith})</h3>
        ${effectsPanel(now.tried, 100)}</section>` : nothing}
      ${reasonAndEnter(now, mayEnter, enter, draw)}
    </section>`;
}

const differs = (draft, grid) => JSON.stringify({ ...draft, reason: '' }) !== JSON.stringify(asInForce(grid));

function wrongAt(now, i) {
  const found = now.failed?.errors?.find((error) => new RegExp(`/factors/${i}(/|$)`).test(error.pointer ?? ''));
  return found?.detail ?? null;
}
