// What an ill day says, one thing a screen: danger signs, the number, ketones, the card's own words, and whom to call.
import type { KetoneLine } from "#events/ill-rules.ts";
import { HIGH_DEFAULT, highBy } from "#rules/glucose/high.ts";
import { clinicNow, isKetoneEmergency, ketoneLineOf, ketonesRaiseCall } from "#rules/glucose/ketones.ts";
import type { Ctx } from "#walk/context.ts";
import { illStage, sickDayRules } from "#walk/steps/ill.ts";
import { number } from "#words/en/amounts.ts";
import { ketonesWords } from "#words/en/ketones.ts";
import type { Say } from "#words/say.ts";
import { sayDraft } from "./draft.ts";
import { clinicOf, emergencyOf } from "./whom.ts";

/** A reading that stays high is no reason for more: the card's spacing holds (mistake 25). */
const NO_MORE = "Inject no more than your card says.";

function sayHigh(c: Ctx): Say {
  const own = c.card?.high?.advice;
  const says = own ? [`Your card says: ${own}`] : [];
  if (c.walk.ill?.reading?.word === "HI")
    return { title: "The meter shows HI", lines: ["HI again means very high.", ...says, NO_MORE, `Call ${clinicOf(c)} now.`] };
  if (!c.card?.high)
    return {
      title: "The reading is high",
      lines: [
        "Your reading is high.",
        "Your card does not say what is high.",
        `This tablet takes ${number(HIGH_DEFAULT[c.me.person.glucoseUnit])} and more.`,
        NO_MORE,
        `Call ${clinicOf(c)}.`,
        `It gets worse? Call ${emergencyOf(c)}.`,
      ],
    };
  return { title: "The reading is high", lines: ["Your reading is high.", ...says, NO_MORE] };
}

function sayKetones(c: Ctx): Say {
  const blood = (c.card?.ketones?.test ?? "blood") === "blood";
  return blood
    ? { title: "Test for ketones", lines: ["Test your blood for ketones.", "What number does it show?"] }
    : {
        title: "Test for ketones",
        lines: ["Test your urine for ketones.", "Compare the strip with its own box.", "What does the strip show?"],
      };
}

/** A line may be nothing but a call. */
function ownLine(c: Ctx, found: KetoneLine | null): string {
  if (found?.says) return `Your card says: ${found.says}`;
  if (found?.call === "emergency") return `Your card says: call ${emergencyOf(c)}.`;
  return found?.call === "clinic" ? "Your card says: call the clinic." : "Your card has no words for this.";
}

/** Ketones are said as the reason where they are the reason. */
function sayCall(c: Ctx): Say {
  const rule = c.card?.ketones;
  const value = c.walk.ill?.ketones ?? null;
  const reason =
    rule && value !== null && c.walk.ill?.danger !== true && ketonesRaiseCall(rule, value)
      ? [`Ketones: ${ketonesWords(rule.test, value)}.`, ownLine(c, ketoneLineOf(rule, value))]
      : [];
  return {
    title: "Call for help",
    lines: [`Call ${emergencyOf(c)} now.`, ...reason, "Tell them that you use insulin.", "Do not stay alone."],
    big: { value: emergencyOf(c), unit: "" },
  };
}

function sayResult(c: Ctx): Say {
  const rule = c.card?.ketones;
  const value = c.walk.ill?.ketones ?? null;
  if (!rule || value === null)
    return { title: "No ketone test", lines: ["Nobody knows your ketones.", `Call ${clinicOf(c)}. Ask what to do.`, NO_MORE] };
  const found = ketoneLineOf(rule, value);
  const now = found?.call === "clinic" || (!found?.says && clinicNow(rule, value));
  const whom = now ? [`Call ${clinicOf(c)} now.`] : found?.says ? [] : [`Call ${clinicOf(c)}.`];
  // A line that is the emergency number comes here only from a log older than the raised call.
  const emergency = isKetoneEmergency(rule, value) || found?.call === "emergency";
  const also = emergency ? [`It gets worse, or no answer? Call ${emergencyOf(c)}.`] : [];
  const big = emergency ? { big: { value: emergencyOf(c), unit: "" } } : {};
  return { title: "Ketones", lines: [`Ketones: ${ketonesWords(rule.test, value)}.`, ownLine(c, found), ...whom, ...also, NO_MORE], ...big };
}

function highNow(c: Ctx): boolean {
  const last = c.walk.ill?.reading;
  return last?.word === "HI" || highBy(c.card, last?.glucose ?? null) !== null;
}

function sayRule(c: Ctx): Say {
  const rules = sickDayRules(c);
  const n = c.walk.ill?.rulesHeard ?? 0;
  const rule = rules[n];
  const title = `When you are ill: ${n + 1} of ${rules.length}`;
  switch (rule?.say) {
    case "own":
      return { title, lines: [`Your card says: ${rule.text}`] };
    case "card":
      return { title, lines: [rule.text] };
    case "drink":
      // Measuring each 3 to 4 hours is in the sick-day leaflets (ACP, US CDC); a sip of something sweet is common practice, no source.
      return {
        title,
        lines: [
          "Drink water often.",
          "Measure again in 4 hours.",
          ...(highNow(c) ? [] : ["Cannot eat, and not high? Sip something sweet."]),
        ],
      };
    default:
      return { title, lines: ["Keep taking the long-acting insulin.", "Never stop it when you are ill."] };
  }
}

function sayEnd(c: Ctx): Say {
  const { card, walk } = c;
  const silent = walk.ill?.feelsIll && !card?.advice.ill && !card?.sickDay;
  const when = card?.sickDay?.callWhen ?? null;
  const high = highNow(c);
  return {
    title: "Whom to call",
    lines: [
      ...(silent ? ["Your card has no words for ill days."] : []),
      ...(card?.ketones ? [] : ["Your card has no words on ketones."]),
      ...(when ? [`Your card says: ${when}`] : []),
      ...(high || silent ? [NO_MORE] : []),
      when ? `Any doubt? Call ${clinicOf(c)}.` : `Call ${clinicOf(c)} now.`,
      `It gets worse? Call ${emergencyOf(c)}.`,
    ],
  };
}

export function sayIll(c: Ctx): Say {
  switch (illStage(c)) {
    case "number":
      return sayDraft(c);
    case "danger":
      // Signs on which sick-day leaflets send people to hospital (US CDC, ADA, hospital pages of the UK and Australia); pain in the belly from memory.
      return {
        title: "Danger signs",
        lines: [
          "Danger sign: does food come up again and again?",
          "Fast breath, or pain in the belly?",
          "Very sleepy, or mixed up?",
          `Then call ${emergencyOf(c)}. Press One of these.`,
        ],
      };
    case "call":
      return sayCall(c);
    case "reading":
      return {
        title: "Your glucose",
        lines: ["Wash your hands.", "Measure your glucose, and tell me.", "No meter or strip? Press No meter here."],
      };
    case "test again":
      return {
        title: "The meter shows HI",
        lines: ["HI means very high. It is not a number.", "Wash your hands. Test again with a new strip."],
      };
    case "high":
      return sayHigh(c);
    case "ketones":
      return sayKetones(c);
    case "result":
      return sayResult(c);
    case "rule":
      return sayRule(c);
    case "end":
      return sayEnd(c);
  }
}
