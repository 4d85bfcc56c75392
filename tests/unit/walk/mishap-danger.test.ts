// What a nurse found missing after the worst mishaps: no screen may say that all is well while insulin may be at work.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sayWalk } from "#words/en/steps.ts";
import { open, toDose, toNeedle, withNight } from "../../kit/background-walk.ts";
import { led, odileAlone, odileAt, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const says = (t: Table): string => (sayWalk(t.state, t.now, GUARDS)?.lines ?? []).join(" ");

const nightInjected = (): Table => {
  const t = toNeedle(toDose(open(withNight()))).send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" });
};

describe("the mealtime pen taken for the long-acting one", () => {
  const wrong = (): Table => nightInjected().send({ do: "report", mishap: "wrong insulin" }, { do: "heard mishap advice" });

  it("never ends with 'No meal has to follow'", () => {
    const t = wrong().send({ do: "put away" });
    expect(t.step()).toBe("done");
    expect(says(t)).not.toContain("No meal has to follow");
    expect(says(t)).toContain("The wrong insulin may be in. Eat now. Keep sugar near. Measure now.");
    expect(says(t)).toMatch(/555 0142/);
    t.pass(10 * MINUTE);
    expect(says(t)).toContain("The wrong insulin may be in.");
  });
});

const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const heard = { do: "heard mishap advice" } as const;
const doing = (t: Table): string[] => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));

describe("sugar that came up in a low", () => {
  const low = (): Table => {
    const t = odileAlone().send({ do: "open low", person: "odile" }, sugar);
    t.pass(3 * MINUTE);
    return t.send({ do: "report", mishap: "vomiting" });
  };

  it("is offered again at once, and somebody is called", () => {
    const t = low();
    expect(led(t, heard)).toContain("call raised");
    expect(walk(t).wait).toBeNull();
    expect(doing(t)).toContain("took sugar");
    expect(says(t)).toContain("Can you swallow? Take 15 grams again now.");
  });

  it("still needs its good reading", () => {
    const t = low().send(heard, sugar);
    t.pass(15 * MINUTE);
    expect(t.step()).toBe("low");
    expect(t.number("recheck after low", "110").step()).toBe("done");
  });
});

describe("somebody who feels ill while a good reading is watched", () => {
  const ill = (): Table => {
    const t = odileAt("eat").send({ do: "cannot eat" }, sugar);
    t.pass(15 * MINUTE);
    return t.number("recheck after low", "110").send({ do: "report", mishap: "feeling ill" });
  };

  it("is asked about danger signs at once, and the watch goes on after a no", () => {
    const t = ill();
    expect(t.step()).toBe("ill");
    expect(says(t)).toContain("Danger sign");
    t.send({ do: "danger signs", any: false });
    expect(t.step()).toBe("low");
    t.number("recheck after low", "110");
    expect(walk(t).wait?.for).toBe("watch");
  });

  it("is told to call after a yes", () => {
    const t = ill();
    expect(led(t, { do: "danger signs", any: true })).toContain("call raised");
    expect(says(t)).toContain("Call 911 now.");
    expect(says(t)).toContain("Tell them that you use insulin.");
  });

  it("is called for after five minutes without an answer", () => {
    const t = ill();
    t.pass(5 * MINUTE);
    expect(led(t, { do: "pass time" })).toContain("call raised");
  });

  it("is given sugar first where the low is not over", () => {
    const t = odileAlone().send({ do: "open low", person: "odile" }, { do: "report", mishap: "feeling ill" });
    expect(t.step()).toBe("low");
    expect(doing(t)).toContain("took sugar");
  });
});

describe("insulin that may be too much, or may be in", () => {
  it("is measured now and each hour after too much, in the kitchen and in either walk", () => {
    const tables = [
      odileAlone().send({ do: "open mishap", person: "odile", mishap: "too much" }),
      odileAt("eat").send({ do: "report", mishap: "too much" }),
      nightInjected().send({ do: "report", mishap: "too much" }),
    ];
    for (const t of tables) expect(says(t)).toContain("Measure now. Measure again each hour.");
  });

  it("counts as in where nobody is sure", () => {
    expect(says(odileAt("inject").send({ do: "report", mishap: "not sure" }))).toMatch(/Count it as in\. Keep sugar near\. Call Harbour/);
  });
});
