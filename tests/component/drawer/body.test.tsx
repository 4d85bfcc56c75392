// @vitest-environment jsdom
import { cleanup, render, screen } from "@testing-library/preact";
import { afterEach, describe, expect, it } from "vitest";
import type { NewFact } from "#walk/decide.ts";
import { fixedCard, odile } from "../../kit/people.ts";
import { begun, enter, fill, hashOf, ines, Kitchen, openWithPin, withFacts } from "./kitchen-drawer.tsx";

afterEach(() => cleanup());

const own = (event: NewFact["event"]): NewFact => ({ person: "odile", walk: null, event });
const card = { ...fixedCard, meals: { ...fixedCard.meals, snack: null }, regions: null };
const home = withFacts([
  begun,
  ines,
  own({ type: "person added", person: odile }),
  own({
    type: "card signed",
    card,
    cardHash: hashOf(card),
    signature: { keeper: "k1", keeperName: "Ines", signedOn: "2026-06-01", typedTwice: true, readBack: true },
  }),
]);

async function toTheBody(stored: NewFact[] = []) {
  render(<Kitchen start={home} stored={stored} />);
  await openWithPin();
  await enter("Body and places of Odile");
  return stored;
}

describe("the body of a person in the drawer", () => {
  it("tells how many places fit, and the rest that each can have at the card's injections a day", async () => {
    await toTheBody();
    expect(screen.getByText(/^\d+ places fit, one finger apart\.$/)).toBeTruthy();
    expect(screen.getByText(/^At \d injections a day each place can rest \d+ days\.$/)).toBeTruthy();
    expect(screen.getByText("The card asks for 28 days.")).toBeTruthy();
  });

  it("marks a place, shows it with its day, and clears it again", async () => {
    const stored = await toTheBody();
    await enter("Mark a place");
    fill({ "mark.kind": "scar", "mark.part": "right belly", "mark.from": "navel up", "mark.along": "3", "mark.outwards": "5" });
    await enter("Save");
    expect(screen.getByText("Scar, marked on 3 June 2026.")).toBeTruthy();
    expect(screen.getByText("Find your navel. Go five fingers right and three fingers up.")).toBeTruthy();
    await enter("Clear number 1, scar");
    expect(screen.getByText("No place is marked.")).toBeTruthy();
    expect(stored.map(({ event }) => event.type)).toEqual(["no-go place marked", "no-go place cleared"]);
  });

  it("keeps what was typed when an answer is missing", async () => {
    const stored = await toTheBody();
    await enter("Mark a place");
    fill({ "mark.kind": "mole", "mark.along": "3" });
    await enter("Save");
    expect(screen.getByRole("alert").textContent).toContain("2 answers need another look");
    expect(screen.getByLabelText<HTMLInputElement>("Fingers up or down").value).toBe("3");
    expect(stored).toEqual([]);
  });

  it("takes lengths in hands, with what they are now beside the box", async () => {
    const stored = await toTheBody();
    await enter("Measure in hands");
    expect(screen.getByText("Now 4.1 hands.")).toBeTruthy();
    fill({ "hands.bellyWidthMm": "5" });
    await enter("Save");
    expect(stored.map(({ event }) => (event.type === "person changed" ? event.person.body.bellyWidthMm : null))).toEqual([410]);
  });

  it("leads to the parts that are never used, which can be changed", async () => {
    await toTheBody();
    expect(screen.getByText("All parts are used.")).toBeTruthy();
    await enter("Change the parts");
    expect(screen.getByRole("heading", { level: 1 }).textContent).toBe("Settings of Odile");
  });
});
