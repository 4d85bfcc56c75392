import { describe, expect, it } from "vitest";
import { offers } from "#walk/offers.ts";
import { bring, odileAlone, odileAt, walk } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const Ines = { do: "name helper", name: "somebody else" } as const;
const comeBack = (t: Table): Table => t.send({ do: "leave" }, { do: "turn to", person: "odile" });
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : [o.offer]));

describe("a helper who was named", () => {
  it("is nobody any more once the walk was left: who is there is asked again before the dial is read", () => {
    const t = odileAt("dial", {}, { dialBy: "helper" }).send(Ines);
    expect(walk(t).helper).toBe("somebody else");
    comeBack(t);
    expect(walk(t).helper).toBeNull();
    expect(doing(t)).toContain("name helper");
    expect(doing(t)).not.toContain("number");
  });

  it("is asked for again at every step from the pen on, by a person who injects only with a helper", () => {
    for (const stop of ["dial", "place", "skin"] as const) {
      const t = bring(odileAlone({}, { helperOnly: true }), "pen").send(Ines);
      comeBack(bring(t, stop));
      expect(t.step(), stop).toBe("pen");
      expect(doing(t), stop).toContain("name helper");
      expect(doing(t), stop).not.toContain("pick pen");
    }
  });

  it("stays for as long as the walk is not left", () => {
    const t = bring(odileAlone({}, { helperOnly: true }), "pen").send(Ines);
    bring(t, "inject");
    expect(walk(t).helper).toBe("somebody else");
  });

  it("leaves the pen of a person who injects alone as it was", () => {
    const t = comeBack(odileAt("place"));
    expect(t.step()).toBe("place");
  });
});
