// The only place that appends: new facts get their envelope, are stored durably, and only then change the state.
import { SHAPES, type Stored } from "#events/envelope.ts";
import type { LogPort, LogRow } from "#events/log-port.ts";
import type { Stamp } from "#events/stamp.ts";
import { sealRow } from "#log/chain.ts";
import type { NewFact } from "#walk/decide.ts";
import { type Fact, fold } from "#walk/fold.ts";
import { emptyHouse, FOLD_VERSION, type HouseState } from "#walk/state.ts";

export interface RecorderSettings {
  log: LogPort;
  newId(): string;
  appVersion: string;
  wordsVersion: string;
}

/** How many rows are read at once at start; the whole log is never loaded. */
const PAGE = 500;
/** A checkpoint is saved after so many new rows, so that a start reads little. */
const CHECKPOINT_EVERY = 50;

export const factOf = (row: LogRow): Fact =>
  row.readable
    ? { readable: true, seq: row.seq, at: row.at, person: row.person, walk: row.walk, event: row.event }
    : { readable: false, seq: row.seq, wall: row.wall };

export type Recorded = { ok: true } | { ok: false; why: "another writer" } | { ok: false; why: "not stored"; detail: string };

export interface DatedFact extends NewFact {
  id: string;
  at: Stamp;
}

export class Recorder {
  state: HouseState = emptyHouse;
  private hash = "";
  private tablet: string;
  private sinceCheckpoint = 0;

  private constructor(private readonly settings: RecorderSettings) {
    this.tablet = settings.newId();
  }

  /** Folds the newest checkpoint of this fold version and the rows after it. */
  static async open(settings: RecorderSettings): Promise<Recorder> {
    const recorder = new Recorder(settings);
    const checkpoint = await settings.log.loadCheckpoint();
    const last = await settings.log.last();
    // A checkpoint beyond the log's end belongs to another log.
    if (checkpoint && checkpoint.foldVersion === FOLD_VERSION && checkpoint.seq <= last.seq)
      recorder.state = checkpoint.state as HouseState;
    await recorder.readOn();
    return recorder;
  }

  /** Folds rows that somebody else, or an earlier start, has written. */
  async readOn(): Promise<void> {
    for (;;) {
      const rows = await this.settings.log.readAfter(this.state.lastSeq, PAGE);
      for (const row of rows) {
        this.state = fold(this.state, factOf(row));
        if (row.readable) this.tablet = row.tablet;
      }
      this.sinceCheckpoint += rows.length;
      if (rows.length < PAGE) break;
    }
    const last = await this.settings.log.last();
    this.hash = last.hash;
    await this.checkpoint();
  }

  /** Stores all of them or none. The state changes only after they are durable. */
  record(facts: readonly NewFact[], now: Stamp): Promise<Recorded> {
    return this.recordMany(facts.map((fact) => ({ ...fact, id: this.settings.newId(), at: now })));
  }

  /** Same for facts that bring their own ids and moments, in order: the demo's ninety days. */
  async recordMany(facts: readonly DatedFact[]): Promise<Recorded> {
    if (facts.length === 0) return { ok: true };
    const { rows, state } = this.envelop(facts);
    const result = await this.settings.log.append(rows);
    if (!result.ok) return result.why === "another writer" ? { ok: false, why: "another writer" } : result;
    this.state = state;
    this.hash = rows.at(-1)?.hash ?? this.hash;
    this.sinceCheckpoint += rows.length;
    if (this.sinceCheckpoint >= CHECKPOINT_EVERY) await this.checkpoint();
    return { ok: true };
  }

  /** The rows, each with the card that was in force before it, and the state after them. */
  private envelop(facts: readonly DatedFact[]): { rows: Stored[]; state: HouseState } {
    let { hash, state } = this;
    const rows = facts.map(({ id, at, person, walk, event }) => {
      const row = sealRow({
        id,
        v: SHAPES,
        person,
        walk,
        tablet: this.tablet,
        seq: state.lastSeq + 1,
        prev: hash,
        at,
        app: this.settings.appVersion,
        words: this.settings.wordsVersion,
        card: person === null ? null : (state.people[person]?.card?.hash ?? null),
        event,
      });
      hash = row.hash;
      state = fold(state, factOf({ ...row, readable: true }));
      return row;
    });
    return { rows, state };
  }

  private async checkpoint(): Promise<void> {
    if (this.sinceCheckpoint === 0) return;
    await this.settings.log.saveCheckpoint({ seq: this.state.lastSeq, foldVersion: FOLD_VERSION, state: this.state });
    this.sinceCheckpoint = 0;
  }
}
