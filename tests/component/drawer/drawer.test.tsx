// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen, within } from "@testing-library/preact";
import { afterEach, describe, expect, it, vi } from "vitest";
import type { DoseCard } from "#events/card.ts";
import type { Of } from "#events/happened.ts";
import { units } from "#events/quantity.ts";
import type { NewFact } from "#walk/decide.ts";
import { fieldName } from "#words/en/drawer/fields.ts";
import { ketoneCard, plusCard } from "../../kit/cards.ts";
import { bandsCard, fixedCard, odile, odilePen } from "../../kit/people.ts";
import { typed } from "../../unit/keeping/typing.ts";
import { buttons } from "../calm-press.ts";
import {
  begun,
  CODE,
  choose,
  enter,
  fill,
  hashOf,
  ines,
  Kitchen,
  NOW,
  openWithPin,
  PICTURE,
  space,
  type,
  withFacts,
} from "./kitchen-drawer.tsx";

afterEach(() => cleanup());

const heading = () => screen.getByRole("heading", { level: 1 }).textContent;
const trouble = () => screen.queryByRole("alert")?.textContent ?? "";
const added: NewFact = { person: "odile", walk: null, event: { type: "person added", person: odile } };
const home = withFacts([begun, ines, added]);

/** Only fields that the keeper must or may type; blanks are left alone. */
const withoutDefaults = (draft: ReturnType<typeof typed>) =>
  Object.fromEntries(Object.entries(draft).filter(([field, value]) => value !== "" && !(field.endsWith(".call") && value === "no")));

async function toFirstTyping() {
  await openWithPin();
  await enter("Dose card of Odile");
  await enter("Type a new card");
}

/** Reads part after part against the paper. */
async function readAll() {
  for (let i = 0; i < 20 && heading() !== "Sign the card"; i++) await enter("I read it. It matches");
  expect(heading()).toBe("Sign the card");
}

describe("a new household", () => {
  it("asks for its numbers, then for the first keeper, and opens", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen stored={stored} />);
    expect(heading()).toBe("Your household");
    choose("household.country", "UK");
    expect(screen.getByLabelText<HTMLInputElement>("Emergency number").value).toBe("999");
    await enter("Save");
    expect(heading()).toBe("The first keeper");
    fill({ "keeper.name": "Ines", "keeper.pin": "2580", "keeper.again": "2580" });
    await enter("Make this keeper");
    expect(heading()).toBe("Drawer");
    expect(stored.map((fact) => fact.event)).toEqual([
      { type: "household begun", household: { kind: "home", country: "UK", emergencyNumber: "999" } },
      { type: "keeper added", keeper: { id: "id-1", name: "Ines", pin: { salt: "", hash: "0852", rounds: 1 } } },
    ]);
    expect(screen.getByText("Nobody is set up yet. Add a person first.")).toBeTruthy();
  });

  it("does not take two PINs that differ, and keeps the name", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={withFacts([begun])} stored={stored} />);
    fill({ "keeper.name": "Ines", "keeper.pin": "2580", "keeper.again": "2508" });
    await enter("Make this keeper");
    expect(heading()).toBe("The first keeper");
    expect(trouble()).toContain("1 answer needs another look");
    expect(screen.getByText("Two PINs were read. They are not the same. Type the PIN again.")).toBeTruthy();
    expect(screen.getByLabelText<HTMLInputElement>("Your name").value).toBe("Ines");
    expect(stored).toEqual([]);
  });

  it("says so where no PIN can be hashed, and makes no keeper", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={withFacts([begun])} stored={stored} hashPin={async () => "not supported"} />);
    fill({ "keeper.name": "Ines", "keeper.pin": "2580", "keeper.again": "2580" });
    await enter("Make this keeper");
    expect(trouble()).toContain("This address is not secure.");
    expect(stored).toEqual([]);
  });
});

describe("the way in", () => {
  it("opens to the right PIN only", async () => {
    render(<Kitchen start={home} />);
    expect(heading()).toBe("Ines, your PIN");
    await openWithPin("2581");
    expect(heading()).toBe("Ines, your PIN");
    expect(trouble()).toContain("It is not the PIN of this keeper.");
    await openWithPin("2580");
    expect(heading()).toBe("Drawer");
  });

  it("lets nobody type on and on: after three wrong tries even the right PIN waits", async () => {
    render(<Kitchen start={home} />);
    for (const pin of ["2581", "2582", "2583"]) await openWithPin(pin);
    expect(trouble()).toContain("Wait 30 seconds. Then type it again.");
    await openWithPin("2580");
    expect(heading()).toBe("Ines, your PIN");
  });

  it("shows nothing of the house before the PIN", () => {
    render(<Kitchen start={home} />);
    expect(buttons()).toEqual(["Close the drawer", "I forgot my PIN", "Open the drawer"]);
    expect(document.body.textContent).not.toContain("Odile");
  });
});

