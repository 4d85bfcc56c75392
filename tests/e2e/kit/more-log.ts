// More rows on a tablet that stands already: what a test needs in its past, in the chain that the app began. The app is opened anew with them.
import { SHAPES, type Stored } from "#events/envelope.ts";
import type { Happened } from "#events/happened.ts";
import { sealRow } from "#log/chain.ts";
import { layLog } from "./small-log.ts";
import type { Tablet } from "./tablet.ts";

export interface Past {
  person: string | null;
  walk: string | null;
  event: Happened;
  /** Hours before the tablet's present. */
  hoursAgo: number;
}

interface LastRow {
  seq: number;
  hash: string;
  now: number;
}

/** Facts in the order they are to be stored; a last row of now keeps the clock where it is. */
export async function remember(t: Tablet, past: readonly Past[]): Promise<void> {
  const last = await t.page.evaluate(async (): Promise<LastRow> => {
    const opening = indexedDB.open("tablebell-demo");
    await new Promise((resolve) => {
      opening.onsuccess = resolve;
    });
    const cursor = opening.result.transaction("rows").objectStore("rows").openCursor(null, "prev");
    await new Promise((resolve) => {
      cursor.onsuccess = resolve;
    });
    opening.result.close();
    return { seq: cursor.result?.value.seq, hash: cursor.result?.value.row.hash, now: Date.now() };
  });
  const rows: Stored[] = [];
  for (const [place, { person, walk, event, hoursAgo }] of [...past, end].entries()) {
    rows.push(
      sealRow({
        id: `0196${String(place).padStart(4, "0")}-0000-7000-8000-000000000000`,
        v: SHAPES,
        person,
        walk,
        tablet: "test-tablet",
        seq: last.seq + place + 1,
        prev: rows.at(-1)?.hash ?? last.hash,
        at: {
          wall: Math.round(last.now - hoursAgo * 3_600_000),
          mono: place,
          boot: "a-later-start",
          zone: "America/New_York",
          offset: -300,
        },
        app: "0",
        words: "0",
        card: null,
        event,
      }),
    );
  }
  await layLog(t.page, t.baseUrl, rows);
  await t.open();
}

const end: Past = { person: null, walk: null, event: { type: "clock agreed" }, hoursAgo: 0 };
