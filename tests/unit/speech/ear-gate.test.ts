import { describe, expect, it } from "vitest";
import { EarGate } from "#speech/ear-gate.ts";
import type { EarsPort, Heard } from "#speech/ports.ts";

/** An ear that takes its time to say where it hears, and goes on calling after it was paused. */
class RudeEars implements EarsPort {
  readonly name = "rude";
  answer: (where: "on the device") => void = () => {};
  call: (h: Heard) => void = () => {};
  listens = 0;
  available(): Promise<"on the device"> {
    return new Promise((resolve) => {
      this.answer = resolve;
    });
  }
  listen(_vocabulary: readonly string[], onHeard: (h: Heard) => void): void {
    this.listens++;
    this.call = onHeard;
  }
  pause(): void {
    // Goes on.
  }
}

describe("the door to the ear", () => {
  it("stays shut when it was shut while the ear was still getting ready", async () => {
    const ears = new RudeEars();
    const shown: boolean[] = [];
    const gate = new EarGate({ ears, onListening: (open) => shown.push(open), onRoom: () => {} }, () => {});
    const opening = gate.open(["yes"], () => {});
    gate.shut();
    ears.answer("on the device");
    expect(await opening).toBe(false);
    expect([gate.isOpen(), ears.listens, shown.length]).toEqual([false, 0, 0]);
  });

  it("lets nothing through that comes after it was shut", async () => {
    const ears = new RudeEars();
    const heard: string[] = [];
    const gate = new EarGate({ ears, onListening: () => {}, onRoom: () => {} }, () => {});
    const opening = gate.open(["yes"], (h) => heard.push(h.text));
    ears.answer("on the device");
    expect(await opening).toBe(true);
    ears.call({ text: "yes", alternatives: [] });
    gate.shut();
    ears.call({ text: "no", alternatives: [] });
    expect(heard).toEqual(["yes"]);
  });
});
