import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type SoundContext, type SoundNode, type SoundParam, tones } from "#devices/tones.ts";

class Param implements SoundParam {
  value = 1;
  readonly calls: string[] = [];
  setValueAtTime(value: number, at: number): void {
    this.calls.push(`set ${value} at ${at.toFixed(2)}`);
  }
  linearRampToValueAtTime(value: number, at: number): void {
    this.calls.push(`ramp ${value} at ${at.toFixed(2)}`);
  }
  setTargetAtTime(value: number): void {
    this.calls.push(`towards ${value}`);
  }
  cancelScheduledValues(): void {
    this.calls.push("cancel");
  }
}
class Node implements SoundNode {
  readonly gain = new Param();
  readonly frequency = new Param();
  readonly times: number[] = [];
  connect(): void {}
  start(at: number): void {
    this.times.push(at);
  }
  stop(at: number): void {
    this.times.push(at);
  }
}
class Context implements SoundContext {
  state = "running";
  currentTime = 10;
  readonly destination = new Node();
  readonly gains: Node[] = [];
  readonly oscillators: Node[] = [];
  onResume = (): Promise<void> => Promise.resolve();
  createGain(): Node {
    const node = new Node();
    this.gains.push(node);
    return node;
  }
  createOscillator(): Node {
    const node = new Node();
    this.oscillators.push(node);
    return node;
  }
  resume(): Promise<void> {
    return this.onResume();
  }
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

describe("a tone", () => {
  it("plays each beat with its harmonics, softly begun, and settles when it is over", async () => {
    const context = new Context();
    const bell = tones(() => context);
    let over = false;
    void bell.play("remind").then(() => {
      over = true;
    });
    expect(context.oscillators.map((o) => o.frequency.value)).toEqual([523, 1046, 1569, 659, 1318, 1977]);
    expect(context.oscillators[0]?.times[0]).toBe(10);
    expect(context.gains[1]?.gain.calls.slice(0, 2)).toEqual(["set 0 at 10.00", "ramp 0.5 at 10.01"]);
    await vi.advanceTimersByTimeAsync(500);
    expect(over).toBe(false);
    await vi.advanceTimersByTimeAsync(300);
    expect(over).toBe(true);
  });

  it("is as loud as the step says", () => {
    const context = new Context();
    const bell = tones(() => context);
    bell.setVolume(3);
    void bell.play("note");
    expect(context.gains[0]?.gain.value).toBeCloseTo(10 ** (-12 / 20), 6);
  });

  it("stops at once when told to, or when the next one plays", async () => {
    const context = new Context();
    const bell = tones(() => context);
    const now = bell.play("now");
    bell.stop();
    await now;
    expect(context.gains[0]?.gain.calls).toEqual(["cancel", "towards 0"]);
    const soon = bell.play("soon");
    const tick = bell.play("tick");
    await soon;
    await vi.advanceTimersByTimeAsync(200);
    await tick;
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe("a tablet that cannot sound", () => {
  it("never throws and never waits: no audio, audio that will not be made, audio that sleeps, audio that breaks", async () => {
    const asleep = new Context();
    asleep.state = "suspended";
    const broken = new Context();
    broken.createOscillator = () => {
      throw new Error("closed");
    };
    const makers = [
      () => null,
      () => {
        throw new Error("not here");
      },
      () => asleep,
      () => broken,
    ];
    for (const make of makers) {
      const bell = tones(make);
      await bell.play("now");
      bell.stop();
      expect(vi.getTimerCount()).toBe(0);
    }
    expect(asleep.oscillators).toEqual([]);
    await tones().play("tick");
  });

  it("says whether a tone would be heard, and wakes on a touch", async () => {
    const context = new Context();
    context.state = "suspended";
    const bell = tones(() => context);
    expect(bell.ready()).toBe(false);
    context.onResume = () => {
      context.state = "running";
      return Promise.resolve();
    };
    expect(await bell.wake()).toBe(true);
    expect(bell.ready()).toBe(true);
    expect(tones(() => null).ready()).toBe(false);
    expect(await tones(() => null).wake()).toBe(false);
  });

  it("does not wait for ever for leave to sound, and takes a refusal calmly", async () => {
    const context = new Context();
    context.state = "suspended";
    context.onResume = () => new Promise(() => {});
    const waiting = tones(() => context).wake();
    await vi.advanceTimersByTimeAsync(1000);
    expect(await waiting).toBe(false);
    context.onResume = () => Promise.reject(new Error("no"));
    expect(await tones(() => context).wake()).toBe(false);
  });
});
