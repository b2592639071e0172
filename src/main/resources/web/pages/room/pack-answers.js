// Finds answers in a room's pack. Every answer was worked out by the service; here they are only looked up and put together again.

const ADULT = 'adult';
const INSTEAD = 'use the sheet on the wall, or ask again when the service is back';

/** Hundredths of a centimetre, so that thicknesses compare as they are written. */
const hundredths = (cm) => Math.round(Number(cm) * 100);

export class PackAnswers {
  #pack;
  #rows;

  constructor(pack) {
    this.#pack = pack;
    this.#rows = new Map(pack.rows.map((row) => [row.key, row]));
  }

  /** See pack.js. */
  find(question) {
    const asked = { patientGroup: ADULT, ...question, adjust: [question.adjust ?? []].flat() };
    const supports = this.#supports(asked);
    if (supports.length === 0) return notKept(`the chart kept here has no ${asked.bodyPart} ${asked.projection} for ${asked.patientGroup}`);
    const support = asked.support ?? (supports.length === 1 ? supports[0] : null);
    if (!supports.includes(support)) return this.#wrongSupport(asked);
    const row = this.#row(asked, support);
    return row ? this.#inRow(row, asked) : this.#outside(asked, support);
  }

  #examination({ bodyPart, projection, patientGroup }) {
    return `${bodyPart}/${projection}/${patientGroup}`;
  }

  #supports(asked) {
    const start = `${this.#examination(asked)}/`;
    return Object.keys(this.#pack.outside).filter((key) => key.startsWith(start)).map((key) => key.slice(start.length));
  }

  #wrongSupport(asked) {
    const told = this.#pack.supportRefusals[this.#examination(asked)];
    return this.#told(asked.support ? told.other : told.missing, null, { '{support}': asked.support });
  }

  #row(asked, support) {
    const start = `${this.#examination(asked)}/${support}/`;
    const thickness = hundredths(asked.thicknessCm);
    return this.#pack.rows.find(({ key, bandCm: [from, to] }) => key.startsWith(start)
      && hundredths(from) <= thickness && thickness < hundredths(to));
  }

  #outside(asked, support) {
    const thickness = hundredths(asked.thicknessCm);
    const place = this.#pack.outside[`${this.#examination(asked)}/${support}`]
      .find(({ fromCm, toCm }) => hundredths(fromCm) <= thickness && thickness < hundredths(toCm));
    return place
      ? this.#told(place.answer, null, { '{thickness}': `${thickness / 100} cm` })
      : notKept(`${asked.thicknessCm} cm is no thickness that the chart can be asked for`);
  }

  #inRow(row, { thicknessCm, adjust, grid, sidCm }) {
    const otherGrid = grid !== undefined && grid !== null && grid !== row.grid;
    if (sidCm !== undefined && sidCm !== null && hundredths(sidCm) !== hundredths(row.sidCm)) {
      return notKept(`only the SID of the row, ${row.sidCm} cm, is kept here, and on the wall`,
        `set the row's SID, ${row.sidCm} cm, or wait until the service is back; local rules for anything else`);
    }
    if (adjust.length + (otherGrid ? 1 : 0) > 1) {
      return notKept('only one adjustment, or one other grid, is kept here, not both',
        'ask with one of them, or wait until the service is back; local rules for anything else');
    }
    const own = this.#pack.answers[row.key];
    const kept = otherGrid ? own.grids[grid] : adjust.length ? own.adjusted[adjust[0]] : own.plain;
    if (!kept) return notKept(`the chart kept here has no ${otherGrid ? `grid ${grid}` : `adjustment ${adjust[0]}`}`);
    const place = nearest(own.thicknessCm, thicknessCm);
    const at = (one) => this.#told(kept.length === 1 ? kept[0] : kept[one], row, {}, own.thicknessCm[one]);
    return { ...at(place), ...otherSide(own.thicknessCm, place, thicknessCm, at) };
  }

  #told(answer, row, blanks, answeredCm) {
    const filled = this.#filled(answer, blanks);
    if (filled.refusal) return { kind: 'refusal', problem: filled.refusal };
    const { room, chart, equipment } = this.#pack;
    const { asked, exact, set, roundingDeviation, steps, dose, cautions, ...more } = filled.technique;
    const technique = { room, chart, equipment, row, asked, exact, set, roundingDeviation, steps, dose, cautions, ...more };
    return { kind: 'technique', technique: structuredClone(technique), answeredCm };
  }

  /** An answer is the number of its form, then what fills the form's places in order: '#' a number, '$' the number of a text. */
  #filled([form, ...leaves], blanks) {
    let next = 0;
    const fill = (part) => {
      if (part === '#') return leaves[next++];
      if (part === '$') return worded(this.#pack.texts[leaves[next++]], blanks);
      if (Array.isArray(part)) return part.map(fill);
      if (part === null || typeof part !== 'object') return part;
      return Object.fromEntries(Object.entries(part).map(([name, inner]) => [name, fill(inner)]));
    };
    return fill(this.#pack.forms[form]);
  }
}

function worded(text, blanks) {
  return Object.entries(blanks).reduce((words, [blank, what]) => words.replaceAll(blank, () => what), text);
}

/** The place of the nearest of some ascending thicknesses; of two as near, the thinner. */
function nearest(thicknesses, asked) {
  const away = thicknesses.map((one) => Math.abs(hundredths(one) - hundredths(asked)));
  return away.indexOf(Math.min(...away));
}

/** What is kept at the next thickness beyond one in between, if the band has one: `{otherSide: {cm, set}}`, `set` null where that is refused. */
function otherSide(thicknesses, place, asked, at) {
  const beyond = place + Math.sign(hundredths(asked) - hundredths(thicknesses[place]));
  if (beyond === place || !(beyond in thicknesses)) return {};
  return { otherSide: { cm: thicknesses[beyond], set: at(beyond).technique?.set ?? null } };
}

/** What only a service that answers can tell. */
function notKept(why, instead = INSTEAD) {
  return { kind: 'refusal', problem: { title: 'Not kept here', status: null, code: 'not-kept', detail: `${why}: ${instead}` } };
}
