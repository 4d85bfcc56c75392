// What the steps say from the pen to the needle.

import { directions } from "#rules/body/directions.ts";
import type { Ctx } from "#walk/context.ts";
import { waitOver } from "#walk/context.ts";
import { isBackground } from "#walk/insulin.ts";
import { careNumber } from "#walk/steps/care-ms.ts";
import { needsReader } from "#walk/steps/dial.ts";
import { injectStage, seesWindow } from "#walk/steps/inject.ts";
import { penInHand, penStage, pensInHouse } from "#walk/steps/pen.ts";
import { unitsOf } from "#words/en/amounts.ts";
import { placeName, sayPlace } from "#words/en/places.ts";
import type { Say } from "#words/say.ts";
import { sayBackgroundPick, sayPenName } from "./background.ts";
import { sayDraft } from "./draft.ts";

const clinicOf = (c: Ctx): string => (c.card ? `${c.card.clinic.name}: ${c.card.clinic.phone}` : "your clinic");

const ownPenLeft = (c: Ctx): boolean =>
  pensInHouse(c).some(({ pen }) => pen.person === c.me.person.id && pen.insulinId === c.card?.insulin.id);

export function sayPen(c: Ctx): Say {
  const name = c.card?.insulin.name ?? "mealtime insulin";
  const stage = penStage(c);
  if (stage === "pick" && isBackground(c.walk)) return sayBackgroundPick(c);
  switch (stage) {
    case "name":
      return sayPenName(c);
    case "helper":
      return { title: "A helper", lines: ["You do this part with a helper.", "Who is with you?"] };
    case "pick":
      if (!ownPenLeft(c))
        return {
          title: "No pen is left",
          lines: [`No ${name} pen of yours is left here.`, "A keeper adds a new pen.", `Ask ${clinicOf(c)}.`],
        };
      if (c.walk.penCheck.again)
        return {
          title: "Your pen again",
          lines: ["The pen was ready too long ago.", "Take the old needle off.", `Take your ${name} pen. Which mark?`],
        };
      return { title: "Your pen", lines: [`Take your ${name} pen.`, "Which mark?"], short: ["Which pen?"] };
    case "look":
      return penInHand(c)?.pen.cloudy
        ? { title: "Look at the insulin", lines: ["Look at the insulin. Is it free of clumps?"] }
        : { title: "Look at the insulin", lines: ["Is the insulin clear?"], short: ["Is it clear?"] };
    case "mix":
      // Roll 10 times, tip 10 times, look: a nursing article named in the facts of the trade.
      return { title: "Mix the insulin", lines: ["Roll the pen ten times. Tip it ten times.", "It is ready when it is evenly milky."] };
    case "needle":
      if (c.walk.penCheck.dry > 0)
        return { title: "New needle", lines: ["No stream two times. Take the needle off.", "New needle. Both caps off."] };
      return { title: "New needle", lines: ["New needle. Both caps off."], short: ["New needle."] };
    case "no stream":
      return {
        title: "No stream",
        lines: ["No stream came three times.", "Do not inject with this pen.", `Call ${clinicOf(c)}.`, "For another pen, press Back."],
      };
    case "prime":
      return {
        title: "Test the pen",
        lines: [`Dial ${unitsOf(careNumber(c.card, "primeUnits"))}. Press.`, "Did a stream come?"],
        short: [`Test with ${unitsOf(careNumber(c.card, "primeUnits"))}. A stream?`],
      };
  }
}

export function sayDial(c: Ctx): Say {
  if (needsReader(c)) return { title: "A helper", lines: ["A helper reads the dial with you.", "Who is with you?"] };
  if (c.walk.draft) return sayDraft(c);
  const told = c.walk.told?.units ?? 0;
  return {
    title: `Dial ${unitsOf(told)}`,
    lines: [`Dial ${unitsOf(told)}.`, "Then say the number."],
    short: [`Dial ${unitsOf(told)}.`],
    big: { value: String(told), unit: told === 1 ? "unit" : "units" },
  };
}

export function sayPlaceStep(c: Ctx): Say {
  const offered = c.walk.offered;
  if (!offered) {
    return {
      title: "No place is free",
      lines: ["Every place still rests. Do not inject.", `Ask ${clinicOf(c)}.`],
    };
  }
  const rest = offered.fullRest ? [] : [`It has rested ${offered.restDays} days, less than planned.`];
  const name = placeName(offered.spot);
  return {
    title: `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
    lines: [...sayPlace(directions(offered.spot, c.me.person.body)), ...rest, "Is the skin well?"],
  };
}

export function saySkin(c: Ctx): Say {
  if (!c.walk.cleaned) return { title: "Clean the spot", lines: ["Clean the spot."] };
  if (waitOver(c.walk, c.now, c.sure)) return { title: "The skin is dry", lines: ["The skin is dry."], short: ["Dry."] };
  return {
    title: `Let it dry for ${careNumber(c.card, "dryingSeconds")} seconds`,
    lines: ["Let it dry. Needle capped."],
    short: ["Let it dry."],
  };
}

export function sayInject(c: Ctx): Say {
  switch (injectStage(c)) {
    case "number":
      return sayDraft(c);
    case "press":
      return {
        title: "Inject now",
        // Pressed until the window shows zero, and counted from then on: as leaflets of pens teach it.
        lines: ["Straight in.", seesWindow(c) ? "Press until 0 and hold." : "Press until it stops and hold."],
      };
    case "hold":
      return { title: "Hold it in", lines: ["Hold still."], short: [] };
    case "held":
      return { title: "Take it out", lines: ["Take the needle out."], short: ["Out."] };
    case "window":
      return {
        title: "Look at the window",
        lines: ["What does the window show?"],
        short: ["The window shows?"],
      };
    case "feel":
      return {
        title: "Feel the button",
        lines: ["Is the button flat, or does it stand out?"],
        short: ["Button flat, or standing out?"],
      };
  }
}
