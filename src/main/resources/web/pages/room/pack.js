// A room's pack: every answer of its chart, worked out by the service beforehand, for the time when the service does not answer.
import { PackAnswers } from '/pages/room/pack-answers.js';

const HOUR_MS = 3_600_000;
const AMBER_MS = 24 * HOUR_MS;
const RED_MS = 7 * 24 * HOUR_MS;
const RENEW_MS = 15 * 60_000;

/**
 * The pack of a room, once there is one: the kept one first, renewed in the background. Rejects where none is kept and none can be
 * had: with the `Problem` of the service, or `Unreachable`.
 */
export async function open(room, token) {
  const pack = new Pack(room, token);
  await pack.renew();
  if (!pack.head) throw pack.trouble;
  setInterval(() => pack.renew(), RENEW_MS);
  window.addEventListener('online', () => pack.renew());
  return pack;
}

class Pack {
  #room;
  #token;
  #answers = null;
  #listeners = [];

  /** All that the pack says beside its answers: `{room, roomName, issuedAt, site, chart, equipment, next, supports, grids, adjustments, cautions, rows}`. */
  head = null;

  /** Why it could not be renewed the last time, an Error with words for people; null where it could. */
  trouble = null;

  constructor(room, token) {
    this.#room = room;
    this.#token = token;
  }

  get rows() {
    return this.head.rows;
  }

  /**
   * The answer to `{bodyPart, projection, patientGroup, support, thicknessCm, adjust, grid, sidCm}`:
   * `{kind: 'technique', technique, answeredCm}`, the technique exactly as the service answers it for the thickness `answeredCm`,
   * the nearest one that is kept in the same band; or `{kind: 'refusal', problem}`.
   */
  find(question) {
    return this.#answers.find(question);
  }

  /** How long ago the service gave it out; negative where this workstation's clock stands before that. */
  ageMs(now = Date.now()) {
    return now - Date.parse(this.head.issuedAt);
  }

  /** 'fresh', 'amber' after a day, 'red' after seven days, and where the clock is wrong. */
  ageState(now = Date.now()) {
    const age = this.ageMs(now);
    if (age < 0 || age >= RED_MS) return 'red';
    return age >= AMBER_MS ? 'amber' : 'fresh';
  }

  /** Called with the pack after each renewal that brought a newer one. */
  whenRenewed(listener) {
    this.#listeners.push(listener);
  }

  /** Asks for a newer one now; resolves to whether one came. */
  async renew() {
    try {
      const answer = await fetch(`/api/v1/rooms/${this.#room}/pack`, {
        headers: { Authorization: `Bearer ${this.#token}` }, credentials: 'omit', cache: 'no-store',
      });
      if (!answer.ok) throw new Error((await answer.json()).detail);
      const { forms, texts, answers, outside, supportRefusals, ...head } = await answer.json();
      this.#answers = new PackAnswers({ ...head, forms, texts, answers, outside, supportRefusals });
      this.head = head;
      this.trouble = null;
      this.#listeners.forEach((listener) => listener(this));
      return true;
    } catch (failed) {
      this.trouble = failed;
      return false;
    }
  }

  /** Renews at once where a live answer names another version or other equipment than this pack. */
  noticed(chart, equipment) {
    if (chart.digest !== this.head.chart.digest || equipment.digest !== this.head.equipment.digest) this.renew();
  }
}
