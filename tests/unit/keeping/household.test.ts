import { describe, expect, it } from "vitest";
import { happened } from "#events/happened.ts";
import { draftOfHousehold, setHousehold } from "#keeping/household.ts";
import { insulinId } from "#keeping/insulin.ts";
import { addKeeper, keeperProblems } from "#keeping/keepers.ts";
import { addPen, retirePen } from "#keeping/pens.ts";
import { addPerson, changePerson, draftOfPerson } from "#keeping/people.ts";
import { afterWrong, NO_TRIES, pinWait, settled, whyNotPin } from "#keeping/pin.ts";
import { bram, odile, odilePen } from "../../kit/people.ts";

const form = { ...draftOfPerson(odile), "person.age": "adult", "person.gives": "pen" };
const whys = (set: { ok: boolean } & object) =>
  "problems" in set ? (set.problems as { field: string; why: string }[]).map((p) => `${p.field}: ${p.why}`) : set;

describe("a new person", () => {
  it("is set up as typed, in a shape the log takes", () => {
    const set = addPerson(form, "p1", []);
    expect(set).toEqual({
      ok: true,
      events: [{ type: "person added", person: { ...odile, id: "p1", readsFrom: "finger", leftOutSugars: [] } }],
    });
    if (set.ok) expect(happened.safeParse(set.events[0]).success).toBe(true);
  });

  it("is refused in one word where the tool is not for them, before anything else is said", () => {
    expect(addPerson({ "person.age": "child" }, "p1", [])).toEqual({ ok: false, notFor: "children" });
    expect(addPerson({ ...form, "person.gives": "pump" }, "p1", [])).toEqual({ ok: false, notFor: "pumps" });
    expect(addPerson({ ...form, "person.gives": "syringe" }, "p1", [])).toEqual({ ok: false, notFor: "syringes" });
  });

  it("must say whether it is grown up and what gives the insulin", () => {
    expect(whys(addPerson({ ...form, "person.age": "", "person.gives": "" }, "p1", []))).toEqual([
      "person.age: not chosen",
      "person.gives: not chosen",
    ]);
  });

  it("never shares a name or a shape with somebody of the house", () => {
    expect(whys(addPerson({ ...form, "person.name": "bram" }, "p1", [bram]))).toEqual(["person.name: taken"]);
    expect(whys(addPerson({ ...form, "person.shape": "square" }, "p1", [bram]))).toEqual(["person.shape: taken"]);
  });

  it("has a usual band that goes up, within what meters show", () => {
    expect(whys(addPerson({ ...form, "person.usualBand.high": "70" }, "p1", []))).toEqual(["person.usualBand.high: upside down"]);
    expect(whys(addPerson({ ...form, "person.usualBand.low": "4.5" }, "p1", []))).toEqual(["person.usualBand.low: too many decimals"]);
  });

  it("has the usual measures where none were taken, and true ones within reason", () => {
    const blank = Object.fromEntries(Object.entries(form).filter(([field]) => !field.startsWith("person.body")));
    const set = addPerson(blank, "p1", []);
    expect(set.ok && set.events[0]).toMatchObject({ person: { body: { fingerMm: 17, handMm: 80 } } });
    expect(whys(addPerson({ ...form, "person.body.fingerMm": "180" }, "p1", []))).toEqual(["person.body.fingerMm: too large"]);
  });

  it("keeps its glucagon kit step by step, and the sugars that are not to be offered", () => {
    const steps = ["Take off the cap.", "Press it on the thigh."];
    const typed = { ...form, "person.kit.0": steps[0] ?? "", "person.kit.2": steps[1] ?? "", "person.noSugar.honey": "yes" };
    const set = addPerson(typed, "p1", []);
    expect(set.ok && set.events[0]).toMatchObject({ person: { glucagonSteps: steps, leftOutSugars: ["honey"] } });
    expect(whys(addPerson({ ...form, "person.kit.0": "x".repeat(91) }, "p1", []))).toEqual(["person.kit.0: too long"]);
  });

  it("keeps what it does not show when another field is typed over", () => {
    const person = { ...odile, glucagonSteps: ["Call first."], leftOutSugars: ["honey"] };
    const changed = changePerson({ ...draftOfPerson(person), "person.helperOnly": "yes" }, "odile", [bram], "k1");
    expect(changed.ok && changed.events[0]).toMatchObject({ person: { ...person, helperOnly: true } });
  });

  it("wants grams for a usual meal that has a name", () => {
    expect(whys(addPerson({ ...form, "person.usualMeals.1.name": "soup", "person.usualMeals.1.meal": "lunch" }, "p1", []))).toEqual([
      "person.usualMeals.1.grams: empty",
    ]);
  });
});