describe("a forgotten PIN", () => {
  const withCode = withFacts(
    [
      {
        person: null,
        walk: null,
        event: { type: "recovery code made", keeper: "k1", code: { salt: "", hash: [...CODE].reverse().join(""), rounds: 1 } },
      },
    ],
    home,
  );

  it("is replaced by the printed code, typed in small letters without dashes, and the code opens nothing again", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={withCode} stored={stored} />);
    await enter("I forgot my PIN");
    type("Printed code", "abcd efgh jklm npqr");
    await enter("Open the drawer");
    expect(heading()).toBe("Ines, a new PIN");
    fill({ "keeper.pin": "4711", "keeper.again": "4711" });
    await enter("Save");
    expect(heading()).toBe("Drawer");
    expect(stored.map((fact) => fact.event)).toEqual([
      { type: "keeper PIN changed", keeper: "k1", pin: { salt: "", hash: "1174", rounds: 1 }, by: "printed code" },
    ]);
    expect(screen.getByText("Ines has no printed code.")).toBeTruthy();
  });

  it("counts wrong codes with wrong PINs, and makes both wait", async () => {
    render(<Kitchen start={withCode} />);
    await openWithPin("2581");
    await enter("I forgot my PIN");
    for (const typed of ["ABCD-EFGH-JKLM-NPQS", "no code"]) {
      type("Printed code", typed);
      await enter("Open the drawer");
      expect(trouble()).toContain("It is not the code of this keeper.");
    }
    expect(trouble()).toContain("Wait 30 seconds. Then type it again.");
    type("Printed code", CODE);
    await enter("Open the drawer");
    expect(heading()).toBe("Ines, your printed code");
    await enter("Close the drawer");
    await openWithPin("2580");
    expect(heading()).toBe("Ines, your PIN");
  });

  it("has no other way in where no code was printed, and says so", async () => {
    render(<Kitchen start={home} />);
    await enter("I forgot my PIN");
    expect(trouble()).toContain("This keeper has no printed code.");
    expect(buttons()).toEqual(["Close the drawer"]);
  });

  it("is prepared for by a code that is shown once, after it was stored", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await openWithPin();
    await enter("Print a code for a forgotten PIN");
    expect(document.body.textContent).not.toContain(CODE);
    await enter("Make the code");
    expect(document.body.textContent).toContain(CODE);
    expect(stored.map((fact) => fact.event)).toMatchObject([{ type: "recovery code made", keeper: "k1" }]);
    await enter("Back to the drawer");
    expect(document.body.textContent).not.toContain(CODE);
  });

  it("shows no code that the disk refused", async () => {
    render(<Kitchen start={home} refuses="the disk is full" />);
    await openWithPin();
    await enter("Print a code for a forgotten PIN");
    await enter("Make the code");
    expect(trouble()).toContain("the disk is full");
    expect(document.body.textContent).not.toContain(CODE);
  });

  it("may be changed before it is forgotten", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await openWithPin();
    await enter("Change my PIN");
    fill({ "keeper.pin": "1234", "keeper.again": "1234" });
    await enter("Save");
    expect(stored).toEqual([]);
    fill({ "keeper.pin": "4711", "keeper.again": "4711" });
    await enter("Save");
    expect(stored.map((fact) => fact.event)).toMatchObject([{ type: "keeper PIN changed", keeper: "k1", by: "PIN" }]);
  });
});

