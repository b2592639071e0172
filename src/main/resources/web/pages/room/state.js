// What stands on the page at this moment, and nothing of any patient but a thickness.

/** Nothing differs from the row. */
export const AS_CHARTED = { sidCm: null, sidTyped: null, sidWrong: false, grid: null, adjust: [] };

export const EMPTY = {
  group: null, // patient group that the lists are held to
  query: '', // letters typed
  marked: 0, // of the list of matches
  part: null, // body part opened by touch
  chosen: null, // examination
  typed: '', // thickness in the site's unit, as typed
  measured: null, // thickness that the chart does not hold, while a neighbouring band is looked at
  ...AS_CHARTED, // what differs from the row
  dropped: null, // what differed at the measurement before: said, and put back by a touch
  news: null, // that another version or other equipment answers than a moment ago
  stood: null, // the last live technique, to hold the next against
  answer: null, // {kind: 'waiting' | 'technique' | 'refusal', question, source, …}
};

/** The same body part, projection and group: only then a thickness that was measured still holds. */
export const sameMeasurement = (a, b) => Boolean(a && b)
  && a.bodyPart === b.bodyPart && a.projection === b.projection && a.patientGroup === b.patientGroup;

/** What to ask for the state, or null where no thickness was entered. */
export function question({ chosen, sidCm, grid, adjust }, thicknessCm) {
  if (!chosen || thicknessCm === null) return null;
  const { bodyPart, projection, patientGroup, support } = chosen;
  return { bodyPart, projection, patientGroup, support, thicknessCm, sidCm, grid, adjust };
}
