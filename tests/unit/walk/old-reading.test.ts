import { describe, expect, it } from "vitest";
import { bring, led, odileAt, setClock, twice, walk } from "../../kit/explore/at-table.ts";

describe("a reading that grew old (promise 1)", () => {
  it("is asked for again when the dose is heard 16 minutes after it", () => {
    const t = odileAt("card");
    t.pass(16 * 60);
    expect(led(t, { do: "heard dose" })).toEqual(["reading grew old"]);
    expect(t.step()).toBe("reading");
    expect(walk(t).told).toBeNull();
  });

  it("takes the told dose off the screen by itself, while nobody answers", () => {
    const t = odileAt("card");
    t.pass(16 * 60);
    expect(led(t, { do: "pass time" })).toEqual(["reading grew old"]);
    expect(t.step()).toBe("reading");
  });

  it("takes a dialled number away too, and the new dose is dialled again", () => {
    const t = odileAt("skin");
    t.pass(16 * 60);
    expect(led(t, { do: "skin cleaned", how: "clean without a wipe" })).toContain("reading grew old");
    expect(walk(t).dial).toBeNull();
    t.number("reading", "118");
    expect(t.step()).toBe("card");
  });

  it("is still good at 15 minutes to the second", () => {
    const t = odileAt("card");
    t.pass(15 * 60);
    expect(led(t, { do: "heard dose" })).toEqual(["dose heard"]);
  });

  it("is old after a sleep of the tablet in which only the wall clock went on", () => {
    const t = odileAt("dial");
    setClock(t, 3600);
    t.send({ do: "pass time" }, { do: "agree clock" }, { do: "answer taken", answer: "no" });
    expect(walk(t).reading).toBeNull();
    expect(walk(t).dial).toBeNull();
    expect(t.step()).toBe("reading");
  });

  it("is as old as when it was given, however late it is agreed to", () => {
    const t = odileAt("reading").send({ do: "give number", slot: "reading", text: "120", via: "touch", helper: null });
    t.pass(20 * 60);
    t.send({ do: "agree number" }, { do: "exercise", hard: false }, { do: "meal is ready" });
    expect(t.types()).not.toContain("dose told");
    expect(t.step()).toBe("reading");
  });

  it("is as old as the first time when its digits are given a second time", () => {
    const t = odileAt("reading").send(
      { do: "give number", slot: "reading", text: "260", via: "touch", helper: null },
      { do: "agree number" },
    );
    t.pass(20 * 60);
    t.send(
      { do: "give number", slot: "reading", text: "260", via: "touch", helper: null },
      { do: "exercise", hard: false },
      { do: "meal is ready" },
    );
    expect(t.types()).not.toContain("dose told");
  });

  it("is no ground for a telephoned number either: a new reading comes first", () => {
    const t = bring(odileAt("wash", { afterExercise: "ask" }), "plate").send({ do: "exercise", hard: true }, { do: "meal is ready" });
    expect(walk(t).silent?.why).toBe("after exercise: ask");
    t.pass(16 * 60);
    twice(t, "telephoned number", "4");
    expect(t.types()).not.toContain("dose told");
    expect(t.step()).toBe("reading");
  });
});