describe("signing a card of bands, by keyboard only", { timeout: 30_000 }, () => {
  it("goes from the first typing to the signature", async () => {
    const stored: NewFact[] = [];
    const house = withFacts([begun, ines, added]);
    render(<Kitchen start={house} stored={stored} />);
    await toFirstTyping();
    expect(heading()).toBe("First typing");
    const draft = withoutDefaults(typed(bandsCard));
    fill(draft);
    await enter("First typing is done");
    expect(heading()).toBe("Second typing");
    fill(draft);
    await enter("Compare both typings");
    if (heading() === "Is that what the paper says?") {
      for (const box of screen.getAllByRole("checkbox")) space(box);
      await enter("Go on");
    }
    expect(heading()).toBe("Read aloud: Insulin and dates (1 of 11)");
    await enter("I read it. It matches");
    expect(screen.getByText("71 to 140 mg/dL: 4 units")).toBeTruthy();
    expect(buttons()).not.toContain("Sign the card");
    for (let i = 0; i < 7; i++) await enter("I read it. It matches");
    expect(heading()).toBe("Read aloud: Care (9 of 11)");
    expect(document.querySelector("dd")?.textContent).toBe("20 seconds (blank on the card: the usual)");
    await readAll();
    await enter("Sign the card");
    expect(heading()).toBe("Signed");
    expect(stored).toEqual([
      {
        person: "odile",
        walk: null,
        event: {
          type: "card signed",
          card: bandsCard,
          cardHash: hashOf(bandsCard),
          signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-06-03", typedTwice: true, readBack: true },
        },
      },
    ]);
  });

  it("shows the one field in which the second typing differs, and signs nothing", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await toFirstTyping();
    const draft = withoutDefaults(typed(fixedCard));
    fill(draft);
    await enter("First typing is done");
    fill({ ...draft, "meals.dinner.units": "80" });
    await enter("Compare both typings");
    expect(heading()).toBe("The two typings differ");
    const rows = within(screen.getByRole("table")).getAllByRole("row").slice(1);
    expect(rows.map((row) => [...row.children].map((cell) => cell.textContent))).toEqual([["Dinner: units", "8 units", "80 units"]]);
    expect(buttons()).not.toContain("I read it. It matches");
    expect(stored).toEqual([]);

    await enter("Change the second typing");
    expect(screen.getByLabelText<HTMLInputElement>("Dinner: units").value).toBe("80");
    type("Dinner: units", "8");
    await enter("Compare both typings");
    expect(heading()).toBe("Read aloud: Insulin and dates (1 of 11)");
  });

  it("compares, asks about and reads back high glucose and ill days, from a second typing that begins blank", async () => {
    const odd: DoseCard = {
      ...plusCard,
      ketones: { test: "urine plus signs", from: 400, whenIll: true, lines: [{ from: 4, says: "Ring the ward.", call: "clinic" }] },
      sickDay: { rules: ["Drink a glass of water each hour."], callWhen: "Call after 4 hours." },
    };
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await toFirstTyping();
    const draft = withoutDefaults(typed(odd));
    fill(draft);
    await enter("First typing is done");
    for (const field of ["insulin.name", "sickDay.rules.0", "sickDay.callWhen", "care.watchMinutes"])
      expect(screen.getByLabelText<HTMLInputElement>(fieldName(field)).value, field).toBe("");
    fill({ ...draft, "sickDay.callWhen": "Call after 14 hours.", "care.watchMinutes": "54" });
    await enter("Compare both typings");
    const rows = within(screen.getByRole("table")).getAllByRole("row").slice(1);
    expect(rows.map((row) => [...row.children].map((cell) => cell.textContent))).toEqual([
      ["When to call on an ill day", "Call after 4 hours.", "Call after 14 hours."],
      ["Readings while no meal comes, every", "45 minutes", "54 minutes"],
    ]);
    await enter("Change the second typing");
    fill({ "sickDay.callWhen": "Call after 4 hours.", "care.watchMinutes": "45" });
    await enter("Compare both typings");
    expect(heading()).toBe("Is that what the paper says?");
    for (const asked of ["Ketones: a test from 400 is unusual.", "Ketones: nobody is called at 2 plus."])
      expect(screen.getByRole("checkbox", { name: `${asked} The paper says so` })).toBeTruthy();
    for (const box of screen.getAllByRole("checkbox")) space(box);
    await enter("Go on");

    const read: string[] = [];
    const lines: string[] = [];
    for (let i = 0; i < 20 && heading() !== "Sign the card"; i++) {
      read.push(heading() ?? "");
      lines.push(...[...document.querySelectorAll(".sheet-line")].map((line) => [...line.children].map((c) => c.textContent).join(": ")));
      await enter("I read it. It matches");
    }
    expect(read.map((title) => title.slice(title.lastIndexOf("(")))).toEqual(Array.from({ length: 11 }, (_, i) => `(${i + 1} of 11)`));
    expect(lines).toEqual(
      expect.arrayContaining([
        "Readings while no meal comes, every: 45 minutes",
        "Ketones, line 1: 3 plus or more: Ring the ward. Call the clinic now.",
        "Ill days, rule 1: Drink a glass of water each hour.",
        "When to call on an ill day: Call after 4 hours.",
      ]),
    );

    // What was read back before, was another typing.
    await enter("Something differs. Change it");
    await enter("First typing is done");
    await enter("Compare both typings");
    for (const box of screen.queryAllByRole("checkbox")) space(box);
    if (screen.queryAllByRole("checkbox").length > 0) await enter("Go on");
    expect(heading()).toBe("Read aloud: Insulin and dates (1 of 11)");
    expect(buttons()).not.toContain("Sign the card");
    expect(stored).toEqual([]);
  });

  it("asks about an odd number before the reading aloud, each line by itself", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await toFirstTyping();
    const odd = { ...fixedCard, meals: { ...fixedCard.meals, dinner: { kind: "fixed units" as const, units: units(80) } } };
    for (const done of ["First typing is done", "Compare both typings"]) {
      fill(withoutDefaults(typed(odd)));
      await enter(done);
    }
    expect(heading()).toBe("Is that what the paper says?");
    await enter("Go on");
    expect(trouble()).toContain("Some lines are not ticked.");
    for (const box of screen.getAllByRole("checkbox")) space(box);
    await enter("Go on");
    await readAll();
    await enter("Sign the card");
    expect(stored).toHaveLength(1);
  });

  it("keeps every entry when some are missing, and says at each what to do", async () => {
    render(<Kitchen start={home} />);
    await toFirstTyping();
    fill({ "insulin.name": "insulin lispro", validFrom: "3/6/2026", "clinic.phone": "ask Ann" });
    await enter("First typing is done");
    expect(heading()).toBe("First typing");
    expect(document.activeElement?.getAttribute("role")).toBe("alert");
    expect(screen.getByLabelText<HTMLInputElement>("Name of the mealtime insulin").value).toBe("insulin lispro");
    expect(screen.getByLabelText<HTMLInputElement>(fieldName("validFrom")).value).toBe("3/6/2026");
    expect(screen.getByText("You typed 3/6/2026. That could be two days. Write the month as a word.")).toBeTruthy();
    expect(screen.getByText("You typed ask Ann. That cannot be dialed. Type digits and spaces.")).toBeTruthy();
    expect(screen.getAllByText("Nothing is chosen here yet. This answer is needed. Choose one.").length).toBeGreaterThan(5);
  });

  it("keeps the typing while the keeper looks at another page", async () => {
    render(<Kitchen start={home} />);
    await toFirstTyping();
    fill({ "insulin.name": "insulin lispro" });
    fireEvent.keyDown(window, { key: "Escape" });
    expect(heading()).toBe("Drawer");
    await enter("Dose card of Odile");
    expect(screen.getByLabelText<HTMLInputElement>("Name of the mealtime insulin").value).toBe("insulin lispro");
  });

  it("announces nothing that the disk refused", async () => {
    render(<Kitchen start={home} refuses="the disk is full" />);
    await toFirstTyping();
    for (const done of ["First typing is done", "Compare both typings"]) {
      fill(withoutDefaults(typed(fixedCard)));
      await enter(done);
    }
    await readAll();
    await enter("Sign the card");
    expect(heading()).toBe("Sign the card");
    expect(trouble()).toContain("the disk is full");
  });
});

