import { describe, expect, it } from "vitest";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const toNeedle = () =>
  new Table([{ person: odile, card: fixedCard, pens: [odilePen] }])
    .send({ do: "open meal", person: "odile", meal: "breakfast" }, { do: "already washed" })
    .number("reading", "120")
    .send({ do: "exercise", hard: false }, { do: "meal is ready" }, { do: "heard dose" })
    .send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" })
    .send({ do: "needle fitted" }, { do: "primed", stream: true })
    .number("dial", "6")
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });

/** The tablet lies there with nobody at it. */
const lie = (t: Table, seconds: number) => {
  for (let s = 0; s < seconds; s += 30) {
    t.pass(30);
    t.send({ do: "pass time" });
  }
  return t;
};

describe("a needle step that stands open", () => {
  it("gives slow hands a few minutes", () => {
    const t = lie(toNeedle(), 4 * 60);
    expect(t.step()).toBe("inject");
    t.send({ do: "button is down" });
  });

  it("is asked about before it says 'inject' again", () => {
    const t = lie(toNeedle(), 6 * 60);
    expect(t.step()).toBe("needle question");
    expect(t.try({ do: "button is down" }).refusal).not.toBeNull();
    expect(t.types().filter((type) => type === "needle asked about")).toHaveLength(1);
    t.send({ do: "needle went in", answer: "yes" });
    expect(t.step()).toBe("inject");
    expect(t.state.people.odile?.walk?.pressed).toBe(true);
  });

  it("is asked about in the same moment in which somebody answers late", () => {
    const t = toNeedle();
    t.pass(20 * 60);
    expect(t.try({ do: "button is down" }).refusal).not.toBeNull();
    expect(t.step()).toBe("needle question");
  });

  it.each(["it hurt or bled", "something else"] as const)("is asked about after '%s', and never simply offered again", (mishap) => {
    const t = toNeedle().send({ do: "report", mishap }, { do: "heard mishap advice" });
    expect(t.step()).toBe("needle question");
    t.send({ do: "needle went in", answer: "not sure" }, { do: "heard mishap advice" });
    expect(t.step()).toBe("put away");
  });

  it("is asked about after 'I feel ill' too, before the danger signs", () => {
    const t = toNeedle().send({ do: "report", mishap: "feeling ill" });
    expect(t.step()).toBe("needle question");
    t.send({ do: "needle went in", answer: "yes" });
    expect(t.step()).toBe("ill");
    t.send(
      { do: "danger signs", any: false },
      { do: "no meter" },
      { do: "heard ill advice" },
      { do: "heard ill advice" },
      { do: "finish ill" },
    );
    expect(t.step()).toBe("inject");
  });

  it("goes on with the window where the button was down before it hurt", () => {
    const t = toNeedle().send({ do: "button is down" }, { do: "report", mishap: "it hurt or bled" }, { do: "heard mishap advice" });
    expect(t.step()).toBe("inject");
    expect(t.state.people.odile?.walk?.pressed).toBe(true);
  });
});