describe("a person's settings", () => {
  it("can be typed over, and name the keeper", () => {
    const changed = changePerson({ ...draftOfPerson(odile), "person.helperOnly": "yes" }, "odile", [bram], "k1");
    expect(changed).toEqual({
      ok: true,
      events: [{ type: "person changed", person: { ...odile, readsFrom: "finger", helperOnly: true, leftOutSugars: [] }, keeper: "k1" }],
    });
  });
});

describe("a new pen", () => {
  const pen = {
    "pen.device": "pen",
    "pen.kind": "mealtime",
    "pen.insulin": "card",
    "pen.cloudy": "no",
    "pen.mark": "one rubber band",
    "pen.unitsPerClick": "1",
    "pen.unitsWhenOpened": "300",
    "pen.openedOn": "1 June 2026",
    "pen.inUseDays": "28",
    "pen.expiresOn": "31 March 2027",
  };
  const q = {
    id: "odile-meal",
    person: "odile",
    today: "2026-06-03",
    others: [],
    cardInsulin: { id: "lispro-100", name: "insulin lispro" },
    cardBackground: [],
  };

  it("is set up as typed, in a shape the log takes", () => {
    const set = addPen(pen, q);
    expect(set).toEqual({ ok: true, events: [{ type: "pen added", pen: odilePen }] });
    if (set.ok) expect(happened.safeParse(set.events[0]).success).toBe(true);
  });

  it("is refused where it is a syringe or a pump", () => {
    expect(addPen({ "pen.device": "syringe" }, q)).toEqual({ ok: false, notFor: "syringes" });
    expect(addPen({ ...pen, "pen.device": "pump" }, q)).toEqual({ ok: false, notFor: "pumps" });
  });

  it("has a mark that fingers find on no other pen of the house", () => {
    expect(whys(addPen({ ...pen, "pen.mark": "One Rubber Band" }, { ...q, others: [odilePen] }))).toEqual(["pen.mark: taken"]);
  });

  it("is refused past its date, opened in the future, or open too long", () => {
    expect(whys(addPen({ ...pen, "pen.expiresOn": "2 June 2026" }, q))).toEqual(["pen.expiresOn: date has passed"]);
    expect(whys(addPen({ ...pen, "pen.openedOn": "4 June 2026" }, q))).toEqual(["pen.openedOn: date is to come"]);
    expect(whys(addPen({ ...pen, "pen.openedOn": "5 May 2026" }, q))).toEqual(["pen.openedOn: open too long"]);
    expect(addPen({ ...pen, "pen.openedOn": "6 May 2026" }, q).ok).toBe(true);
  });

  it("may be unopened, and need not say how much is in it", () => {
    const set = addPen({ ...pen, "pen.openedOn": "", "pen.unitsWhenOpened": "" }, q);
    expect(set.ok && set.events[0]).toMatchObject({ pen: { openedOn: null, unitsWhenOpened: null } });
  });

  it("takes the card's background insulin for a long-acting pen, and never its mealtime insulin", () => {
    const night = { ...pen, "pen.kind": "long-acting", "pen.insulin": "card" };
    const glargine = { id: "glargine-100", name: "insulin glargine" };
    const set = addPen(night, { ...q, cardBackground: [glargine] });
    expect(set.ok && set.events[0]).toMatchObject({ pen: { insulinId: "glargine-100", insulinName: "insulin glargine" } });
    expect(whys(addPen(night, q))).toEqual(["pen.insulin: not chosen"]);
    expect(whys(addPen(night, { ...q, cardBackground: [glargine, { id: "nph-100", name: "insulin isophane" }] }))).toEqual([
      "pen.insulin: not chosen",
    ]);
  });

  it("names another insulin and its strength where it is not the card's", () => {
    const night = {
      ...pen,
      "pen.kind": "long-acting",
      "pen.insulin": "other",
      "pen.insulinName": "Insulin glargine",
      "pen.unitsPerMl": "300",
    };
    const set = addPen(night, q);
    expect(set.ok && set.events[0]).toMatchObject({
      pen: { insulinId: "glargine-300", insulinName: "Insulin glargine", kind: "long-acting" },
    });
    expect(whys(addPen({ ...night, "pen.insulinName": "", "pen.unitsPerMl": "3" }, q))).toEqual([
      "pen.insulinName: empty",
      "pen.unitsPerMl: too small",
    ]);
  });

  it("can be put aside", () => {
    expect(retirePen("odile-meal", "empty")).toEqual([{ type: "pen retired", pen: "odile-meal", why: "empty" }]);
  });
});

