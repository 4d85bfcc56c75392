// A keeper types the demo's card of bands from the paper, twice, reads it back and signs it: by touch, and by keys alone.
import { describe, expect, it } from "vitest";
import { martaCard } from "#demo-data/household.ts";
import { clockQuestion } from "#walk/offers.ts";
import { FIXED } from "#words/en/fixed.ts";
import { labelOf } from "#words/en/labels.ts";
import { typed } from "../unit/keeping/typing.ts";
import { bench } from "./kit/bench.ts";
import { finger, type Hand, keys } from "./kit/hands.ts";
import { fingers, type KeeperHands, keysAlone } from "./kit/keeper.ts";
import type { Tablet } from "./kit/tablet.ts";

const open = bench();
/** The tablet stands on 4 March 2026; the card in force ends before the new one begins. */
const CARD = martaCard({ validFrom: "2026-12-01", reviewBy: "2027-03-01", validUntil: "2027-06-01" });
const DAYS = { validFrom: "1 December 2026", reviewBy: "March 1, 2027", validUntil: "2027-06-01" };

const heading = async (t: Tablet) => (await t.page.locator("main h1").first().innerText()).trim();

/** PBKDF2 takes its time. */
async function comesTo(t: Tablet, title: string): Promise<void> {
  await t.page.getByRole("heading", { level: 1, name: title, exact: true }).waitFor({ timeout: 30_000 });
}

/** From the kitchen: day and time are agreed, then the drawer behind Help. */
async function toDrawer(t: Tablet, hand: Hand): Promise<void> {
  if (clockQuestion(t.state)) await hand.press(labelOf({ do: "agree clock" }, t.state));
  for (const shown of [FIXED.help, FIXED.drawer]) await hand.press({ shown, said: [] });
}

async function types(t: Tablet, hand: Hand, hands: KeeperHands): Promise<void> {
  await toDrawer(t, hand);
  await comesTo(t, "The first keeper");
  await hands.fillIn({ "keeper.name": "Ines", "keeper.pin": "2580", "keeper.again": "2580" }, "Make this keeper");
  await comesTo(t, "Drawer");
  await hands.press("Dose card of Marta");
  await hands.press("Type a new card");
  await comesTo(t, "First typing");
  const draft = { ...typed(CARD), ...DAYS };
  await hands.fillIn(draft, "First typing is done");
  await comesTo(t, "Second typing");
  // Blind: nothing of the first typing is to be seen.
  expect(await t.page.getByLabel("Name of the mealtime insulin", { exact: true }).inputValue()).toBe("");
  await hands.fillIn(draft, "Compare both typings");
  await comesTo(t, "Read aloud: Insulin and dates (1 of 11)");
  for (let part = 1; part <= 11; part++) {
    expect(await heading(t)).toMatch(new RegExp(`\\(${part} of 11\\)$`));
    await hands.press("I read it. It matches");
    await t.page.waitForFunction((n) => !document.querySelector("main h1")?.textContent?.includes(`(${n} of`), part);
  }
  await comesTo(t, "Sign the card");
  await hands.press("Sign the card");
  await comesTo(t, "Signed");
}

describe("the demo's card of bands, typed by a keeper", { timeout: 300_000 }, () => {
  it.each([
    ["by touch", finger, fingers],
    ["by keys alone", (t: Tablet) => keys(t, "Tab"), keysAlone],
  ] as const)("%s, comes to be signed as it stands on the paper, with no dead end", async (_how, hand, hands) => {
    const t = await open();
    const seq = t.lastSeq;
    await types(t, hand(t), hands(t));
    await t.stored("the signature");
    const signed = t.eventsAfter(seq).filter((event) => event.type === "card signed");
    expect(signed).toMatchObject([{ card: CARD, waits: true, signature: { keeperName: "Ines", signedOn: "2026-03-04" } }]);
    expect(t.complaints).toEqual([]);
  });

  it("waits after wrong PINs, a reload or not", async () => {
    const t = await open();
    const hands = fingers(t);
    await toDrawer(t, finger(t));
    await comesTo(t, "The first keeper");
    await hands.fillIn({ "keeper.name": "Ines", "keeper.pin": "2580", "keeper.again": "2580" }, "Make this keeper");
    await comesTo(t, "Drawer");
    await t.stored("the keeper");
    await t.reload();
    await toDrawer(t, finger(t));
    for (const pin of ["2581", "2582", "2583"]) {
      await t.page.getByLabel("PIN", { exact: true }).fill(pin);
      await hands.press("Open the drawer");
      await t.page.getByText("It is not the PIN of this keeper.").waitFor({ timeout: 30_000 });
    }
    await t.reload();
    await toDrawer(t, finger(t));
    await t.page.getByText(/^Wait \d+ seconds/).waitFor();
    await t.page.getByLabel("PIN", { exact: true }).fill("2580");
    await hands.press("Open the drawer");
    expect(await heading(t)).toBe("Ines, your PIN");
    await t.pass(31);
    await hands.press("Open the drawer");
    await comesTo(t, "Drawer");
  });
});
