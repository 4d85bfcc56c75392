// Facts about the household: people, keepers, cards, pens, places, the tablet and its clock.
import * as z from "zod/mini";
import { doseCard, signature } from "./card.ts";
import { pen } from "./pen.ts";
import { household, person } from "./person.ts";
import { noGo } from "./spot.ts";

const householdBegun = z.object({ type: z.literal("household begun"), household });
const personAdded = z.object({ type: z.literal("person added"), person });
const personChanged = z.object({ type: z.literal("person changed"), person, keeper: z.string() });
/** What is kept of a secret: never the secret itself. */
const secret = z.object({ salt: z.string(), hash: z.string(), rounds: z.number() });
const keeperAdded = z.object({ type: z.literal("keeper added"), keeper: z.object({ id: z.string(), name: z.string(), pin: secret }) });
/** By the printed code: then that code is used up. */
const pinChanged = z.object({
  type: z.literal("keeper PIN changed"),
  keeper: z.string(),
  pin: secret,
  by: z.enum(["PIN", "printed code"]),
});
/** A new printed code takes the place of the one before. */
const codeMade = z.object({ type: z.literal("recovery code made"), keeper: z.string(), code: secret });
/**
 * A card comes into force only by this. cardHash names it for ever.
 * waits: it begins on a later day, and until then the card before it holds; "card began" is that day.
 * ends: hashes of the cards whose days it would share; the keeper confirmed that the clinic ends them the day before it begins.
 */
const cardSigned = z.object({
  type: z.literal("card signed"),
  card: doseCard,
  cardHash: z.string(),
  signature,
  waits: z.optional(z.literal(true)),
  ends: z.optional(z.array(z.string())),
});
const cardBegan = z.object({ type: z.literal("card began"), cardHash: z.string() });
/** Small enough that a log with all the photographs of years stays one file. */
export const MOST_PICTURE = 400_000;
/** The paper that a card was typed from, as a small JPEG in text. In the log, so that it moves and is backed up with the rest. */
const cardPhotographed = z.object({
  type: z.literal("card photographed"),
  cardHash: z.string(),
  picture: z.string().check(z.regex(/^data:image\/jpeg;base64,[A-Za-z0-9+/=]+$/), z.maxLength(MOST_PICTURE)),
});

const penAdded = z.object({ type: z.literal("pen added"), pen });
const penOpened = z.object({ type: z.literal("pen opened"), pen: z.string(), on: z.string() });
const penRetired = z.object({
  type: z.literal("pen retired"),
  pen: z.string(),
  why: z.enum(["empty", "too old", "clumped", "frozen", "overheated", "lost", "other"]),
});
const noGoMarked = z.object({ type: z.literal("no-go place marked"), noGo });
const noGoCleared = z.object({ type: z.literal("no-go place cleared"), id: z.string() });
/** The question of every four weeks. */
const feltForLumps = z.object({ type: z.literal("felt for lumps"), found: z.enum(["none", "found", "not now"]) });

/** The app started on this tablet. Elapsed times across it are doubtful until day and time were agreed. */
const tabletStarted = z.object({ type: z.literal("tablet started") });
const clockDoubted = z.object({
  type: z.literal("clock doubted"),
  why: z.enum(["behind the last entry", "forward jump", "another time zone", "the person said no"]),
});
const clockAgreed = z.object({ type: z.literal("clock agreed") });

/** A dose taken away from the tablet and told later. minutesAgo null: time not known. */
const toldLater = z.object({
  type: z.literal("dose told later"),
  units: z.nullable(z.number()),
  minutesAgo: z.nullable(z.number()),
  /** Which background insulin. Left out, as in older rows: mealtime insulin. */
  insulin: z.optional(z.object({ id: z.string(), name: z.string() })),
});

export const houseEvents = [
  householdBegun,
  personAdded,
  personChanged,
  keeperAdded,
  pinChanged,
  codeMade,
  cardSigned,
  cardBegan,
  cardPhotographed,
  penAdded,
  penOpened,
  penRetired,
  noGoMarked,
  noGoCleared,
  feltForLumps,
  tabletStarted,
  clockDoubted,
  clockAgreed,
  toldLater,
] as const;
