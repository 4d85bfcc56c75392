// The watch without a meal after a start of the app: nobody knows how long the insulin has been in until day and time were agreed.
// Hours: printed actions named in rules/glucose/watch.ts; half an hour between readings is our choice, and the card's to change.
import { describe, expect, it } from "vitest";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sceneKey } from "#walk/scene-key.ts";
import { sayWalk } from "#words/en/steps.ts";
import { bring, led, odileAlone, walk } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const MINUTE = 60;
const HOUR = 60 * MINUTE;
const sugar = { do: "took sugar", food: "glucose-tablets", grams: 16 } as const;
const good = (t: Table): Table => t.number("recheck after low", "110");
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const title = (t: Table) => sayWalk(t.state, t.now, GUARDS)?.title;

/** A meal that did not come, sugar taken, and then the tablet started again, so many hours after the needle. */
function restarted(hours: number, watchMinutes: number | null = null): Table {
  const t = odileAlone({ care: { ...fixedCard.care, watchMinutes } });
  bring(t, "eat").send({ do: "cannot eat" }, sugar);
  t.pass(hours * HOUR);
  t.restart();
  return t;
}

describe("insulin is in, no meal came, and the app started again", () => {
  it("asks for day and time after a good reading, and ends once they were agreed and the insulin's main action is over", () => {
    const t = good(restarted(5));
    expect(t.step()).toBe("low");
    expect(title(t)).toBe("Day and time");
    const before = sceneKey(t.state, t.now);
    t.send({ do: "agree clock" });
    expect(sceneKey(t.state, t.now)).not.toBe(before);
    expect(title(t)).toBe("Keep watch");
    t.pass(30 * MINUTE);
    expect(good(t).step()).toBe("done");
  });

  it("watches on after day and time were agreed while the insulin still works", () => {
    const t = good(restarted(1)).send({ do: "agree clock" });
    t.pass(30 * MINUTE);
    expect(good(t).step()).toBe("low");
    t.pass(3 * HOUR);
    expect(good(t).step()).toBe("done");
  });

  it("never ends by a good reading alone while the clock is in doubt, however many come", () => {
    const t = restarted(9);
    for (let i = 0; i < 4; i++) {
      expect(good(t).step()).toBe("low");
      t.pass(30 * MINUTE);
    }
  });

  it("ends with food whatever the clock says", () => {
    expect(good(restarted(1)).send({ do: "eating" }).step()).toBe("done");
    expect(good(restarted(1)).send({ do: "doubt clock" }, { do: "eating" }).step()).toBe("done");
  });

  it("does not ask again whoever said that the clock is wrong, until it was set", () => {
    const t = good(restarted(5)).send({ do: "doubt clock" });
    expect(title(t)).toBe("Keep watch");
    expect(doing(t)).not.toContain("agree clock");
    t.now = { ...t.now, wall: t.now.wall - 2 * HOUR * 1000 };
    t.send({ do: "pass time" });
    expect(title(t)).toBe("Day and time");
  });

  it("asks nothing before sugar: a low reading is treated first", () => {
    const t = restarted(5);
    expect(led(t, { do: "read word", word: "LO", via: "touch" })).not.toContain("clock agreed");
    expect(doing(t)).toContain("took sugar");
    expect(doing(t)).not.toContain("agree clock");
  });
});

describe("the watch's interval", () => {
  it("is half an hour, or what the card says", () => {
    const of = (minutes: number | null) => {
      const t = odileAlone({ care: { ...fixedCard.care, watchMinutes: minutes } });
      bring(t, "eat").send({ do: "cannot eat" }, sugar);
      t.pass(15 * MINUTE);
      return walk(good(t)).wait?.ms;
    };
    expect(of(null)).toBe(30 * MINUTE * 1000);
    expect(of(45)).toBe(45 * MINUTE * 1000);
  });

  it("is the default on a card that was signed before it was asked for", () => {
    const t = odileAlone();
    bring(t, "eat").send({ do: "cannot eat" }, sugar);
    t.pass(15 * MINUTE);
    expect(walk(good(t)).wait?.ms).toBe(30 * MINUTE * 1000);
  });
});
