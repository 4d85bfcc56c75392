import { describe, expect, it } from "vitest";
import type { Pen } from "#events/pen.ts";
import { bring, led, me, odileAt, walk } from "../../kit/explore/at-table.ts";
import { fixedCard, odile, odileNight, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const withPen = (over: Partial<Pen>): Table =>
  bring(new Table([{ person: odile, card: fixedCard, pens: [{ ...odilePen, ...over }, odileNight] }]), "pen");
const pick = (pen: string) => ({ do: "pick pen", pen, how: "mark" }) as const;

describe("the pen in the hand (promise 6, mistakes 12 to 15)", () => {
  // The table's day is 5 June 2026.
  const wrong: readonly [string, Partial<Pen>, string, string][] = [
    ["long-acting insulin", {}, "odile-night", "not mealtime insulin"],
    ["another insulin than the card's", { insulinId: "aspart-100" }, "odile-meal", "another insulin than the card's"],
    ["an expired pen", { expiresOn: "2026-06-04" }, "odile-meal", "expired"],
    ["a pen open too long", { openedOn: "2026-05-07" }, "odile-meal", "open too long"],
    ["a pen with too little for dose and priming", { unitsWhenOpened: 7 }, "odile-meal", "too little left"],
  ];
  for (const [name, over, pen, why] of wrong) {
    it(`${name} stops, as a near miss`, () => {
      const t = withPen(over);
      const { refusal, facts } = t.try(pick(pen));
      expect(refusal).toMatchObject({ no: "pen", reason: { why } });
      expect(facts.map((f) => f.event.type)).toEqual(["near miss"]);
      expect(walk(t).penCheck.pen).toBeNull();
    });
  }

  it("is good on its last day, and with exactly enough", () => {
    for (const over of [{ expiresOn: "2026-06-05" }, { openedOn: "2026-05-08" }, { unitsWhenOpened: 8 }]) {
      expect(led(withPen(over), pick("odile-meal"))).toEqual(["pen picked"]);
    }
  });

  it("is put aside when the insulin does not look right, and cannot be picked again", () => {
    for (const look of ["clumped", "frozen", "overheated"] as const) {
      const t = withPen({}).send(pick("odile-meal"));
      expect(t.try({ do: "insulin looks", look }).refusal).toEqual({ no: "insulin look", look });
      expect(me(t).pens[0]?.retired).toBe(true);
      expect(t.try(pick("odile-meal")).refusal).not.toBeNull();
    }
  });

  it("is mixed where cloudy, and not dialled before a stream was seen", () => {
    const t = withPen({ cloudy: true }).send(pick("odile-meal"), { do: "insulin looks", look: "as it should be" });
    expect(t.try({ do: "needle fitted" }).refusal).toEqual({ no: "not offered here" });
    t.send({ do: "insulin mixed" }, { do: "needle fitted" });
    expect(t.try({ do: "primed", stream: false }).refusal).toEqual({ no: "no stream" });
    expect(t.step()).toBe("pen");
    expect(t.send({ do: "primed", stream: true }).step()).toBe("dial");
  });

  it("counts priming and dose off the pen", () => {
    expect(me(odileAt("put away")).pens[0]?.used).toBe(8);
  });
});
