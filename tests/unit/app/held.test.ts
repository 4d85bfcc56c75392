import { describe, expect, it } from "vitest";
import { AGAIN_MS, held } from "#app/held.ts";
import { FakeTimers, settle } from "../speech/fake-timers.ts";

/** A fetch that fails some times, and how often it was asked. */
function bench(failures: number) {
  const timers = new FakeTimers();
  let asked = 0;
  const load = () => Promise.resolve().then(() => (asked++ < failures ? Promise.reject(new Error("no network")) : "walk"));
  return { timers, script: held(load, timers), asked: () => asked };
}

describe("a script that is held", () => {
  it("is there once it came, and is fetched once however often it is asked for", async () => {
    const { script, asked } = bench(0);
    expect(script.here.value).toBeNull();
    expect(await Promise.all([script.hold(), script.need(), script.hold()])).toEqual(["walk", "walk", "walk"]);
    expect(script.here.value).toBe("walk");
    expect(asked()).toBe(1);
  });

  it("is asked for again until it comes, and whoever needs it waits and is told so", async () => {
    const { timers, script, asked } = bench(2);
    let came = false;
    void script.need().then(() => (came = true));
    for (const times of [1, 2]) {
      await settle();
      expect([asked(), came, script.needed.value, script.here.value]).toEqual([times, false, true, null]);
      await timers.advance(AGAIN_MS);
    }
    await settle();
    expect([asked(), came, script.needed.value, script.here.value]).toEqual([3, true, false, "walk"]);
  });

  it("tells nobody to wait for what is there", async () => {
    const { script } = bench(0);
    await script.hold();
    const need = script.need();
    expect(script.needed.value).toBe(false);
    await need;
  });
});
