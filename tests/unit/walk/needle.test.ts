import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { me, odileAt, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const comeBack: readonly [string, (t: Table) => void][] = [
  ["a start of the app", (t) => t.restart()],
  ["leaving", (t) => void t.send({ do: "leave" }, { do: "turn to", person: "odile" })],
];
const asked = (how: (t: Table) => void): Table => {
  const t = odileAt("inject");
  how(t);
  return t;
};

describe("Did the needle go in? (promise 11, mistake 23)", () => {
  for (const [name, how] of comeBack) {
    it(`is the only question after ${name}, and injecting is not offered`, () => {
      const t = asked(how);
      expect(t.step()).toBe("needle question");
      expect(doing(t)).not.toContain("button is down");
      expect(doing(t).filter((d) => d === "needle went in")).toHaveLength(3);
    });
    it(`counts as taken after ${name} until the answer is no`, () => {
      const t = asked(how);
      expect(me(t).doses).toHaveLength(1);
      expect(me(t).bell).not.toBeNull();
      t.send({ do: "needle went in", answer: "no" });
      expect(me(t)).toMatchObject({ doses: [], bell: null, uses: [] });
      expect(walk(t)).toMatchObject({ dial: null, injectOpened: null });
    });
  }

  it("yes goes on to the window; not sure is the mishap and a dose of unknown size", () => {
    const yes = asked((t) => t.restart()).send({ do: "needle went in", answer: "yes" });
    expect(doing(yes)).toContain("window is at zero");
    const unsure = asked((t) => t.restart()).send({ do: "needle went in", answer: "not sure" });
    expect(unsure.step()).toBe("mishap");
    expect(walk(unsure).injected).toMatchObject({ units: null, certain: false });
    unsure.send({ do: "heard mishap advice" });
    expect(doing(unsure)).not.toContain("button is down");
    expect(me(unsure).doses).toHaveLength(1);
  });
});
