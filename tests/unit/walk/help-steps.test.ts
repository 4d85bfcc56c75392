// Severe: nothing by mouth, the call, glucagon by the kit's own leaflet, on the side (ADA leaflet and patient page; general first-aid teaching; facts O14).
import { describe, expect, it } from "vitest";
import type { Person } from "#events/person.ts";
import { sugarFoods } from "#rules/food/sugar.ts";
import { GUARDS } from "#walk/guards.ts";
import { offers } from "#walk/offers.ts";
import { sugarsOffered } from "#walk/steps/low.ts";
import { sayWalk } from "#words/en/steps.ts";
import { led, odileAlone } from "../../kit/explore/at-table.ts";
import type { Table } from "../../kit/table.ts";

const KIT = ["Take the cap off.", "Put the tip into one nostril.", "Press the plunger all the way."];
const doing = (t: Table) => offers(t.state, t.now).flatMap((o) => (o.offer === "press" ? [o.intent.do] : []));
const says = (t: Table) => sayWalk(t.state, t.now, GUARDS);
const next = { do: "help step done" } as const;
const severe = (person: Partial<Person> = {}) => odileAlone({}, person).send({ do: "open low", person: "odile" }, { do: "cannot swallow" });

describe("somebody who cannot swallow or does not wake", () => {
  it("is called for first, by the household's own number, with nothing by mouth and no insulin", () => {
    expect(says(severe())).toMatchObject({
      lines: ["Call 911 now.", "Put nothing in the mouth. Give no insulin.", "Then press That is done."],
      big: { value: "911" },
    });
    expect(doing(severe())).not.toContain("took sugar");
  });

  it("is given the kit's own steps as a keeper typed them, one a screen, then laid on the side and stayed with", () => {
    const t = severe({ glucagonSteps: KIT });
    const heard: string[] = [];
    for (let i = 0; i < 6; i++) {
      heard.push(says(t)?.lines[0] ?? "");
      if (i < 5) t.send(next);
    }
    expect(heard).toEqual(["Call 911 now.", ...KIT, "Turn them on their side.", "Stay with them until help comes."]);
    expect(doing(t)).not.toContain("help step done");
    expect(says(t)?.lines).toContain("Not awake after 15 minutes? A new kit may be used.");
  });

  it("is not told of glucagon where no kit was typed", () => {
    const t = severe().send(next, next);
    expect(says(t)?.title).toBe("Stay with them");
    expect(says(t)?.lines.join(" ")).not.toContain("kit");
  });

  it("keeps the number to call on the last screen, and stays there", () => {
    const t = severe().send(next, next);
    expect(says(t)?.big?.value).toBe("911");
    expect(led(t, next)).toEqual([]);
    t.send({ do: "leave" }, { do: "turn to", person: "odile" });
    expect(says(t)?.title).toBe("Stay with them");
  });
});

describe("the sugars on offer", () => {
  it("begin with glucose, and each is about 15 g: four tablets of 4 g are enough, three are not (facts O15)", () => {
    const [first] = sugarsOffered();
    expect(first).toMatchObject({ id: "glucose-tablets", amount: "four tablets", grams: 16 });
    expect(((first?.grams ?? 0) / 4) * 3).toBeLessThan(15);
    for (const { grams } of sugarsOffered()) expect(grams).toBeGreaterThanOrEqual(14);
  });

  it("leave out what the clinic bars or the kitchen does not have, and never become none", () => {
    const person = { leftOutSugars: ["glucose-tablets", "juice-orange"] };
    const t = odileAlone({}, person).send({ do: "open low", person: "odile" });
    const foods = offers(t.state, t.now).flatMap((o) => (o.offer === "press" && o.intent.do === "took sugar" ? [o.intent.food] : []));
    expect(foods).toHaveLength(4);
    expect(foods).not.toContain("glucose-tablets");
    expect(foods).not.toContain("juice-orange");
    const all = sugarFoods().map((s) => s.id);
    expect(sugarsOffered(all)[0]?.id).toBe("glucose-tablets");
  });

  it("hold no hard sweets, whatever else is left out", () => {
    const others = sugarFoods().flatMap((s) => (s.id === "candy-hard" || s.id === "raisins" ? [] : [s.id]));
    expect(sugarsOffered(others).map((s) => s.id)).toEqual(["raisins"]);
  });
});
