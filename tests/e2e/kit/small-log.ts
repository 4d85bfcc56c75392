// The demo household with a short past: set up two days ago, nothing injected since. Ninety days take seconds to fill; most tests need none of them.
import type { Page } from "playwright-core";
import { demoHousehold, demoPen, henk, henkCard, marta, martaCard, type PenName } from "#demo-data/household.ts";
import { canonical } from "#events/canonical.ts";
import type { DoseCard } from "#events/card.ts";
import { SHAPES, type Stored } from "#events/envelope.ts";
import type { Happened } from "#events/happened.ts";
import { DAY, HOUR } from "#events/quantity.ts";
import { sealRow, sha256Hex } from "#log/chain.ts";
import { addDays, localParts } from "#rules/time/local.ts";

const OFFSET = -300;

interface Own {
  person: string | null;
  event: Happened;
}

const ownerOf = ({ person, event }: Own): string | null => {
  if (event.type === "person added") return event.person.id;
  return event.type === "card signed" ? event.card.person : person;
};

function setUp(today: string): Own[] {
  const days = { validFrom: addDays(today, -60), reviewBy: addDays(today, 60), validUntil: addDays(today, 240) };
  const signature = { keeper: "ines", keeperName: "Ines", signedOn: days.validFrom, typedTwice: true as const, readBack: true as const };
  const sign = (card: DoseCard): Own => ({
    person: card.person,
    event: { type: "card signed", card, cardHash: sha256Hex(canonical(card)), signature },
  });
  const pens = (["marta-meal", "marta-night", "henk-meal", "henk-night"] as const satisfies readonly PenName[]).map((name) =>
    demoPen(name, 1, addDays(today, -6), addDays(today, 300)),
  );
  return [
    { person: null, event: { type: "household begun", household: demoHousehold } },
    ...[marta, henk].map((person): Own => ({ person: person.id, event: { type: "person added", person } })),
    sign(martaCard(days)),
    sign(henkCard(days)),
    ...pens.map((pen): Own => ({ person: pen.person, event: { type: "pen added", pen } })),
    // So that no day of it is without an entry.
    { person: null, event: { type: "tablet started" } },
  ];
}

/** now: ms since 1970, in New York in winter. `only`: of two people, the one who lives on this tablet. */
export function smallLog(now: number, only?: "marta" | "henk"): Stored[] {
  const facts = setUp(localParts(now, OFFSET).date).filter((fact) => only === undefined || (ownerOf(fact) ?? only) === only);
  const rows: Stored[] = [];
  for (const [place, { person, event }] of facts.entries()) {
    const wall = place === facts.length - 1 ? now - 20 * HOUR : now - DAY - 20 * HOUR + place * 1000;
    rows.push(
      sealRow({
        id: `0195${String(place).padStart(4, "0")}-0000-7000-8000-000000000000`,
        v: SHAPES,
        person,
        walk: null,
        tablet: "test-tablet",
        seq: place + 1,
        prev: rows.at(-1)?.hash ?? "",
        at: { wall, mono: place, boot: "an-earlier-start", zone: "America/New_York", offset: OFFSET },
        app: "0",
        words: "0",
        card: null,
        event,
      }),
    );
  }
  return rows;
}

/** Lays the rows on the disk before the app is opened for the first time, the way the app itself would have (log/dexie-log.ts). */
export async function layLog(page: Page, baseUrl: string, rows: readonly Stored[]): Promise<void> {
  const blank = `${baseUrl}blank`;
  await page.route(blank, (route) => route.fulfill({ contentType: "text/html", body: "<!doctype html><title>blank</title>" }));
  await page.goto(blank);
  await page.evaluate(async (kept) => {
    const opening = indexedDB.open("tablebell-demo", 10);
    opening.onupgradeneeded = () => {
      const table = opening.result.createObjectStore("rows", { keyPath: "seq" });
      table.createIndex("id", "id", { unique: true });
      table.createIndex("wall", "wall");
      opening.result.createObjectStore("checkpoints", { keyPath: "key" });
    };
    await new Promise<void>((resolve, reject) => {
      opening.onsuccess = () => resolve();
      opening.onerror = () => reject(opening.error);
    });
    const all = opening.result.transaction("rows", "readwrite");
    for (const row of kept) all.objectStore("rows").add({ seq: row.seq, id: row.id, wall: row.at.wall, row });
    await new Promise<void>((resolve, reject) => {
      all.oncomplete = () => resolve();
      all.onerror = () => reject(all.error);
    });
    opening.result.close();
  }, rows);
  await page.unroute(blank);
}
