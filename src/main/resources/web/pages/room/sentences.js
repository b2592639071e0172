// Sentences of the service as people at a console read them: names for codes, and the site's unit beside centimetres.
import { inUnit, spoken } from '/pages/words.js';
import { gridName } from './answer.js';

const RULES = {
  'kv-limits': 'kV limits',
  'kv-station': 'kV station',
  'mas-station': 'mAs station',
  'current-and-time': 'mA and time',
};

/** 'kv-limits' -> 'kV limits'. */
export const ruleWords = (rule) => RULES[rule] ?? spoken(rule);

/** What the service says about a question; labels in it that people wrote stay as they are. */
export function sentence(text, state) {
  const { head, unit } = state;
  return aside(head.adjustments.map(({ label }) => label), text, (part) => inUnit(named(part, state), unit));
}

function named(text, { head, chosen, unit }) {
  let words = text;
  if (chosen) {
    const { bodyPart, projection, patientGroup } = chosen;
    words = words.replaceAll(`${bodyPart} ${projection} for ${patientGroup}`,
      `${chosen.words.part} ${chosen.words.projection} for ${chosen.words.group}`);
  }
  for (const { support } of head.supports) words = words.replace(whole(support), () => spoken(support));
  for (const { id } of head.grids) words = words.replace(whole(id, '(grid |instead of )'), (_, before) => before + gridName(id, head.grids, unit));
  return words.replace(/\bgrid none\b/g, 'no grid');
}

/** A code by itself, not as a part of a longer one or of a row's key; codes are slugs. */
const whole = (code, before = '') => new RegExp(`${before || '(?<![\\w/-])'}${code}(?![\\w/-])`, 'g');

/** `change` of all that is none of those texts. */
function aside(texts, text, change) {
  const first = texts.filter((each) => text.includes(each)).sort((a, b) => b.length - a.length)[0];
  return first === undefined ? change(text) : text.split(first).map((part) => aside(texts, part, change)).join(first);
}