describe("cards across time", { timeout: 30_000 }, () => {
  const signedOf = (card: DoseCard, cardHash: string): Of<"card signed"> => ({
    type: "card signed",
    card,
    cardHash,
    signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-06-01", typedTwice: true, readBack: true },
  });
  const signedEvent = (card: DoseCard, hash: string): NewFact => ({ person: "odile", walk: null, event: signedOf(card, hash) });
  const oneCard = withFacts([signedEvent(fixedCard, "h1")], home);

  async function typeTwice(card: DoseCard) {
    await toFirstTyping();
    for (const done of ["First typing is done", "Compare both typings"]) {
      fill(withoutDefaults(typed(card)));
      await enter(done);
    }
  }

  it("does not sign a card for days on which another holds, before the keeper says that the clinic ends the old one", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={oneCard} stored={stored} />);
    await typeTwice({ ...fixedCard, validFrom: "2026-06-10" });
    expect(heading()).toBe("Two cards for the same days");
    expect(document.body.textContent).toContain("It holds until 1 June 2027.");
    await enter("The old card ends before 10 June 2026");
    await readAll();
    await enter("Sign the card");
    expect(stored[0]?.event).toMatchObject({ type: "card signed", waits: true, ends: ["h1"] });
    expect(screen.getByText("The card holds from 10 June 2026.")).toBeTruthy();
  });

  it("asks anew for everything after a change", async () => {
    render(<Kitchen start={oneCard} />);
    await typeTwice({ ...fixedCard, validFrom: "2026-06-10" });
    await enter("The old card ends before 10 June 2026");
    await enter("I read it. It matches");
    await enter("Something differs. Change it");
    expect(heading()).toBe("First typing");
    await enter("First typing is done");
    await enter("Compare both typings");
    expect(heading()).toBe("Two cards for the same days");
  });

  it("keeps old cards to be read, and the next one", async () => {
    const next = { ...fixedCard, validFrom: "2026-07-01" };
    const waiting: NewFact = { person: "odile", walk: null, event: { ...signedOf(next, "h3"), waits: true } };
    render(<Kitchen start={withFacts([signedEvent({ ...fixedCard, validFrom: "2026-06-02" }, "h2"), waiting], oneCard)} />);
    await openWithPin();
    await enter("Dose card of Odile");
    expect(screen.getByText("A new card is signed. It begins on 1 July 2026.")).toBeTruthy();
    await enter("Read the next card");
    expect(screen.getByText("It begins on 1 July 2026 and ends on 1 June 2027.")).toBeTruthy();
    await enter("Back to the drawer");
    await enter("Old cards");
    await enter("From 1 January 2026, signed on 1 June 2026");
    expect(screen.getByText("It begins on 1 January 2026 and ends on 1 June 2027.")).toBeTruthy();
    expect(screen.getByText("Ines signed it on 1 June 2026.")).toBeTruthy();
  });

  const chooseFile = async (kind: string) => {
    fireEvent.change(screen.getByLabelText("Photograph the paper"), { target: { files: [new File(["x"], "card", { type: kind })] } });
    await new Promise((done) => setTimeout(done, 0));
  };

  it("keeps the photograph of the paper with the card, stored together", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await typeTwice(fixedCard);
    await readAll();
    await chooseFile("text/plain");
    expect(trouble()).toContain("It is no picture that can be kept.");
    await chooseFile("image/jpeg");
    expect(screen.getByAltText<HTMLImageElement>("Photograph of the paper card").src).toBe(PICTURE);
    await enter("Sign the card");
    expect(stored.map((fact) => fact.event)).toMatchObject([
      { type: "card signed" },
      { type: "card photographed", cardHash: hashOf(fixedCard), picture: PICTURE },
    ]);
    await enter("Back to the drawer");
    await enter("Dose card of Odile");
    await enter("Read the card in force");
    await new Promise((done) => setTimeout(done, 0));
    expect(screen.getByAltText<HTMLImageElement>("Photograph of the paper card").src).toBe(PICTURE);
  });

  it("may be photographed later", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={oneCard} stored={stored} />);
    await openWithPin();
    await enter("Dose card of Odile");
    await enter("Read the card in force");
    expect(screen.getByText("There is no photograph of this paper.")).toBeTruthy();
    await chooseFile("image/jpeg");
    expect(stored.map((fact) => fact.event)).toEqual([{ type: "card photographed", cardHash: "h1", picture: PICTURE }]);
    expect(screen.queryByText("There is no photograph of this paper.")).toBeNull();
  });

  it("prints what would be told, for the clinic to tick", async () => {
    const print = vi.spyOn(window, "print").mockImplementation(() => undefined);
    const { ketones } = ketoneCard;
    const printed: DoseCard = { ...bandsCard, validFrom: "2026-06-02", ...(ketones ? { ketones } : {}) };
    render(<Kitchen start={withFacts([signedEvent(printed, "h2")], oneCard)} />);
    await openWithPin();
    await enter("Dose card of Odile");
    await enter("Trial sheet for the clinic");
    const rows = within(screen.getByRole("table"))
      .getAllByRole("row")
      .map((row) => [...row.children].map((cell) => cell.textContent));
    expect(rows).toContainEqual([
      "181 mg/dL before breakfast",
      "8 units. The card's row is 181 to 220. 4 units are for the food, 4 because the reading is high.",
      "",
    ]);
    expect(rows).toContainEqual(["70 mg/dL before breakfast", "No dose. The reading is low. A low comes first.", ""]);
    expect(rows).toContainEqual(["Ketones: 1.5 millimoles", "This needs us today. Call the clinic now.", ""]);
    await enter("Print it");
    expect(print).toHaveBeenCalledOnce();
    print.mockRestore();
  });
});

