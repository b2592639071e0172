// What stands on the page at this moment, and nothing of any patient but a thickness.

export const EMPTY = {
  group: null, // patient group that the lists are held to
  query: '', // letters typed
  marked: 0, // of the list of matches
  part: null, // body part opened by touch
  chosen: null, // examination
  typed: '', // thickness in the site's unit, as typed
  measured: null, // thickness that the chart does not hold, while a neighbouring band is looked at
  sidCm: null, // what differs from the row
  sidTyped: null,
  sidWrong: false,
  grid: null,
  adjust: [],
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
