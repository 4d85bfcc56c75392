// What the drawer is given from outside, as plain values and functions.
import type { DoseCard } from "#events/card.ts";
import type { Of } from "#events/happened.ts";
import type { LogRow } from "#events/log-port.ts";
import type { LocalDate } from "#events/quantity.ts";
import type { Stamp } from "#events/stamp.ts";
import type { PinTries } from "#keeping/pin.ts";
import type { NewFact } from "#walk/decide.ts";
import type { HouseState } from "#walk/state.ts";
import type { EarState, EarTry } from "#words/en/drawer/ear.ts";

export type PinHash = Of<"keeper added">["keeper"]["pin"];

/** How the screen looks; the other preferences are no business of the drawer. */
export interface LookPrefs {
  mm: number | null;
  k: 1 | 1.4 | 2;
  theme: "light" | "dark" | null;
}

/** What came of keeping facts: notStored says why nothing was stored. */
export interface Kept {
  notStored: string | null;
}

export interface DrawerProps {
  house: HouseState;
  now: Stamp;
  today: LocalDate;
  prefs: LookPrefs;
  onPrefs(change: Partial<LookPrefs>): void;
  /** Stores all facts or none. Nothing is announced before it has answered. */
  keep(facts: NewFact[]): Promise<Kept>;
  hashCard(card: DoseCard): string;
  hashPin(pin: string): Promise<PinHash | "not supported">;
  checkPin(pin: string, kept: PinHash): Promise<"right" | "wrong" | "not supported">;
  /** Wrong tries at the PIN, kept on the tablet so that a reload does not forget them. */
  tries: PinTries;
  onTries(tries: PinTries): void;
  newId(): string;
  /** A photograph as a small picture in text; "not a picture" where it is none. */
  smallPicture(file: Blob): Promise<string | "not a picture">;
  /** The photograph that lies in this row of the log; null where none can be read. */
  pictureIn(row: number): Promise<string | null>;
  /** A printed code for a forgotten PIN, from a good source of chance. */
  newCode(): string;
  /** The ear, to be tried out; not given where there is nothing to try. */
  ear?: EarTrial;
  onClose(): void;
  /** Rows of the log whose wall time lies in [from, to), in order. */
  rowsBetween(from: number, to: number): Promise<LogRow[]>;
  /** Closes the drawer and asks who practises. */
  onPractise(): void;
  /** Given in the demo: the PIN that opens its drawer to everybody, shown at the gate. */
  demoPin?: string;
  /** Given in the demo: the way to an own household. */
  onStartOwn?: () => void;
  /** Given in the demo: empties it and begins anew. Asks first by itself. */
  onEmptyDemo?: () => void;
}

export interface EarTrial {
  state(): Promise<EarState>;
  /** Listens for one utterance, up to 8 seconds. Settles always; a second one ends the first. */
  listen(): Promise<EarTry>;
  stop(): void;
  /** Lets the browser fetch the language of its own ear; only where a keeper asked for it. True once it is there. */
  install(): Promise<boolean>;
}

export interface KeeperHere {
  id: string;
  name: string;
}