describe("people and pens", () => {
  const person = {
    "person.age": "adult",
    "person.gives": "pen",
    "person.name": "Bram",
    "person.shape": "square",
    "person.language": "en-GB",
    "person.glucoseUnit": "mmol/L",
    "person.readsFrom": "sensor",
    "person.usualBand.low": "4.5",
    "person.usualBand.high": "14",
    "person.dialBy": "counts twice",
    "person.helperOnly": "no",
    "person.sayFirst": "no",
  };

  it("adds a person", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await openWithPin();
    await enter("Add a person");
    fill(person);
    await enter("Save");
    expect(heading()).toBe("Drawer");
    expect(stored[0]).toMatchObject({
      person: "id-1",
      event: { type: "person added", person: { id: "id-1", name: "Bram", dialBy: "counts twice", readsFrom: "sensor" } },
    });
    expect(buttons()).toContain("Dose card of Bram");
  });

  it("refuses in one sentence what the tool is not for, and keeps what was typed", async () => {
    const stored: NewFact[] = [];
    render(<Kitchen start={home} stored={stored} />);
    await openWithPin();
    await enter("Add a person");
    fill({ ...person, "person.age": "child" });
    await enter("Save");
    expect(trouble()).toContain("It is not for children.");
    choose("person.age", "adult");
    choose("person.gives", "syringe");
    await enter("Save");
    expect(trouble()).toContain("It is not for insulin drawn by syringe from vials.");
    expect(screen.getByLabelText<HTMLInputElement>("Name").value).toBe("Bram");
    expect(stored).toEqual([]);
  });

  it("adds a pen with the card's own insulin, and puts it aside", async () => {
    const stored: NewFact[] = [];
    const signed: NewFact = {
      person: "odile",
      walk: null,
      event: {
        type: "card signed",
        card: fixedCard,
        cardHash: "h",
        signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-06-01", typedTwice: true, readBack: true },
      },
    };
    render(<Kitchen start={withFacts([signed], home)} stored={stored} />);
    await openWithPin();
    await enter("Pens of Odile");
    await enter("Add a pen");
    fill({
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
    });
    await enter("Save");
    expect(heading()).toBe("Pens of Odile");
    expect(stored[0]?.event).toEqual({ type: "pen added", pen: { ...odilePen, id: "id-1" } });
    await enter("Put aside: one rubber band");
    await enter("It is empty");
    expect(stored[1]?.event).toEqual({ type: "pen retired", pen: "id-1", why: "empty" });
    expect(screen.getByText("No pen is set up.")).toBeTruthy();
  });
});

