import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, odileAt, walk } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";

const longReading = { care: { ...fixedCard.care, readingAgeMinutes: 60 } };
const MINUTE = 60;
const back = { do: "turn to", person: "odile" } as const;

describe("a pen that was made ready long ago", () => {
  it("is checked again from the start by whoever comes back to the walk after half an hour", () => {
    const t = odileAt("place", longReading).send({ do: "leave" });
    t.pass(31 * MINUTE);
    t.send(back);
    expect(led(t, { do: "meal is ready" })).toContain("pen check grew old");
    expect(t.step()).toBe("pen");
    expect(walk(t).penCheck).toMatchObject({ pen: null, looked: false, needle: false, primed: false });
    bring(t, "inject");
    expect(t.types().filter((type) => type === "needle fitted")).toHaveLength(2);
  });

  it("is checked again where nobody left the walk, and only the answer came late", () => {
    const t = odileAt("dial", longReading);
    t.pass(31 * MINUTE);
    expect(t.try({ do: "give number", slot: "dial", text: "6", via: "touch", helper: null }).facts.map((f) => f.event.type)).toContain(
      "pen check grew old",
    );
    expect(t.step()).toBe("pen");
  });

  it("grows old together with the reading, and neither hides the other", () => {
    const t = odileAt("dial");
    t.pass(31 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual(["pen check grew old", "reading grew old"]);
    expect(walk(t)).toMatchObject({ reading: null, told: null, dial: null });
    expect(walk(t).penCheck.pen).toBeNull();
    expect(t.step()).toBe("reading");
  });

  it("takes its step off the screen by itself, with the needle fitted and no stream seen yet", () => {
    const t = odileAt("pen").send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" });
    t.send({ do: "needle fitted" });
    t.pass(31 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual(["pen check grew old"]);
    expect(walk(t).penCheck.pen).toBeNull();
    expect(sayWalk(t.state, t.now, GUARDS)?.lines).toContain("Take the old needle off.");
  });

  it("has its spot cleaned again too, since the skin was cleaned as long ago", () => {
    const t = odileAt("skin", longReading).send({ do: "skin cleaned", how: "wiped" });
    t.pass(31 * MINUTE);
    expect(led(t, { do: "wait is over" })).toContain("pen check grew old");
    expect(walk(t)).toMatchObject({ dial: null, cleaned: null, skinDry: false });
  });

  it("stands for half an hour", () => {
    const t = odileAt("dial", longReading);
    t.pass(30 * MINUTE);
    expect(led(t, { do: "pass time" })).toEqual([]);
    bring(t, "inject");
    expect(t.types()).not.toContain("pen check grew old");
  });

  it("is asked about where nobody knows how long ago it was: after a start in doubt nothing is injected with it", () => {
    const t = odileAt("dial", longReading);
    t.restart(40 * MINUTE);
    t.send({ do: "agree clock" });
    expect(t.step()).toBe("pen");
  });
});
