// Finding an examination by a few letters: beginnings of words in any order, or beginnings run together ("ka", "lsl").
// Only what the chart has is ever listed, and every line names its patient group.
import { spoken } from '/pages/words.js';

const FOREIGN = 100; // an index beyond every list of the site

/** The examinations of the rows, adults first: `{id, bodyPart, projection, patientGroup, support, words…, rows}`, rows by thickness. */
export function examinations(rows, site) {
  const found = new Map();
  for (const row of rows) {
    const id = [row.bodyPart, row.projection, row.patientGroup, row.support].join('/');
    if (!found.has(id)) found.set(id, examination(id, row, site));
    found.get(id).rows.push(row);
  }
  const list = [...found.values()];
  for (const each of list) each.rows.sort((a, b) => a.bandCm[0] - b.bandCm[0]);
  return list.sort(inOrder);
}

function examination(id, { bodyPart, projection, patientGroup, support }, site) {
  const part = indexed(site.bodyParts, (each) => each.bodyPart === bodyPart);
  const direction = indexed(site.projections, (each) => each.projection === projection);
  const group = indexed(site.patientGroups, (each) => each.id === patientGroup);
  const words = {
    part: part.value?.label ?? bodyPart,
    projection: direction.value?.label ?? spoken(projection),
    group: group.value?.label ?? patientGroup,
    support: spoken(support),
  };
  return {
    id, bodyPart, projection, patientGroup, support, words,
    adult: patientGroup === 'adult',
    region: part.value?.region ?? 'other',
    order: [group.index, part.index, direction.index, support],
    spelled: [words.part, words.projection, words.support, words.group].flatMap(wordsOf),
    partWords: wordsOf(words.part).length,
    terms: [bodyPart.toLowerCase(), ...wordsOf(projection)],
    rows: [],
  };
}

function indexed(list, test) {
  const index = (list ?? []).findIndex(test);
  return { index: index < 0 ? FOREIGN : index, value: list?.[index] };
}

const wordsOf = (text) => text.toLowerCase().split(/[^\p{L}\d]+/u).filter(Boolean);

function inOrder(a, b) {
  for (let i = 0; i < a.order.length; i++) {
    if (a.order[i] !== b.order[i]) return a.order[i] < b.order[i] ? -1 : 1;
  }
  return 0;
}

/** Those that the letters fit, the best first; of equal ones adults come first. All of them where nothing was typed. */
export function search(list, typed) {
  const asked = wordsOf(typed);
  if (asked.length === 0) return typed.trim() === '' ? list : [];
  return list
    .map((each) => ({ each, distance: distance(each, asked) }))
    .filter(({ distance: far }) => far !== null)
    .sort((a, b) => a.distance - b.distance || inOrder(a.each, b.each))
    .map(({ each }) => each);
}

/** 0 is every word in full; null is no match. What names no body part is far, and so is what is no adult's. */
function distance(each, asked) {
  let far = each.adult ? 0 : 0.5;
  let part = false;
  for (const word of asked) {
    const fit = wordFit(each, word) ?? initialsFit(each, word);
    if (!fit) return null;
    far += fit.far;
    part ||= fit.part;
  }
  return part ? far : far + 10;
}

function wordFit(each, word) {
  const fits = each.spelled
    .map((own, index) => ({ own, index }))
    .filter(({ own }) => own.startsWith(word))
    .map(({ own, index }) => ({ far: (own === word ? 0 : 1) + (index === 0 ? 0 : 0.25), part: index < each.partWords }));
  if (each.terms.some((term) => term.startsWith(word))) fits.push({ far: 1.5, part: each.terms[0].startsWith(word) });
  return fits.length === 0 ? null : fits.reduce((best, fit) => (cost(fit) < cost(best) ? fit : best));
}

const cost = (fit) => fit.far + (fit.part ? 0 : 10);

/** Beginnings of words run together in their order, words left out cost more: "ka" is knee ap. */
function initialsFit(each, letters) {
  const words = each.spelled;
  let best = null;
  const walk = (at, rest, far) => {
    if (rest === '') {
      if (best === null || far < best) best = far;
      return;
    }
    for (let next = at; next < words.length; next++) {
      const skipped = far + (next - at) * 2;
      for (let taken = common(words[next], rest); taken > 0; taken--) {
        walk(next + 1, rest.slice(taken), skipped + (taken === words[next].length ? 0 : 0.5));
      }
      if (at === 0 && next + 1 >= each.partWords) break; // letters run together begin with the body part
    }
  };
  walk(0, letters, 2);
  return best === null ? null : { far: best, part: true };
}

function common(word, letters) {
  let length = 0;
  while (length < word.length && length < letters.length && word[length] === letters[length]) length++;
  return length;
}
