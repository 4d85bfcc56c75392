// What the log adds up to: the house, its people, and where each walk stands.
import type { DoseCard, MealName, Signature } from "#events/card.ts";
import type { BackgroundOpened, MishapKind, StepName, WaitFor } from "#events/happened-walk.ts";
import type { Pen } from "#events/pen.ts";
import type { Household, Person } from "#events/person.ts";
import type { PlateHow, PlateLine } from "#events/plate.ts";
import type { GlucoseUnit, Grams, Units } from "#events/quantity.ts";
import type { Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import type { ToldDose } from "#events/told.ts";
import type { MarkedPlace } from "#rules/body/marks.ts";
import type { PersonDay } from "./day.ts";
import type { BackgroundTaken, Bell, RapidDose } from "./doses.ts";
import type { InsulinWatch } from "./insulin-watch.ts";
import { backgroundStep, readingStep } from "./step-of.ts";
import type { Draft, Ill, Low, PenCheck, ReadingAnswer, Wait } from "./walk-parts.ts";

/** Raise when a field of the state changes its meaning: checkpoints of another version are rebuilt. */
export const FOLD_VERSION = 13;

/** "mishap": something went wrong and was told in the kitchen, outside any other walk. */
export type WalkKind = "meal" | "low" | "mishap" | "background" | "reading";

/** One run through the steps. An answer that is missing is a step still to do; the first missing one is where the walk stands. */
export interface Walk {
  id: string;
  kind: WalkKind;
  meal: MealName | null;
  /** Which background dose of the card, in a background walk. */
  background: BackgroundOpened | null;
  openedAt: Stamp;
  /** Last event of this walk: how long ago it stopped. */
  touchedAt: Stamp;
  left: boolean;
  wait: Wait | null;
  waitDone: WaitFor | null;
  draft: Draft | null;
  unitAgreed: GlucoseUnit | null;
  slips: number;

  taken: { how: "log is clear" | "said not taken" | "the first was not taken" } | null;
  wash: { how: "counted" | "already washed" | "skipped" } | null;
  reading: ReadingAnswer | null;
  /** When "no reading" was the answer: background insulin goes on without one. */
  readingLeftOut: Stamp | null;
  /** The meter showed HI so often in a row. */
  his: number;
  highHeard: boolean;
  low: Low | null;
  ill: Ill | null;
  afterLow: boolean;
  sugarEaten: Grams[];
  exercise: boolean | null;
  lines: PlateLine[];
  plate: { grams: Grams | null; how: PlateHow; ready: boolean } | null;
  told: ToldDose | null;
  silent: { why: string; detail: string | null } | null;
  telephoned: boolean;
  ownNumber: { units: Units; matches: boolean } | null;
  doseHeard: boolean;
  eatenFirst: boolean;
  helper: string | null;
  penCheck: PenCheck;
  dial: { units: Units; how: string } | null;
  dialFirst: string | null;
  offered: { spot: Spot; restDays: number; fullRest: boolean } | null;
  noSpot: string | null;
  declined: Spot[];
  place: Spot | null;
  cleaned: { how: "wiped" | "clean without a wipe" } | null;
  skinDry: boolean;
  injectOpened: Stamp | null;
  /** The app started again after the step was opened: "Did the needle go in?" comes first. */
  needleAsked: boolean;
  needleIn: boolean;
  pressed: boolean;
  /** After the needle: nobody reads the window, the button is felt. */
  windowUnseen: boolean;
  injected: { units: Units | null; left: Units | null; certain: boolean } | null;
  mishap: MishapKind | null;
  mishapsHeard: MishapKind[];
  putAway: boolean;
  eat: "eating" | "cannot eat" | null;
}

export interface SignedCard {
  card: DoseCard;
  hash: string;
  signature: Signature;
}

export interface PersonState {
  person: Person;
  card: SignedCard | null;
  /** Signed already, and begins on a later day. */
  nextCard: SignedCard | null;
  /** Cards that held before, or never came to hold; newest first. Kept to be read. */
  pastCards: SignedCard[];
  /** Where in the log the photograph of a card's paper lies: its row, by the hash of the card. The pictures themselves stay there. */
  photos: Record<string, number>;
  pens: { pen: Pen; openedOn: string | null; used: number; retired: boolean }[];
  noGo: MarkedPlace[];
  /** Marks that were told gone, newest first. */
  marksGone: (MarkedPlace & { goneAt: number })[];
  /** When lumps were last asked about, and what was said; null: never, and `at` is when the person was added. */
  lumpsAsked: { at: number; found: "none" | "found" | "not now" | null };
  uses: { spot: Spot; at: number }[];
  /** Mealtime insulin alone: window, spacing and insulin on board look at nothing else. Newest first. */
  doses: RapidDose[];
  /** Background insulin alone, newest first. */
  backgroundDoses: BackgroundTaken[];
  /** Too much insulin, or the wrong one, was told; null: never, or a doctor watches. Over by its hours: insulin-watch.ts. */
  insulinWatch: InsulinWatch | null;
  /** When a low was last begun, treated or over, in whatever walk; null: none known. */
  lastLow: Stamp | null;
  /** Meals, readings, reminders and hard exercise of the last days. */
  day: PersonDay;
  walk: Walk | null;
  bell: Bell | null;
  /** The one calm question about the meal, some time after eating. */
  mealQuestion: { walk: string; from: Stamp } | null;
  cleanWalks: number;
}

interface SecretKept {
  salt: string;
  hash: string;
  rounds: number;
}

export interface HouseState {
  household: Household | null;
  people: Record<string, PersonState>;
  /** recovery: of the printed code that opens the drawer once when the PIN is forgotten; null where there is none. */
  keepers: { id: string; name: string; pin: SecretKept; recovery: SecretKept | null }[];
  /** Whose walk is on the screen; null is the kitchen screen. */
  front: string | null;
  lastSeq: number;
  /** Stamp of the newest event. */
  last: Stamp | null;
  /** null: elapsed times across a start of the app are vouched for. */
  doubt: "restart" | "behind the last entry" | "forward jump" | "another time zone" | "the person said no" | null;
  /** Since when this tablet has been recording without a gap; null: not known. */
  clearSince: number | null;
  /** Wall times of rows nobody could read: each possibly a dose of anybody (promise 10). null: time not known. */
  unreadable: (number | null)[];
}

export const emptyHouse: HouseState = {
  household: null,
  people: {},
  keepers: [],
  front: null,
  lastSeq: 0,
  last: null,
  doubt: null,
  clearSince: null,
  unreadable: [],
};

export type Step = StepName | "low" | "ill" | "mishap" | "needle question";

const eatsFirst = (walk: Walk): boolean => walk.told?.timing === "after eating";

/** Whoever feels ill while a good reading is watched is asked about danger signs first. An active low waits for no question. */
const asksDanger = ({ low, ill, wait }: Walk): boolean =>
  low !== null && !low.callRaised && wait?.for === "watch" && ill?.feelsIll === true && ill.danger === null;

/** Where a walk stands: the first answer that is missing. */
export function stepOf(walk: Walk): Step {
  // No advice stands over the needle's question: it is heard once nobody has to guess what went in.
  if (walk.mishap && !walk.needleAsked) return "mishap";
  if (asksDanger(walk)) return "ill";
  if (walk.low) return "low";
  if (walk.needleAsked) return "needle question";
  if (walk.ill) return "ill";
  if (walk.kind === "background") return backgroundStep(walk);
  if (walk.kind === "reading") return readingStep(walk);
  if (walk.kind !== "meal") return "done";
  if (walk.injectOpened) {
    if (!walk.injected) return "inject";
    if (!walk.putAway) return "put away";
    if (!walk.eat) return "eat";
    return "done";
  }
  if (!walk.taken) return "taken";
  if (!walk.wash) return "wash";
  if (!walk.reading || walk.reading.word === "HI" || !walk.reading.glucose) return "reading";
  if (!walk.plate?.ready) return "plate";
  if (!walk.doseHeard) return "card";
  if (eatsFirst(walk) && !walk.eatenFirst) return "eat first";
  if (!walk.penCheck.primed) return "pen";
  if (!walk.dial) return "dial";
  if (!walk.place) return "place";
  if (!walk.skinDry) return "skin";
  return "inject";
}
