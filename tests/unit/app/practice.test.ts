import { describe, expect, it } from "vitest";
import type { Intent } from "#events/intent.ts";
import type { NewFact } from "#walk/decide.ts";
import { whoCalls } from "#walk/helper-case.ts";
import { PRACTICE } from "#words/en/practice.ts";
import { setUp } from "../../kit/fresh-house.ts";
import { practiceTable as kitchen, number, TO_THE_NEEDLE } from "../../kit/practice-table.ts";

describe("practice", () => {
  it("walks a whole meal and leaves the log, the pens and the places byte for byte as they were", async () => {
    const t = await kitchen();
    const [before, state] = [await t.stored(), t.real.state.value];
    await t.practice.begin("odile");
    await t.answer(...TO_THE_NEEDLE, { do: "button is down" });
    await t.pass(10);
    await t.answer({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    expect(t.step()).toBe("eat");
    await t.answer({ do: "eating" }, { do: "finish" });
    expect(t.practice.desk.value).toBeNull();
    expect(await t.stored()).toBe(before);
    expect(t.real.state.value).toBe(state);
    expect(t.real.noted.value).toMatchObject({ title: "Practice", lines: ["Practice is over.", "Nothing was saved."] });
  });

  it("says that it is practice at its first step, and to inject nothing wherever the pen is in hand", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    const said = () => t.practice.desk.value?.say().lines ?? [];
    await t.pass(8);
    expect(t.voice.texts()).toContain(PRACTICE.banner);
    for (const intent of TO_THE_NEEDLE) {
      await t.answer(intent);
      const walk = t.step();
      if (["pen", "dial", "place", "skin", "inject"].includes(walk ?? "") && !said().includes("Right?"))
        expect([walk, said()[0]]).toEqual([walk, PRACTICE.noInject]);
    }
    await t.pass(8);
    expect(t.voice.texts()).toContain(PRACTICE.noInject);
    // Nothing went in, and nothing says so.
    await t.answer({ do: "button is down" });
    await t.pass(10);
    await t.answer({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    expect(said()).toEqual(PRACTICE.eat);
    await t.answer({ do: "eating" });
    expect(said()).toEqual(PRACTICE.done);
  });

  it("rings no bell and calls for nobody, however long the meal is late", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    await t.answer(...TO_THE_NEEDLE, { do: "button is down" });
    await t.pass(10);
    await t.answer({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    await t.pass(25 * 60);
    expect(t.step()).toBe("eat");
    expect(t.rung.filter((tone) => tone !== "note")).toEqual([]);
    expect(t.voice.texts().filter((text) => /time to eat|eat now\. Insulin|Call /.test(text))).toEqual([]);
    expect(whoCalls(t.practice.desk.value?.state.value ?? t.real.state.value, t.clock.stamp)).toBeNull();
  });

  it("is over at once when the house calls: a bell of somebody who waits for food", async () => {
    const t = await kitchen();
    const noon = t.clock.stamp;
    await t.practice.begin("odile");
    // Another window of the tablet wrote it: the only way to a bell while practice has the glass.
    const at = (event: NewFact["event"]): NewFact => ({ person: "odile", walk: "w-real", event });
    await t.real.house.keep([
      at({ type: "walk opened", kind: "meal", meal: "lunch" }),
      at({ type: "inject opened" }),
      at({ type: "walk left", step: "inject", why: "stopped by the person" }),
    ]);
    expect(t.practice.desk.value).not.toBeNull();
    await t.pass(16 * 60);
    expect(t.rung).toContain("loud");
    expect(t.practice.desk.value).toBeNull();
    expect(t.real.state.value.people.odile?.bell?.from.wall).toBe(noon.wall);
  });

  it("ends by itself when it is left, and after half an hour without an answer", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    await t.answer({ do: "leave" });
    expect(t.practice.desk.value).toBeNull();
    await t.practice.begin("odile");
    await t.pass(29 * 60);
    expect(t.practice.desk.value).not.toBeNull();
    await t.pass(61);
    expect(t.practice.desk.value).toBeNull();
    expect(t.real.noted.value?.lines).toEqual(PRACTICE.asleep);
  });

  it("never practises what is wrong: a press or a word for it is the real thing", async () => {
    for (const how of ["press", "report", "low"] as const) {
      const t = await kitchen();
      await t.practice.begin("odile");
      if (how === "press") t.practice.desk.value?.chrome("wrong");
      if (how === "report") await t.answer({ do: "report", mishap: "feeling ill" });
      if (how === "low") await t.answer({ do: "open low", person: "odile" });
      expect(t.practice.desk.value).toBeNull();
      expect(t.real.overlay.value).toBe("wrong");
    }
  });

  it("asks whether a low number was real, in the house itself", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    const give: Intent = { do: "give number", slot: "reading", text: "55", via: "touch", helper: null };
    await t.answer({ do: "already washed" }, give, { do: "agree number" }, give);
    expect(t.practice.desk.value).toBeNull();
    expect(t.real.noted.value?.lines).toEqual(PRACTICE.low);
  });

  it("does not follow a meal that was only practised and did not come", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    await t.answer(...TO_THE_NEEDLE, { do: "button is down" });
    await t.pass(10);
    await t.answer({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" }, { do: "cannot eat" });
    expect(t.real.noted.value?.lines).toEqual(PRACTICE.over);
  });

  it("is not begun where the house calls in the moment of beginning, nor twice at once", async () => {
    const t = await kitchen();
    const first = t.practice.begin("odile");
    void t.practice.ring("calling");
    await first;
    expect(t.practice.desk.value).toBeNull();
    expect(t.real.turns.interrupt({ text: "Here.", lang: "en-US" })).toBe(true);
    await Promise.all([t.practice.begin("odile"), t.practice.begin("odile")]);
    await t.answer({ do: "leave" });
    expect(t.practice.desk.value).toBeNull();
  });

  it("is not begun while a walk is open or a bell waits", async () => {
    const t = await kitchen();
    await t.real.send({ do: "open meal", person: "odile", meal: "lunch" });
    await t.real.send({ do: "leave" });
    await t.practice.begin("odile");
    expect(t.practice.desk.value).toBeNull();
  });

  it("speaks with one voice: the house is silent meanwhile, and speaks again afterwards", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    expect(t.real.turns.interrupt({ text: "Over it.", lang: "en-US" })).toBe(false);
    await t.answer({ do: "leave" });
    expect(t.real.turns.interrupt({ text: "Here again.", lang: "en-US" })).toBe(true);
  });

  it("uses an invented card for whoever has none, and says so beside the dose", async () => {
    const t = await kitchen(setUp.filter(({ event }) => event.type !== "card signed" && event.type !== "pen added"));
    await t.practice.begin("odile");
    await t.answer({ do: "already washed" }, ...number("reading", "120"), { do: "exercise", hard: false });
    if (t.step() === "plate") await t.answer({ do: "meal is ready" });
    expect(t.step()).toBe("card");
    expect(t.practice.desk.value?.say().lines[0]).toBe(PRACTICE.madeUp);
  });

  it("lets go on a device's settings alone: larger letters chosen in practice stay", async () => {
    const t = await kitchen();
    await t.practice.begin("odile");
    t.practice.desk.value?.change({ k: 2 });
    await t.answer({ do: "leave" });
    expect(t.real.prefs.value.k).toBe(2);
    t.real.change({ k: 1 });
  });
});
