// How a sheet stands, as both pages about sheets say it: a word, and the class that goes with it.

const STATES = {
  current: ['current', 'good'],
  superseded: ['superseded', 'blocking'],
  'equipment-moved': ['equipment moved', 'caution'],
};

/** 'superseded' -> 'superseded', 'equipment-moved' -> 'equipment moved'. */
export const stateWord = (state) => STATES[state]?.[0] ?? state;

/** The class of base.css that goes with a state. */
export const stateClass = (state) => STATES[state]?.[1] ?? 'caution';
