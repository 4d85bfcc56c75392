// The loop: an intent is decided, its facts are stored, the state is folded, then everybody who shows or says it is told.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import { decide, type NewFact } from "#walk/decide.ts";
import type { Refusal } from "#walk/refusal.ts";
import type { HouseState } from "#walk/state.ts";
import type { Recorded, Recorder } from "./recorder.ts";

export interface Sent {
  /** Facts that were stored by this, in order. */
  events: Happened[];
  refusal: Refusal | null;
  /** The disk refused: nothing was stored, nothing may be announced (promise 9). */
  notStored: string | null;
}

export interface HouseSettings {
  recorder: Recorder;
  now(): Stamp;
  newId(): string;
  /** Called after facts were stored and folded, never on replay. */
  onChange(sent: Sent): void;
}

/** Another window may write between deciding and storing; then it is decided again from what is true now. */
const TRIES = 4;

export class House {
  /** Intents are carried out one after another. */
  private queue: Promise<unknown> = Promise.resolve();

  constructor(private readonly settings: HouseSettings) {}

  get state(): HouseState {
    return this.settings.recorder.state;
  }

  send(intent: Intent): Promise<Sent> {
    return this.inTurn(() => this.carryOut(intent));
  }

  /** Facts that no walk decides: set-up, a start of the app, a card signed in the drawer. */
  keep(facts: readonly NewFact[]): Promise<Sent> {
    return this.inTurn(async () => {
      for (let i = 0; i < TRIES; i++) {
        const recorded = await this.settings.recorder.record(facts, this.settings.now());
        const sent = this.sentOf(facts, null, recorded);
        if (sent) return sent;
        await this.settings.recorder.readOn();
      }
      return this.gaveUp();
    });
  }

  private inTurn(work: () => Promise<Sent>): Promise<Sent> {
    const next = this.queue.then(work, work).then((sent) => {
      if (sent.events.length > 0 || sent.refusal || sent.notStored) this.settings.onChange(sent);
      return sent;
    });
    this.queue = next.catch(() => undefined);
    return next;
  }

  private async carryOut(intent: Intent): Promise<Sent> {
    for (let i = 0; i < TRIES; i++) {
      const now = this.settings.now();
      const { facts, refusal } = decide(this.state, intent, now, this.settings.newId());
      const recorded = await this.settings.recorder.record(facts, now);
      const sent = this.sentOf(facts, refusal, recorded);
      if (sent) return sent;
      await this.settings.recorder.readOn();
    }
    return this.gaveUp();
  }

  private sentOf(facts: readonly NewFact[], refusal: Refusal | null, recorded: Recorded): Sent | null {
    if (recorded.ok) return { events: facts.map((f) => f.event), refusal, notStored: null };
    return recorded.why === "another writer" ? null : { events: [], refusal: null, notStored: recorded.detail };
  }

  private gaveUp(): Sent {
    return { events: [], refusal: null, notStored: "another window keeps writing" };
  }
}