describe("the name of an insulin", () => {
  it("is one and the same however it is written", () => {
    expect(["insulin lispro", "Insulin Lispro", "lispro"].map((name) => insulinId(name, 100))).toEqual(Array(3).fill("lispro-100"));
    expect(insulinId("insulin lispro", 200)).not.toBe("lispro-100");
  });
});

describe("the household", () => {
  it("keeps its own emergency number", () => {
    expect(setHousehold({ "household.country": "UK", "household.emergencyNumber": "999" }, "home")).toEqual({
      ok: true,
      events: [{ type: "household begun", household: { kind: "home", country: "UK", emergencyNumber: "999" } }],
    });
    expect(whys(setHousehold({ "household.emergencyNumber": "help" }, "home"))).toEqual([
      "household.country: not chosen",
      "household.emergencyNumber: not a telephone number",
    ]);
  });
});

describe("a keeper", () => {
  const typed = { "keeper.name": "Ines", "keeper.pin": "2580", "keeper.again": "2580" };

  it("has a name and a PIN of which only the hash is kept", () => {
    expect(keeperProblems(typed, [])).toEqual([]);
    const events = addKeeper(typed, "k1", { salt: "ab", hash: "cd", rounds: 600_000 });
    expect(events).toEqual([
      { type: "keeper added", keeper: { id: "k1", name: "Ines", pin: { salt: "ab", hash: "cd", rounds: 600_000 } } },
    ]);
    expect(JSON.stringify(events)).not.toContain("2580");
  });

  it("is refused a PIN that is short, long, no digits, easily guessed or typed differently", () => {
    expect(["", "258", "258036914", "25a0", "1111", "1234", "8765", "2580"].map((pin) => whyNotPin(pin, "2580"))).toEqual([
      "empty",
      "too short",
      "too long",
      "not digits",
      "easily guessed",
      "easily guessed",
      "easily guessed",
      null,
    ]);
    expect(whyNotPin("2580", "2508")).toBe("not the same");
  });

  it("never sees the PIN repeated in a sentence, and shares no name", () => {
    const problems = keeperProblems({ ...typed, "keeper.again": "2508", "keeper.name": "ines" }, [{ name: "Ines" }]);
    expect(problems).toEqual([
      { field: "keeper.name", got: "ines", why: "taken", by: "Ines" },
      { field: "keeper.again", got: "", why: "pin", pin: "not the same" },
    ]);
  });
});

