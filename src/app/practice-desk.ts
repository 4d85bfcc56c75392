// What practice is walked at: a desk on a log in memory, over the house at rest. Fetched with what a walk needs.
import { demoPen, henkCard, martaCard } from "#demo-data/household.ts";
import type { Intent } from "#events/intent.ts";
import type { Stamp } from "#events/stamp.ts";
import { memoryLog } from "#log/memory-log.ts";
import { addDays, localParts } from "#rules/time/local.ts";
import { type MadeUp, practiceStart } from "#walk/practice.ts";
import { FOLD_VERSION, type HouseState } from "#walk/state.ts";
import { sayPractice } from "#words/en/say-practice.ts";
import type { Say } from "#words/say.ts";
import { Desk, type DeskParts } from "./desk.ts";
import type { Sent } from "./house.ts";
import { Recorder } from "./recorder.ts";
import type { ChromeAct } from "./spoken-offers.ts";
import { APP_VERSION } from "./version.ts";

const NOTHING: Sent = { events: [], refusal: null, notStored: null };

/** A desk whose words are marked, and at which nothing that is wrong is ever practised. */
class PracticeDesk extends Desk {
  constructor(
    parts: DeskParts,
    private readonly madeUp: boolean,
    private readonly wrong: () => void,
  ) {
    super(parts);
  }

  override say(): Say {
    return sayPractice(super.say(), this.state.value, this.madeUp);
  }

  override async send(intent: Intent): Promise<Sent> {
    if (intent.do !== "report" && intent.do !== "open low") return super.send(intent);
    this.wrong();
    return NOTHING;
  }

  override chrome(act: ChromeAct): void {
    if (act === "wrong") this.wrong();
    else super.chrome(act);
  }
}

/** An invented card and pen in the unit that the person measures in. */
function invented(unit: "mg/dL" | "mmol/L", now: Stamp): MadeUp {
  const today = localParts(now.wall, now.offset).date;
  const days = { validFrom: today, reviewBy: addDays(today, 90), validUntil: addDays(today, 180) };
  return unit === "mg/dL"
    ? { card: martaCard(days), pens: [demoPen("marta-meal", 1, today, addDays(today, 90))] }
    : { card: henkCard(days), pens: [demoPen("henk-meal", 1, today, addDays(today, 90))] };
}

/** At its first question. wrong: somebody says that something is. null: nobody is called so. */
export async function practiceDesk(
  parts: Omit<DeskParts, "recorder">,
  house: HouseState,
  person: string,
  wrong: () => void,
): Promise<Desk | null> {
  const now = parts.now();
  const me = house.people[person];
  const start = me && practiceStart(house, person, now, invented(me.person.glucoseUnit, now));
  if (!start) return null;
  const log = memoryLog();
  await log.saveCheckpoint({ seq: 0, foldVersion: FOLD_VERSION, state: start.house });
  const recorder = await Recorder.open({ log, newId: parts.newId, appVersion: APP_VERSION, wordsVersion: "practice" });
  // No bell and no call sounds, and so nothing is said after one.
  const ring: DeskParts["ring"] = (level) => (level === "note" ? parts.ring(level) : new Promise(() => undefined));
  const desk = new PracticeDesk({ ...parts, recorder, ring }, start.madeUp, wrong);
  await desk.send(start.opens);
  return desk;
}
