// Facts of a walk from the pen to the needle, in the order a walk meets them.
import * as z from "zod/mini";
import { unitsSchema } from "./quantity.ts";
import { spot } from "./spot.ts";
import { via } from "./told.ts";

const plain = <T extends string>(type: T) => z.object({ type: z.literal(type) });

// 7 pen
const helperNamed = z.object({ type: z.literal("helper named"), name: z.string() });
const penPicked = z.object({ type: z.literal("pen picked"), pen: z.string(), how: z.enum(["mark", "scan"]) });
/** The name printed on the pen, as it was read by whoever holds it. */
const penNameRead = z.object({ type: z.literal("pen name read"), fits: z.boolean() });
const insulinLooked = z.object({
  type: z.literal("insulin looked at"),
  look: z.enum(["as it should be", "clumped", "frozen", "overheated"]),
});
const insulinMixed = plain("insulin mixed");
const needleFitted = plain("needle fitted");
/** The needle was fitted so long ago that pen and skin are made ready again. */
const penCheckGrewOld = plain("pen check grew old");
const primed = z.object({ type: z.literal("pen primed"), stream: z.boolean() });
// 8 dial
const dialled = z.object({
  type: z.literal("dose dialled"),
  units: unitsSchema,
  via,
  helper: z.nullable(z.string()),
  how: z.enum(["read", "counted twice", "read by a helper"]),
});
// 9 place
const spotOffered = z.object({ type: z.literal("spot offered"), spot, restDays: z.number(), fullRest: z.boolean() });
const noSpot = z.object({ type: z.literal("no spot free"), why: z.string() });
const spotDeclined = z.object({
  type: z.literal("spot declined"),
  spot,
  reason: z.enum(["sore", "lump", "scar or mole", "cannot reach", "other"]),
});
const spotChosen = z.object({ type: z.literal("spot chosen"), spot, code: z.string() });
// 10 skin
const skinCleaned = z.object({ type: z.literal("skin cleaned"), how: z.enum(["wiped", "clean without a wipe"]) });
const skinDry = plain("skin dry");
// 11 inject
const injectOpened = plain("inject opened");
/** The needle step stood open without an answer: it is asked about before it is shown again. */
const needleAskedAbout = plain("needle asked about");
const needleAnswered = z.object({ type: z.literal("needle question answered"), wentIn: z.enum(["yes", "no", "not sure"]) });
const pressed = plain("button pressed down");
/** Nobody can read the window after the needle: the button is felt in its place. */
const windowNotSeen = plain("window not seen");
const injected = z.object({
  type: z.literal("injected"),
  units: z.nullable(unitsSchema),
  left: z.nullable(unitsSchema),
  insulinId: z.string(),
  pen: z.nullable(z.string()),
  spot: z.nullable(spot),
  /** HL7 v2 table 0163; left out where no spot is known, and in older rows. */
  code: z.optional(z.string()),
  certain: z.boolean(),
  /** How it is known that nothing, or what, was left. Left out where nobody looked, and in older rows. */
  known: z.optional(z.enum(["read", "felt"])),
});
const heldShort = z.object({ type: z.literal("needle out early"), reason: z.string() });
const notInjected = plain("needle did not go in");

export const needleEvents = [
  helperNamed,
  penPicked,
  penNameRead,
  insulinLooked,
  insulinMixed,
  needleFitted,
  penCheckGrewOld,
  primed,
  dialled,
  spotOffered,
  noSpot,
  spotDeclined,
  spotChosen,
  skinCleaned,
  skinDry,
  injectOpened,
  needleAskedAbout,
  needleAnswered,
  pressed,
  windowNotSeen,
  injected,
  heldShort,
  notInjected,
] as const;
