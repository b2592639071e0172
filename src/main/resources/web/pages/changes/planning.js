// Forms that draft a change by the beam model.
export function startPlanning() {}

export const planning = () => '';
