// What always stands on the page: the room, and below, which chart this is, who answers for it and how old what is shown may be.
import { html, nothing } from '/pages/lit-html.js';
import { day, INVENTED, moment } from '/pages/words.js';

export const head = (state, act) => html`
  <div class="name"><h1>${state.head?.roomName ?? `Room ${state.room}`}</h1><span class="site">${state.head?.site.name ?? ''}</span></div>
  ${state.head?.site.invented ? html`<strong class="mark invented">${INVENTED}</strong>` : nothing}
  <div class="buttons">
    <button type="button" @click=${act.openWorkstation}>Workstation</button>
    <button type="button" aria-pressed=${document.documentElement.dataset.theme === 'dim'} @click=${act.changeTheme}>Dim</button>
    <button type="button" class="first" id="new" @click=${act.clear}>New patient <kbd>Esc</kbd></button>
  </div>`;

export function foot(state, now) {
  const chart = state.answer?.technique?.chart ?? state.live?.chart ?? state.head?.chart;
  const standingCaution = (state.head?.cautions ?? []).at(-1);
  return html`
    ${standingCaution ? html`<p class="standing">${standingCaution}</p>` : nothing}
    ${chart ? html`
      <p class="chart">
        <b>Chart version ${chart.version}</b> <b>holds for this room only</b>
        ${link(state, now)}
        <span>signed by ${chart.signedBy}</span>
        <span>in force since ${day(chart.inForceFrom)}</span>
        ${review(chart, now)}
        <span><code title="digest of the version">${digest(chart.digest)}</code></span>
        ${state.head?.next ? html`<b>version ${state.head.next.version} from ${moment(state.head.next.inForceFrom)}</b>` : nothing}
      </p>` : nothing}`;
}

const digest = (written) => written.replace('sha256:', '').slice(0, 8);

function review({ reviewDue }, now) {
  if (!reviewDue) return html`<span>no review date</span>`;
  const over = reviewDue < new Date(now).toISOString().slice(0, 10);
  return over
    ? html`<strong class="mark caution">review OVERDUE since ${day(reviewDue)}</strong>`
    : html`<span>review due ${day(reviewDue)}</span>`;
}

const WITHOUT_SERVICE = {
  lost: 'offline, chart ', 'unknown-token': 'token not accepted: kept chart, ', 'other-room': 'token of another room: kept chart, ',
};

/** Live, or how old the kept chart is: over a day is said in amber, over a week in red with what to do. */
export function link(state, now) {
  const { pack } = state;
  if (state.link === 'live') return html`<span class="mark good">live</span>`;
  if (state.link === 'unknown') return html`<span class="mark">connecting</span>`;
  if (!pack) return html`<strong class="mark blocking">offline, nothing kept</strong>`;
  const why = WITHOUT_SERVICE[state.link];
  const words = `${why}${pack.ageWords(now)}`;
  switch (pack.ageState(now)) {
    case 'red':
      return html`<strong class="mark blocking">${words}: not to be relied on, use the sheet on the wall</strong>`;
    case 'amber':
      return html`<strong class="mark caution">${words}: a newer version may be in force</strong>`;
    default:
      return html`<span class="mark">${words}</span>`;
  }
}

/** What is wrong with the chart kept here beyond being offline, which is said anyway. */
export function keptTrouble({ pack }) {
  const trouble = pack?.trouble;
  if (!trouble || ['unreachable', 'token-refused'].includes(trouble.code)) return nothing;
  return html`<p class="tell caution"><strong>Kept chart.</strong> ${trouble.message}</p>`;
}
