// A room's pack: every answer of its chart, worked out and signed by the service beforehand, for the time when the service does not
// answer. No rule of technique stands here: answers are looked up.
import * as api from '/pages/api.js';
import { PackAnswers } from '/pages/room/pack-answers.js';
import { opened, PackRefused } from '/pages/room/pack-seal.js';
import * as kept from '/pages/room/pack-keep.js';
import { moment } from '/pages/words.js';

const MINUTE_MS = 60_000;
const DAY_MS = 24 * 60 * MINUTE_MS;
const AMBER_MS = DAY_MS;
const RED_MS = 7 * DAY_MS;
const RENEW_MS = 15 * MINUTE_MS;
const TRY_AGAIN_MS = MINUTE_MS / 2;
const PATIENCE_MS = 2 * MINUTE_MS;

/** Clocks of a hospital differ by seconds; a pack seems no younger than new because of that. */
const CLOCKS_DIFFER_MS = MINUTE_MS;

/**
 * The pack of a room, once there is one: the kept one first, and then renewed in the background; else what the service gives out.
 * Rejects where none is kept and none can be had, with `Problem`, `Unreachable` or `PackRefused`. Without a token the session counts.
 */
export async function open(room, token) {
  const pack = new Pack(room, token);
  await pack.begin();
  return pack;
}

/** Forgets what is kept of a room, also the key: for whoever gives the room's token once more. */
export const forget = (room) => kept.forget(room);

class Pack {
  #room;
  #token;
  #key = null;
  #highest = 0;
  #answers = null;
  #trouble = null;
  #away = false;
  #renewing = null;
  #timer = null;
  #renewed = () => {};
  #troubled = () => {};

  /**
   * All that the pack says beside its answers: `{room, roomName, issuedAt, stepCm, site, chart, equipment, next, supports, grids,
   * adjustments, cautions, rows}`; `next` is the version that comes into force after this one, or null.
   */
  head = null;

  constructor(room, token) {
    this.#room = room;
    this.#token = token;
  }

