// Step 7: the right pen, the insulin as it should be, a new needle, a stream seen.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import type { PenQuestion } from "#rules/pen/check.ts";
import { type Ctx, happen, type Offer, type Outcome, press, refuse, type StepRules } from "#walk/context.ts";
import { insulinOf, isBackground } from "#walk/insulin.ts";
import { helpers } from "./card.ts";
import { careNumber } from "./care-ms.ts";

export type PenStage = "helper" | "pick" | "name" | "look" | "mix" | "needle" | "prime" | "no stream";

/** Common practice, no source: once more, once with a new needle, then it is the pen. */
const DRY_AT_MOST = 3;

/** Every pen of the house that is not put aside: the other person's too, since a hand may pick it up. */
export const pensInHouse = (c: Ctx) => Object.values(c.house.people).flatMap((p) => p.pens.filter((pen) => !pen.retired));

export const penInHand = (c: Ctx) => pensInHouse(c).find((p) => p.pen.id === c.walk.penCheck.pen) ?? null;

export function penStage(c: Ctx): PenStage {
  const check = c.walk.penCheck;
  if (c.me.person.helperOnly && c.walk.helper === null) return "helper";
  if (!check.pen) return "pick";
  // The two pens of one person are mixed up more than any others: beside its mark, its printed name.
  if (isBackground(c.walk) && !check.named) return "name";
  if (!check.looked) return "look";
  if (penInHand(c)?.pen.cloudy && !check.mixed) return "mix";
  if (check.dry >= DRY_AT_MOST) return "no stream";
  return check.needle ? "prime" : "needle";
}

function offers(c: Ctx): Offer[] {
  switch (penStage(c)) {
    case "helper":
      return [...helpers(c), press("stop", { do: "leave" })];
    case "pick":
      return [
        ...pensInHouse(c).map((p) => press("choice", { do: "pick pen", pen: p.pen.id, how: "mark" })),
        press("stop", { do: "leave" }),
      ];
    case "name":
      return [press("main", { do: "pen says", name: "the insulin" }), press("no", { do: "pen says", name: "another" })];
    case "look":
      return [
        press("main", { do: "insulin looks", look: "as it should be" }),
        press("choice", { do: "insulin looks", look: "clumped" }),
        press("choice", { do: "insulin looks", look: "frozen" }),
        press("choice", { do: "insulin looks", look: "overheated" }),
      ];
    case "mix":
      return [press("main", { do: "insulin mixed" })];
    case "needle":
      return [press("main", { do: "needle fitted" })];
    case "prime":
      return [press("main", { do: "primed", stream: true }), press("no", { do: "primed", stream: false })];
    case "no stream":
      return [press("stop", { do: "leave" })];
  }
}

/** Units that will leave the pen: the dose and one priming. */
export const unitsNeeded = (c: Ctx): number | null => (c.walk.told ? c.walk.told.units + careNumber(c.card, "primeUnits") : null);

/** For a background walk the pen has to be another one than for a meal. */
const forBackground = (c: Ctx): Pick<PenQuestion, "background"> =>
  c.walk.background ? { background: { insulinId: c.walk.background.insulinId, units: c.walk.told?.units ?? null } } : {};

function pick(c: Ctx, id: string): Outcome {
  const found = pensInHouse(c).find((p) => p.pen.id === id);
  if (!found || !c.card) return refuse({ no: "not offered here" });
  const reason = c.guards.whyNotPen({
    pen: found.pen,
    openedOn: found.openedOn,
    used: found.used,
    retired: found.retired,
    person: c.me.person.id,
    card: c.card,
    today: c.today,
    needed: unitsNeeded(c),
    ...forBackground(c),
  });
  if (reason) {
    const owner = c.house.people[found.pen.person]?.person.name ?? null;
    return refuse({ no: "pen", reason, name: owner }, { type: "near miss", step: "pen", what: reason.why, detail: found.pen.id });
  }
  const opened: Happened[] = found.openedOn === null && c.today ? [{ type: "pen opened", pen: id, on: c.today }] : [];
  return happen(...opened, { type: "pen picked", pen: id, how: "mark" });
}

function readName(c: Ctx, fits: boolean): Outcome {
  const read: Happened = { type: "pen name read", fits };
  if (fits) return happen(read);
  const slip: Happened = { type: "near miss", step: "pen", what: "another name on the pen", detail: c.walk.penCheck.pen };
  return refuse({ no: "pen name", name: insulinOf(c).name }, slip, read);
}

function look(c: Ctx, as: "as it should be" | "clumped" | "frozen" | "overheated"): Outcome {
  const id = c.walk.penCheck.pen;
  if (as === "as it should be" || id === null) return happen({ type: "insulin looked at", look: as });
  return refuse(
    { no: "insulin look", look: as },
    { type: "near miss", step: "pen", what: `insulin ${as}`, detail: id },
    { type: "insulin looked at", look: as },
    { type: "pen retired", pen: id, why: as },
  );
}

export const pen: StepRules = {
  offers,
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "name helper":
        return happen({ type: "helper named", name: intent.name });
      case "pick pen":
        return pick(c, intent.pen);
      case "pen says":
        return readName(c, intent.name === "the insulin");
      case "insulin looks":
        return look(c, intent.look);
      case "insulin mixed":
        return happen({ type: "insulin mixed" });
      case "needle fitted":
        return happen({ type: "needle fitted" });
      case "primed":
        if (intent.stream) return happen({ type: "pen primed", stream: true });
        // The next screen says what to do after the second and the third time.
        return c.walk.penCheck.dry === 0
          ? refuse({ no: "no stream" }, { type: "pen primed", stream: false })
          : happen({ type: "pen primed", stream: false });
      default:
        return happen();
    }
  },
};

/** For the last check before the needle: is the pen still the right one? */
export function penStillFits(c: Ctx): boolean {
  const found = penInHand(c);
  if (!found || !c.card) return false;
  const q = {
    pen: found.pen,
    openedOn: found.openedOn,
    used: found.used,
    retired: found.retired,
    person: c.me.person.id,
    card: c.card,
    today: c.today,
    needed: c.walk.told?.units ?? null,
    ...forBackground(c),
  };
  return c.guards.whyNotPen(q) === null;
}
