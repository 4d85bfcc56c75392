// What a nurse found missing after the worst mishaps: no screen may say that all is well while insulin may be at work.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { sayWalk } from "#words/en/steps.ts";
import { open, toDose, toNeedle, withNight } from "../../kit/background-walk.ts";
import { walk } from "../../kit/explore/at-table.ts";
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

  it("asks for a reading at once, and watches on after a good one", () => {
    const t = wrong();
    expect(t.step()).toBe("low");
    expect(says(t)).toContain("Measure again.");
    t.number("recheck after low", "110");
    expect(walk(t).wait).toMatchObject({ for: "watch", ms: 30 * MINUTE * 1000 });
  });

  it("never ends with 'No meal has to follow'", () => {
    const t = wrong().number("recheck after low", "110").send({ do: "eating" }, { do: "put away" });
    expect(t.step()).toBe("done");
    expect(says(t)).not.toContain("No meal has to follow");
    expect(says(t)).toContain("The wrong insulin may be in. Eat now. Keep sugar near.");
    expect(says(t)).toMatch(/555 0142/);
    t.pass(10 * MINUTE);
    expect(says(t)).toContain("The wrong insulin may be in.");
  });
});