describe("wrong tries", () => {
  const tried = (n: number, at = 1_000_000) =>
    Array.from({ length: n }).reduce((tries: typeof NO_TRIES) => afterWrong(tries, at), NO_TRIES);

  it("cost nothing two times, then longer and longer, an hour at most", () => {
    const waits = [0, 1, 2, 3, 4, 5, 6, 12, 40].map((n) => pinWait(tried(n), 1_000_000) / 1000);
    expect(waits).toEqual([0, 0, 0, 30, 60, 120, 240, 3600, 3600]);
  });

  it("are over after their time", () => {
    expect(pinWait(tried(3), 1_029_999)).toBe(1);
    expect(pinWait(tried(3), 1_030_000)).toBe(0);
  });

  it("are not cut short by a clock set back, nor made to last for ever", () => {
    const tries = tried(3);
    expect(pinWait(tries, 500_000)).toBe(30_000);
    const back = settled(tries, 500_000);
    expect(pinWait(back, 500_000)).toBe(30_000);
    expect(pinWait(back, 530_000)).toBe(0);
    expect(settled(tries, 2_000_000)).toEqual(tries);
  });
});

describe("the hours of the house", () => {
  const home = { "household.country": "US", "household.emergencyNumber": "911" };
  const set = (more: Record<string, string>) => setHousehold({ ...home, ...more }, "home");

  it("are kept as typed: who hears the tablet, and when no reminder sounds", () => {
    const typed = {
      "household.hearer": "between",
      "household.hearer.from": "5:30 pm",
      "household.hearer.until": "08:00",
      "household.quietHours.from": "9 pm",
      "household.quietHours.until": "7:00 am",
    };
    const done = set(typed);
    expect(done.ok && done.events[0]).toMatchObject({
      household: { hearer: { who: "between", from: "17:30", until: "08:00" }, quietHours: { from: "21:00", until: "07:00" } },
    });
    if (done.ok) expect(happened.safeParse(done.events[0]).success).toBe(true);
  });

  it("are left out where nothing was typed, and the hours of nobody are not asked for", () => {
    expect(set({})).toEqual({
      ok: true,
      events: [{ type: "household begun", household: { kind: "home", country: "US", emergencyNumber: "911" } }],
    });
    const nobody = set({ "household.hearer": "nobody", "household.hearer.from": "soon" });
    expect(nobody.ok && nobody.events[0]).toMatchObject({ household: { hearer: { who: "nobody" } } });
  });

  it("are refused where one end is missing or is no time", () => {
    expect(whys(set({ "household.hearer": "between", "household.hearer.from": "17:30" }))).toEqual(["household.hearer.until: empty"]);
    expect(whys(set({ "household.quietHours.from": "late", "household.quietHours.until": "06:00" }))).toEqual([
      "household.quietHours.from: not a time",
    ]);
  });

  it("come back into the form as they were", () => {
    const household = {
      kind: "home",
      country: "UK",
      emergencyNumber: "999",
      hearer: { who: "between", from: "17:30", until: "08:00" },
      quietHours: { from: "21:00", until: "07:00" },
    } as const;
    expect(setHousehold(draftOfHousehold(household), "home")).toEqual({ ok: true, events: [{ type: "household begun", household }] });
  });
});

describe("the hours of a person's day", () => {
  const mealHours = [{ meal: "lunch", from: "12:00", until: "13:30" }] as const;

  it("are kept meal by meal, with the readings that are due besides, and come back into the form", () => {
    const person = { ...odile, mealHours: [...mealHours], readingTimes: ["22:00", "03:00"] };
    const set = changePerson(draftOfPerson(person), "odile", [], "k1");
    expect(set.ok && set.events[0]).toMatchObject({ person: { mealHours, readingTimes: ["22:00", "03:00"] } });
    if (set.ok) expect(happened.safeParse(set.events[0]).success).toBe(true);
  });

  it("end after they begin, and need both ends", () => {
    const typed = { ...form, "person.mealHours.lunch.from": "13:00", "person.mealHours.lunch.until": "12:00" };
    expect(whys(changePerson(typed, "p1", [], "k1"))).toEqual(["person.mealHours.lunch.until: upside down"]);
    expect(whys(changePerson({ ...form, "person.mealHours.lunch.from": "13:00" }, "p1", [], "k1"))).toEqual([
      "person.mealHours.lunch.until: empty",
    ]);
  });
});
