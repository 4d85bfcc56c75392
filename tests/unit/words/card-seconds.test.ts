// From the wash to the needle the card's own seconds and units are said and waited for, at the long pace and at the familiar one.
// Press until the window shows 0, then hold and count: leaflets of pens; the window is asked for openly: our choice, no source.
import { describe, expect, it } from "vitest";
import { holdCount } from "#app/hold-count.ts";
import { GUARDS } from "#walk/guards.ts";
import { HELP } from "#words/en/fixed.ts";
import { FAMILIAR_AFTER, sayWalk } from "#words/en/steps.ts";
import { bring, odileAlone } from "../../kit/explore/at-table.ts";
import { fixedCard } from "../../kit/people.ts";
import type { Table } from "../../kit/table.ts";

const care = { ...fixedCard.care, washSeconds: 30, primeUnits: 3, dryingSeconds: 40, holdSeconds: 7 };
const says = (t: Table) => {
  const say = sayWalk(t.state, t.now, GUARDS);
  return { title: say?.title, said: (say?.lines ?? []).join(" ") };
};
const wait = (t: Table) => Object.values(t.state.people)[0]?.walk?.wait?.ms;

function table(cleanWalks: number): Table {
  const t = odileAlone({ care });
  const [id, me] = Object.entries(t.state.people)[0] ?? [];
  if (id && me) t.state = { ...t.state, people: { ...t.state.people, [id]: { ...me, cleanWalks } } };
  return t;
}

describe.each([
  ["long", 0],
  ["familiar", FAMILIAR_AFTER],
] as const)("the card's own numbers, at the %s pace", (pace, cleanWalks) => {
  const long = pace === "long";
  const to = (stop: Parameters<typeof bring>[1]) => bring(table(cleanWalks), stop);

  it("are 30 seconds for the hands, 3 units for the test of the pen, 40 seconds for the skin", () => {
    const washing = to("wash").send({ do: "begin wait" });
    expect([says(washing).title, wait(washing)]).toEqual(["Wash for 30 seconds", 30_000]);
    const pen = to("pen").send({ do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" });
    pen.send({ do: "needle fitted" });
    expect(says(pen).said).toBe(long ? "Dial 3 units. Press. Did a stream come?" : "Test with 3 units. A stream?");
    const skin = to("skin").send({ do: "skin cleaned", how: "wiped" });
    expect([says(skin).title, wait(skin)]).toEqual(["Let it dry for 40 seconds", 40_000]);
  });

  it("are 7 seconds for the hold: press until 0, counted to seven, then out", () => {
    const t = to("inject");
    expect(says(t)).toEqual({ title: "Inject now", said: "Straight in. Press until 0 and hold." });
    t.send({ do: "button is down" });
    expect([says(t).title, wait(t)]).toEqual(["Hold it in", 7000]);
    expect(says(t).said).toBe(long ? "Hold still." : "");
    const count = holdCount();
    const counted: (string | null)[] = [];
    for (let second = 1; second <= 9; second++) {
      t.pass(1);
      counted.push(count(t.state, t.now));
      if (second === 6) expect(t.try({ do: "wait is over" }).refusal).not.toBeNull();
    }
    expect(counted).toEqual(["1", "2", "3", "4", "5", "6", "7", null, null]);
    expect(says(t)).toEqual({ title: "Take it out", said: long ? "Take the needle out." : "Out." });
    t.send({ do: "wait is over" });
    expect(says(t)).toEqual({ title: "Look at the window", said: long ? "What does the window show?" : "The window shows?" });
    t.send({ do: "window not seen" });
    expect(says(t).said).toBe(long ? "Is the button flat, or does it stand out?" : "Button flat, or standing out?");
  });
});

describe("the help at the needle", () => {
  it("says what the step says: straight in, press, hold for the count", () => {
    for (const word of [/straight in/i, /press\b/i, /hold for the count/i]) expect(HELP.inject.join(" ")).toMatch(word);
  });
});
