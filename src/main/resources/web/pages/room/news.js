// Another version, or other equipment, answers than a moment ago: an answer that changes by itself says so and why.
import { html, nothing } from '/pages/lit-html.js';
import { moment } from '/pages/words.js';

/** Whether two of `{chart, equipment}` are not the same. */
export const moved = (before, now) => before.chart.version !== now.chart.version || before.chart.digest !== now.chart.digest
  || before.equipment.digest !== now.equipment.digest;

/** What came into force; said while the room is asked again, and after a refusal. */
export const movedTo = (before, now) => ({
  chart: before.chart.digest === now.chart.digest && before.chart.version === now.chart.version ? null : now.chart,
  before: null,
});

/** The same with what was answered to the same question before; null where nothing moved between two answers. */
export function newsOf(stood, answer) {
  if (!stood || !moved(stood.technique, answer.technique)) return null;
  const same = JSON.stringify(stood.question) === JSON.stringify(answer.question);
  const [before, now] = [stood, answer].map(({ technique: { set } }) => setting(set));
  return { ...movedTo(stood.technique, answer.technique), before: same ? `${before === now ? 'As before:' : 'Before:'} ${before}.` : null };
}

const setting = (set) => (set.aec ? `${set.kV} kV, AEC ${set.aec.chambers.join('+')}, back-up ${set.aec.backupMAs} mAs` : `${set.kV} kV, ${set.mAs} mAs`);

export function newsNote({ news }) {
  if (!news) return nothing;
  return html`<p class="tell caution note"><strong>${news.chart ? `Chart version ${news.chart.version} came into force` : 'The equipment of this room changed'}</strong>
    <span>${news.chart ? `on ${moment(news.chart.inForceFrom)}: ` : ''}asked again. ${news.before ?? ''}</span></p>`;
}
