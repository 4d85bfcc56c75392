// What the log adds up to: the house, its people, and where each walk stands.
import type { DoseCard, MealName, Signature } from "#events/card.ts";
import type { MishapKind, StepName, WaitFor } from "#events/happened-walk.ts";
import type { Pen } from "#events/pen.ts";
import type { Household, Person } from "#events/person.ts";
import type { PlateHow, PlateLine } from "#events/plate.ts";
import type { Glucose, GlucoseUnit, Grams, Units } from "#events/quantity.ts";
import type { Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import type { NumberSlot, ToldDose, Via } from "#events/told.ts";
import type { MarkedPlace } from "#rules/body/marks.ts";

/** Raise when a field of the state changes its meaning: checkpoints of another version are rebuilt. */
export const FOLD_VERSION = 9;

export interface Wait {
  for: WaitFor;
  began: Stamp;
  ms: number;
}

/** A number on its way: given, not yet agreed. */
export interface Draft {
  slot: NumberSlot;
  text: string;
  via: Via;
  helper: string | null;
  /** The text agreed to once, when its digits are asked for a second time; text is "" until they come. */
  first: string | null;
  /** When it was first given. */
  at: Stamp;
}

export interface ReadingAnswer {
  glucose: Glucose | null;
  word: "HI" | "LO" | null;
  source: "finger" | "sensor";
  at: Stamp;
  via: Via;
}

export interface Low {
  because: "reading" | "meter word" | "feels strange" | "cannot eat";
  rounds: { food: string; grams: Grams; at: Stamp }[];
  readings: { glucose: Glucose | null; word: "HI" | "LO" | null }[];
  /** What comes next: sugar, or a new reading after the wait. */
  due: "treat" | "recheck";
  callRaised: boolean;
  /** Nothing by mouth any more. */
  cannotSwallow: boolean;
  /** No meter, or no strip: there is no number until one is read. */
  noMeter: boolean;
  /** Steps done of those for whoever is in the house. */
  helpSteps: number;
}

export interface PenCheck {
  pen: string | null;
  looked: boolean;
  mixed: boolean;
  needle: boolean;
  /** Made ready once before, too long ago. */
  again: boolean;
  /** When the needle was fitted. */
  fitted: Stamp | null;
  /** How often a test brought no stream. */
  dry: number;
  primed: boolean;
}

/** "mishap": something went wrong and was told in the kitchen, outside any other walk. */
export type WalkKind = "meal" | "low" | "mishap";

/** One run through the steps. An answer that is missing is a step still to do; the first missing one is where the walk stands. */
export interface Walk {
  id: string;
  kind: WalkKind;
  meal: MealName | null;
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
  highHeard: boolean;
  low: Low | null;
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
  injected: { units: Units | null; left: Units | null; certain: boolean } | null;
  mishap: MishapKind | null;
  mishapsHeard: MishapKind[];
  putAway: boolean;
  eat: "eating" | "cannot eat" | null;
}

export interface RapidDose {
  /** Id of nothing: doses are told apart by walk, null for one told later. */
  walk: string | null;
  at: Stamp;
  /** Extra minutes before `at`, for a dose told later; null: time not known, but not after `at`. */
  agoMinutes: number | null;
  /** null: amount not known. */
  units: Units | null;
  certain: boolean;
  meal: MealName | null;
}

export interface Bell {
  walk: string;
  /** When the insulin went in, or the step was opened when nobody knows. */
  from: Stamp;
  earliestMs: number;
  latestMs: number;
  /** Minutes-since-latest at which silence was last written down; -1 before. */
  unansweredMinutes: number;
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
  doses: RapidDose[];
  /** When a low was last begun, treated or over, in whatever walk; null: none known. */
  lastLow: Stamp | null;
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
  doubt: "restart" | "behind the last entry" | "forward jump" | "the person said no" | null;
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

export type Step = StepName | "low" | "mishap" | "needle question";

const eatsFirst = (walk: Walk): boolean => walk.told?.timing === "after eating";

/** Where a walk stands: the first answer that is missing. */
export function stepOf(walk: Walk): Step {
  if (walk.mishap) return "mishap";
  if (walk.low) return "low";
  if (walk.needleAsked) return "needle question";
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