describe("the demo", () => {
  it("asks before it is emptied, and a no changes nothing", async () => {
    const own = vi.fn();
    const demo = withFacts([
      { ...begun, event: { type: "household begun", household: { kind: "demo", emergencyNumber: "911", country: "US" } } },
    ]);
    render(<Kitchen start={demo} onStartOwn={own} />);
    await enter("Start our own household");
    expect(heading()).toBe("Start your own household?");
    await enter("No, keep the demo");
    expect(own).not.toHaveBeenCalled();
    await enter("Start our own household");
    await enter("Yes, start our own");
    expect(own).toHaveBeenCalledOnce();
  });
});

describe("the gate of the demo", () => {
  it("shows its PIN, and needs none for an own household", async () => {
    const own = vi.fn();
    const begunDemo: NewFact = {
      ...begun,
      event: { type: "household begun", household: { kind: "demo", emergencyNumber: "911", country: "US" } },
    };
    render(<Kitchen start={withFacts([begunDemo, ines])} onStartOwn={own} demoPin="2580" />);
    expect(screen.getByText("Its PIN is 2580.")).toBeTruthy();
    await enter("Start our own household");
    await enter("Yes, start our own");
    expect(own).toHaveBeenCalledOnce();
  });
});

describe("letters and screen size", () => {
  it("are changed at once, and measured against a bank card", async () => {
    const onPrefs = vi.fn();
    render(<Kitchen start={home} onPrefs={onPrefs} now={NOW} />);
    await openWithPin();
    await enter("Letters and screen size");
    await enter("Largest letters");
    expect(onPrefs).toHaveBeenCalledWith({ k: 2 });
    await enter("Measure the screen");
    await enter("It fits");
    expect(onPrefs).toHaveBeenLastCalledWith({ mm: 5.9 });
  });
});
