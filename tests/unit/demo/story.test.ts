import { beforeAll, describe, expect, it } from "vitest";
import { DEMO_PIN, demoKeeper } from "#demo-data/household.ts";
import { checkPin } from "#devices/pin.ts";
import type { Stored } from "#events/envelope.ts";
import { DAY } from "#events/quantity.ts";
import { classify } from "#rules/glucose/classify.ts";
import { daysBetween, localParts } from "#rules/time/local.ts";
import { dayOf, type Made, MOMENTS, made, nearMisses, of } from "./made.ts";

type Who = "marta" | "henk";
const both: readonly Who[] = ["marta", "henk"];

// Whatever the hour, the story is one: log.test.ts looks at other moments. This one has an hour less in it.
const moments = ["on the day summer time came"] as const;

/** Hours of the kitchen clock in which a walk of this meal may begin. */
const HOURS = { breakfast: [7, 10], lunch: [11, 14], dinner: [17, 20], snack: [15, 16] } as const;

describe.each(moments)("what happens in the ninety days before now, %s", (when) => {
  let demo: Made;
  let rows: Stored[];
  beforeAll(async () => {
    demo = await made(MOMENTS[when]);
    rows = demo.rows;
  }, 60_000);

  const count = (promised: Record<Who, number>, counted: (who: Who) => number) =>
    expect(Object.fromEntries(both.map((who) => [who, counted(who)]))).toEqual(promised);

  it("is three walks a day for each, about 270", () => {
    for (const who of both) {
      const walks = of(rows, "walk opened", who).length;
      expect(walks).toBeGreaterThanOrEqual(255);
      expect(walks).toBeLessThanOrEqual(280);
      const meals = of(rows, "walk opened", who).filter((row) => ["breakfast", "lunch", "dinner"].includes(row.event.meal ?? ""));
      const odd = meals.filter((row) => {
        const { hour } = localParts(row.at.wall, row.at.offset);
        const [from, until] = HOURS[row.event.meal ?? "snack"];
        return hour < from || hour > until;
      });
      expect(odd).toEqual([]);
    }
    expect(of(rows, "walk ended").length).toBe(of(rows, "walk opened").length);
  });

  it("holds the promised lows, all of them treated until they had ended", () => {
    const watches: readonly string[] = ["half eaten", "cannot eat"];
    count({ marta: 13, henk: 6 }, (who) => of(rows, "low began", who).filter((row) => !watches.includes(row.event.because)).length);
    // After half a meal, or hardly any of it, a watch: it ends as a low does.
    count({ marta: 4 + 1, henk: 2 }, (who) => of(rows, "low began", who).filter((row) => watches.includes(row.event.because)).length);
    count({ marta: 13 + 5, henk: 6 + 2 }, (who) => of(rows, "low ended", who).length);
    count({ marta: 2, henk: 1 }, (who) => of(rows, "low ended", who).filter((row) => row.event.rounds === 2).length);
    count({ marta: 5, henk: 2 }, (who) => of(rows, "low began", who).filter((row) => row.event.because === "feels strange").length);
    expect(of(rows, "sugar taken").length).toBe(19 + 3);
    expect(of(rows, "call raised")).toEqual([]);
  });

  it("has no low reading but in those lows", () => {
    const treated = new Set(of(rows, "low ended").map((row) => row.walk));
    const low = of(rows, "reading taken").filter((row) => {
      const card = demo.state.people[row.person ?? ""]?.card?.card;
      return card && classify(row.event.glucose, card.low) === "low";
    });
    expect(low.length).toBe(8 + 4 + 3);
    expect(low.filter((row) => !treated.has(row.walk))).toEqual([]);
  });

  it("holds the promised late meals and what was eaten", () => {
    // After the app stopped at the needle the bell is due at once, whatever the clocks say: that is no late meal.
    const stopped = of(rows, "needle question answered").map((row) => row.walk);
    const rang = (who: Who) =>
      new Set(
        of(rows, "bell not answered", who)
          .map((row) => row.walk)
          .filter((walk) => !stopped.includes(walk)),
      );
    count({ marta: 9, henk: 6 }, (who) => rang(who).size);
    count({ marta: 4, henk: 2 }, (who) => of(rows, "meal answered", who).filter((row) => row.event.ate === "half").length);
    count({ marta: 1, henk: 0 }, (who) => of(rows, "meal answered", who).filter((row) => row.event.ate === "hardly any").length);
    for (const who of both) {
      const silent = 1 - of(rows, "meal answered", who).length / of(rows, "eating", who).length;
      expect(silent).toBeGreaterThan(0.02);
      expect(silent).toBeLessThan(0.15);
    }
  });

  it("holds the promised near misses, and every one was stopped", () => {
    count({ marta: 4, henk: 2 }, (who) => nearMisses(rows, "dialled is not the card", who));
    count({ marta: 1, henk: 0 }, (who) => nearMisses(rows, "not mealtime insulin", who));
    count({ marta: 0, henk: 1 }, (who) => nearMisses(rows, "another person's pen", who));
    count({ marta: 1, henk: 2 }, (who) => nearMisses(rows, "reading: reading", who));
    count({ marta: 2, henk: 1 }, (who) => nearMisses(rows, "second dose", who));
    count({ marta: 2, henk: 0 }, (who) => nearMisses(rows, "needle out early", who));
    count({ marta: 3, henk: 2 }, (who) => nearMisses(rows, "drying cut short", who));
    expect(of(rows, "near miss").length).toBe(21);
    expect(of(rows, "walk ended").filter((row) => row.event.how === "dose already taken").length).toBe(3);
  });

  it("holds what happens once", () => {
    const byTelephone = of(rows, "dose told").filter((row) => row.event.told.by !== "card");
    expect(byTelephone.map((row) => [row.person, row.event.told.by])).toEqual([["marta", "Nurse Adeyemi"]]);
    expect(of(rows, "needle question answered").map((row) => [row.person, row.event.wentIn])).toEqual([["marta", "yes"]]);
    const others = of(rows, "mishap opened").filter((row) => !["half eaten", "hardly eaten"].includes(row.event.kind));
    expect(others.map((row) => [row.person, row.event.kind])).toEqual([["henk", "number left in the window"]]);
    expect(
      of(rows, "walk ended")
        .filter((row) => row.event.how === "stopped")
        .map((row) => row.person),
    ).toEqual(["henk"]);
    expect(of(rows, "spot declined").length).toBe(3 + 2 + 1);
    expect(
      of(rows, "no-go place marked")
        .map((row) => row.event.noGo.kind)
        .sort(),
    ).toEqual(["lump", "scar", "sore", "sore", "sore", "sore", "sore"]);
    count({ marta: 3, henk: 3 }, (who) => of(rows, "felt for lumps", who).filter((row) => row.event.found === "none").length);
    count({ marta: 0, henk: 12 }, (who) => of(rows, "exercise answered", who).filter((row) => row.event.hard).length);
  });

  it("has Henk away for two days, one day without an entry, one evening off, each dose told later", () => {
    const told = of(rows, "dose told later");
    expect(told.map((row) => [row.person, row.event.units])).toEqual([
      ["henk", 6.5],
      ["marta", 7],
      ["henk", 6.5],
    ]);
    const away = told[0] ? dayOf(told[0]) : "";
    expect(of(rows, "walk opened", "henk").filter((row) => Math.abs(daysBetween(dayOf(row), away)) === 0)).toEqual([]);
    const gaps = rows.flatMap((row, i) => (i > 0 && row.at.wall - (rows[i - 1]?.at.wall ?? 0) > DAY ? [row] : []));
    expect(gaps.length).toBe(1);
    // Whoever comes first after the empty day is asked, because the log cannot vouch for it.
    expect(
      of(rows, "taken answered")
        .filter((row) => row.event.how === "said not taken")
        .map((row) => dayOf(row)),
    ).toEqual([dayOf(gaps[0] as Stored), dayOf(gaps[0] as Stored)]);
    const starts = of(rows, "tablet started").length;
    expect(starts).toBeGreaterThanOrEqual(20);
    expect(starts).toBeLessThanOrEqual(45);
    expect(of(rows, "clock agreed").length).toBeGreaterThanOrEqual(starts - 1);
  });

  it("tells no dose above the card of that day, and names the card of that day", () => {
    const signed = of(rows, "card signed");
    expect(signed.map((row) => row.person)).toEqual(["marta", "henk", "marta"]);
    expect(daysBetween(dayOf(rows[0] as Stored), dayOf(signed[2] as Stored))).toBe(31);
    const wrong = of(rows, "dose told").filter((row) => {
      const inForce = signed.findLast((card) => card.person === row.person && card.seq < row.seq)?.event;
      const named = row.event.told.cardHash === inForce?.cardHash && row.card === inForce.cardHash;
      return !named || row.event.told.units > (inForce.card.largestDose ?? 0);
    });
    expect(wrong).toEqual([]);
  });

  it("injects only what was told, from a pen inside its days and its units", () => {
    const wrong: Stored[] = [];
    const told = new Map(of(rows, "dose told").map((row) => [row.walk, row.event.told.units]));
    const used = new Map<string, number>();
    const openedOn = new Map<string, string>();
    const inUseDays = new Map(of(rows, "pen added").map((row) => [row.event.pen.id, row.event.pen.inUseDays]));
    for (const row of rows) {
      const { event } = row;
      if (event.type === "pen opened") openedOn.set(event.pen, event.on);
      if (event.type !== "injected") continue;
      const pen = event.pen ?? "";
      used.set(pen, (used.get(pen) ?? 0) + (event.units ?? 0) + 2);
      const days = daysBetween(openedOn.get(pen) ?? "", dayOf(row));
      const asTold = (event.units ?? 0) + (event.left ?? 0) === told.get(row.walk);
      if (!asTold || days > (inUseDays.get(pen) ?? 0) || (used.get(pen) ?? 0) > 300) wrong.push(row);
    }
    expect(wrong).toEqual([]);
    expect(of(rows, "pen retired").length).toBeGreaterThanOrEqual(14);
    for (const me of Object.values(demo.state.people)) {
      for (const { pen, openedOn: on, retired } of me.pens) {
        if (!retired && on !== null)
          expect(daysBetween(on, localParts(demo.now.wall, demo.now.offset).date)).toBeLessThanOrEqual(pen.inUseDays);
      }
    }
  });
});

describe("the demo's drawer", () => {
  it("opens with the PIN that the page names", async () => {
    expect(await checkPin(DEMO_PIN, demoKeeper.pin)).toBe("right");
  });
});