  async begin() {
    await this.#takeKept();
    const renewal = this.renew();
    if (!this.head) await renewal;
    if (!this.head) {
      clearTimeout(this.#timer);
      throw this.#trouble.code === 'token-refused' || this.#trouble.code === 'unreachable' ? this.#trouble.cause : this.#trouble;
    }
    window.addEventListener('online', () => this.renew());
  }

  get rows() {
    return this.head.rows;
  }

  /**
   * Why it could not be renewed the last time, null where it could: an Error with words for people, `code` one of `token-refused`,
   * `unreachable`, `other-key`, `other-room`, `older`, `lower-version`, `damaged`, `no-crypto`, `not-kept-here`, or of a `Problem`. The pack goes on answering.
   */
  get trouble() {
    return this.#trouble;
  }

  /**
   * The answer to `{bodyPart, projection, patientGroup, support, thicknessCm, adjust, grid, sidCm}`; `adjust` is a name or a list of
   * them. `{kind: 'technique', technique, answeredCm}`: exactly as the service answers for the thickness `answeredCm`, which is the
   * nearest one kept in the same band (of two as near, the thinner). Or `{kind: 'refusal', problem}`: what the service would say, or
   * with the code `not-kept` why only the service can tell.
   */
  find(question, now = Date.now()) {
    const found = this.#answers.find(question);
    if (found.kind === 'technique' && this.isSuperseded(now)) found.technique.cautions.unshift(this.#supersededCaution());
    return found;
  }

  /** Whether a version that was signed when the pack was given out has come into force since. */
  isSuperseded(now = Date.now()) {
    return this.head.next !== null && now >= Date.parse(this.head.next.inForceFrom);
  }

  #supersededCaution() {
    const { chart, next } = this.head;
    return `this is version ${chart.version}, kept here; version ${next.version} is in force since ${moment(next.inForceFrom)}: use its sheet on the `
      + 'wall, or ask again when the service is back';
  }

  /** How long ago the service gave it out; negative where this workstation's clock is wrong, as it stands well before that. */
  ageMs(now = Date.now()) {
    const age = now - Date.parse(this.head.issuedAt);
    return age < 0 && age > -CLOCKS_DIFFER_MS ? 0 : age;
  }

  /** Whether this workstation's clock cannot be right: it stands before the pack was given out. */
  clockIsWrong(now = Date.now()) {
    return this.ageMs(now) < 0;
  }

  /** 'fresh', 'amber' from a day on, 'red' from seven days on, and red where the clock is wrong, since nobody knows the age then. */
  ageState(now = Date.now()) {
    const age = this.ageMs(now);
    if (this.clockIsWrong(now) || age >= RED_MS) return 'red';
    return age >= AMBER_MS ? 'amber' : 'fresh';
  }

  /** The age in words: 'given out 3 hours ago', or that the clock is wrong. */
  ageWords(now = Date.now()) {
    if (this.clockIsWrong(now)) return "this workstation's clock is wrong: it stands before this pack was given out, so its age is not known";
    const minutes = Math.floor(this.ageMs(now) / MINUTE_MS);
    if (minutes < 1) return 'given out just now';
    const [count, unit] = minutes < 120 ? [minutes, 'minute'] : minutes < 2880 ? [Math.floor(minutes / 60), 'hour'] : [Math.floor(minutes / 1440), 'day'];
    return `given out ${count} ${unit}${count === 1 ? '' : 's'} ago`;
  }

  /** Called with the pack after each renewal that brought a newer one; the listener handed in last counts. */
  whenRenewed(listener) {
    this.#renewed = listener;
  }

  /** Called with the pack when `trouble` comes, changes or goes; the listener handed in last counts. */
  whenTroubled(listener) {
    this.#troubled = listener;
  }

  /** Asks for a newer one now; resolves to whether one came. Several callers share one attempt. */
  renew() {
    this.#renewing ??= this.#attempt().finally(() => {
      this.#renewing = null;
    });
    return this.#renewing;
  }

  /** Renews at once where a live answer names another version, or other equipment, than this pack; else where renewing had failed. */
  noticed(chart, equipment) {
    const other = chart.digest !== this.head.chart.digest || chart.version !== this.head.chart.version
      || equipment.digest !== this.head.equipment.digest;
    if (other || this.#away) this.renew();
  }

  async #attempt() {
    clearTimeout(this.#timer);
    let trouble = null;
    let newer = false;
    try {
      const sealed = (await api.get(`/rooms/${encodeURIComponent(this.#room)}/pack`, { token: this.#token, timeoutMs: PATIENCE_MS })).data;
      ({ newer, trouble } = await this.#take(sealed));
    } catch (failed) {
      trouble = spoken(failed);
    }
    this.#away = trouble?.code === 'unreachable' || trouble?.status >= 500;
    this.#timer = setTimeout(() => this.renew(), this.#away ? TRY_AGAIN_MS : RENEW_MS);
    this.#tell((this.#away && this.head && this.#fallen()) || trouble, newer);
    return newer;
  }

  #tell(trouble, newer) {
    const changed = trouble?.code !== this.#trouble?.code;
    this.#trouble = trouble;
    if (newer) this.#renewed(this);
    if (changed) this.#troubled(this);
  }

  async #takeKept() {
    let record;
    try {
      record = await kept.read(this.#room);
      if (!record) return;
      this.#key = record.key;
      this.#highest = record.highest ?? 0;
      this.#use(await this.#checked(record.sealed));
    } catch (failed) {
      this.#trouble = spoken(failed); // the service may give out another one
    }
  }

  /** Takes what came from the service, if it is to be believed and newer; nothing of the kept one is lost otherwise. */
  async #take(sealed) {
    const pack = await this.#checked(sealed);
    const before = this.head ? Date.parse(this.head.issuedAt) : -Infinity;
    const ahead = this.head !== null && this.#isAhead(pack);
    if (Date.parse(pack.issuedAt) < before && !ahead) {
      throw new PackRefused('older', 'what came is older than the pack kept here, which stays: tell the administrator if this goes on, the '
        + "service's clock may have been set back");
    }
    if (Date.parse(pack.issuedAt) === before) return { newer: false, trouble: this.#fallen() };
    const highest = Math.max(this.#highest, this.head?.chart.version ?? 0, pack.content.chart.version);
    const trouble = await this.#keep({ room: this.#room, key: pack.key, issuedAt: pack.issuedAt, sealed, highest }, ahead ? this.head.issuedAt : null);
    this.#key = pack.key;
    this.#highest = highest;
    this.#use(pack);
    return { newer: true, trouble: trouble ?? this.#fallen() };
  }

  /**
   * Whether the kept pack was given out by a clock that ran ahead: it stands in the future of this workstation, what came does not, and
   * what came is no earlier a version. Then it may replace the kept one, which would refuse all right ones until its instant; a clock
   * here that runs behind lets no earlier version in.
   */
  #isAhead({ issuedAt, content }) {
    const now = Date.now();
    return this.clockIsWrong(now) && now - Date.parse(issuedAt) > -CLOCKS_DIFFER_MS
      && content.chart.version >= this.head.chart.version && content.equipment.revision >= this.head.equipment.revision;
  }

  /** Numbers of versions only rise: a lower one given out later comes of a backup that was restored. */
  #fallen() {
    const { version } = this.head.chart;
    return version >= this.#highest ? null : new PackRefused('lower-version', `the service now gives out version ${version}, and this `
      + `workstation has had version ${this.#highest} from it: ask the lead radiographer which holds, a backup may have been restored`);
  }

  async #keep(record, replaces) {
    try {
      await kept.keep(record, replaces);
      return null;
    } catch (failed) {
      return new PackRefused('not-kept-here', 'this browser keeps nothing at this workstation, so after a reload the page needs the service: '
        + 'ask the administrator', failed);
    }
  }

  async #checked(sealed) {
    const pack = await opened(sealed, this.#key);
    if (pack.content.room !== this.#room) {
      throw new PackRefused('other-room', `what came is the pack of room ${pack.content.room}, not of ${this.#room}: it is not used`);
    }
    return pack;
  }

  #use({ issuedAt, content }) {
    const { forms, texts, answers, outside, supportRefusals, ...head } = content;
    this.#answers = new PackAnswers(content);
    this.head = { ...head, issuedAt };
  }
}

/** What went wrong as an Error with code and words for people. */
function spoken(failed) {
  if (failed instanceof api.Unreachable) return new PackRefused('unreachable', failed.message, failed);
  if (failed instanceof api.Problem && (failed.status === 401 || failed.status === 403)) {
    return new PackRefused('token-refused', "the service no longer accepts this room's token: ask the administrator for another; what is "
      + 'kept here goes on answering', failed);
  }
  return failed;
}
