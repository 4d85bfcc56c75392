// A House on a log in memory, with a clock that is moved by hand.
import { House, type Sent } from "#app/house.ts";
import { Recorder } from "#app/recorder.ts";
import type { LogPort } from "#events/log-port.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NewFact } from "#walk/decide.ts";
import { fixedCard, odile, odilePen } from "./people.ts";
import { NOON } from "./table.ts";

export class TestClock {
  stamp: Stamp = { wall: NOON, mono: 1000, boot: "boot-1", zone: "America/Chicago", offset: -300 };
  pass(seconds: number) {
    this.stamp = { ...this.stamp, wall: this.stamp.wall + seconds * 1000, mono: this.stamp.mono + seconds * 1000 };
  }
}

let ids = 0;
export const testId = (): string => `00000000-test-${String(++ids).padStart(8, "0")}`;

export const setUp: NewFact[] = [
  { person: null, walk: null, event: { type: "household begun", household: { kind: "home", emergencyNumber: "911", country: "US" } } },
  { person: "odile", walk: null, event: { type: "person added", person: odile } },
  {
    person: "odile",
    walk: null,
    event: {
      type: "card signed",
      card: fixedCard,
      cardHash: "hash-of-odile",
      signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-01-02", typedTwice: true, readBack: true },
    },
  },
  { person: "odile", walk: null, event: { type: "pen added", pen: odilePen } },
];

export async function houseOn(log: LogPort, clock: TestClock, onChange: (sent: Sent) => void = () => undefined): Promise<House> {
  const recorder = await Recorder.open({ log, newId: testId, appVersion: "test", wordsVersion: "test" });
  return new House({ recorder, now: () => clock.stamp, newId: testId, onChange });
}
