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
  listen(_vocabulary: readonly string[], onHeard: (h: Heard) => void): Promise<boolean> {
    this.listens++;
    this.call = onHeard;
    return Promise.resolve(true);
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

  it("never says that it listens where the microphone is refused when it is asked for", async () => {
    const shown: boolean[] = [];
    const ears: EarsPort = { name: "refused", available: async () => "on the device", listen: async () => false, pause: () => {} };
    const gate = new EarGate({ ears, onListening: (open) => shown.push(open), onRoom: () => {} }, () => {});
    expect(await gate.open(["yes"], () => {})).toBe(false);
    expect([gate.isOpen(), shown.includes(true)]).toEqual([false, false]);
  });

  it.each([
    ["while it listens", true],
    ["while the tablet speaks", false],
  ])("shows and tells once that the ear is gone, where it dies %s, and opens no more", async (_, listening) => {
    const shown: boolean[] = [];
    const rooms: (string | null)[] = [];
    const told: string[] = [];
    let there: "on the device" | "not on this device" = "on the device";
    let die = (_t: "deaf") => {};
    const ears: EarsPort = {
      name: "mortal",
      available: async () => there,
      listen: async (_v, _h, _e, onTrouble) => {
        die = onTrouble ?? die;
        return true;
      },
      pause: () => {},
    };
    const gate = new EarGate({ ears, onListening: (open) => shown.push(open), onRoom: (t) => rooms.push(t) }, (t) => told.push(t));
    expect(await gate.open(["yes"], () => {})).toBe(true);
    if (!listening) gate.shut();
    there = "not on this device";
    die("deaf");
    for (let screens = 0; screens < 3; screens++) {
      expect(await gate.open(["yes"], () => {})).toBe(false);
      expect(gate.isOpen()).toBe(false);
      gate.nextScreen();
    }
    expect([shown, told, rooms]).toEqual([[true, false], ["deaf"], ["deaf", null]]);
  });

  it("says that it listens only once the person has allowed the microphone, and not if the door was shut meanwhile", async () => {
    const shown: boolean[] = [];
    let allow: (hears: boolean) => void = () => {};
    const listen = () => new Promise<boolean>((done) => (allow = done));
    const ears: EarsPort = { name: "asking", available: async () => "on the device", listen, pause: () => {} };
    const gate = new EarGate({ ears, onListening: (open) => shown.push(open), onRoom: () => {} }, () => {});
    const first = gate.open(["yes"], () => {});
    await Promise.resolve();
    await Promise.resolve();
    expect(shown).toEqual([]);
    allow(true);
    expect(await first).toBe(true);
    expect(shown).toEqual([true]);
    gate.shut();
    const second = gate.open(["yes"], () => {});
    await Promise.resolve();
    await Promise.resolve();
    gate.shut();
    allow(true);
    expect(await second).toBe(false);
    expect(shown.slice(1)).not.toContain(true);
  });
});
