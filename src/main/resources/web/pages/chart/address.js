// Where somebody is within the page, in the fragment of the address, so that links can be sent and Back works:
// #version=3, #version=3&part=findings, #version=3&row=KEY, #version=3&examination=KNEE/ap/adult/table-bucky, #from=1&to=2.

import { roomIn } from '/pages/address.js';

const PARTS = ['rows', 'adjustments', 'findings'];

const number = (text) => (/^[1-9][0-9]{0,8}$/.test(text ?? '') ? Number(text) : null);

/** `{view: 'version' | 'compare', version, part, row, examination, from, to}`; what is not said, or is no number, is null. */
export function readAddress(hash = location.hash) {
  const said = new URLSearchParams(hash.replace(/^#/, ''));
  const compare = said.has('from') || said.has('to');
  return {
    view: compare ? 'compare' : 'version',
    version: number(said.get('version')),
    unreadable: said.has('version') && number(said.get('version')) === null ? said.get('version') : null,
    part: PARTS.includes(said.get('part')) ? said.get('part') : 'rows',
    row: said.get('row'),
    examination: said.get('examination'),
    from: number(said.get('from')),
    to: number(said.get('to')),
  };
}

const fragment = (members) => '#' + Object.entries(members)
  .filter(([, value]) => value !== null && value !== undefined)
  .map(([name, value]) => `${name}=${encodeURIComponent(value).replaceAll('%2F', '/')}`)
  .join('&');

export const toVersion = (version, part) => fragment({ version, part: part === 'rows' ? null : part });
export const toRow = (version, row) => fragment({ version, row });
export const toExamination = (version, examination) => fragment({ version, examination });
export const toComparison = (from, to) => fragment({ from, to });

/** The room that the page is about. */
export const room = () => roomIn();

/** A key without its band: 'KNEE/ap/adult/table-bucky/10-13' -> 'KNEE/ap/adult/table-bucky'. */
export const examinationOf = (key) => key.split('/').slice(0, 4).join('/');
