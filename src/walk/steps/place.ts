// Step 9: one spot, offered; "not there" brings the next best at once.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { DAY } from "#events/quantity.ts";
import type { NoGo, Region, Spot } from "#events/spot.ts";
import type { SiteUse, SpotQuestion } from "#rules/body/limits.ts";
import { MARK_RADIUS_MM, marksThatHold } from "#rules/body/marks.ts";
import { nextSpot } from "#rules/body/planner.ts";
import { siteCode } from "#rules/body/site-code.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { type Ctx, happen, press, type StepRules } from "#walk/context.ts";

const BLANK = { restDays: null, lastSpotMm: null, navelMm: null };

const MARKED_AS: Partial<Record<Extract<Intent, { do: "not this spot" }>["reason"], NoGo["kind"]>> = {
  sore: "sore",
  lump: "lump",
  "scar or mole": "scar",
};

/** What the planner is asked for this walk. Days are whole days since the use. */
export function spotQuestion(c: Ctx): SpotQuestion {
  const uses: SiteUse[] = c.me.uses.map((u) => ({ spot: u.spot, daysAgo: Math.max(0, Math.floor((c.now.wall - u.at) / DAY)) }));
  const kept = c.walk.meal ? c.card?.regions?.[c.walk.meal] : null;
  return {
    body: c.me.person.body,
    noGo: marksThatHold(c.me.noGo, c.sure ? c.now.wall : null),
    uses,
    rules: siteRules(c.card?.care ?? BLANK, c.me.person.body, c.walk.offered && !c.walk.offered.fullRest ? c.walk.offered.restDays : null),
    region: (kept ?? null) as Region | null,
  };
}

function offer(c: Ctx): Happened {
  const next = nextSpot({ ...spotQuestion(c), declined: c.walk.declined, leftOutRegions: c.me.person.leftOutRegions });
  if (next.none) return { type: "no spot free", why: next.why };
  // Skin used the same day has not rested at all: the clinic is asked instead.
  if (!next.fullRest && next.restDays < 1) return { type: "no spot free", why: "every place was used today" };
  return { type: "spot offered", spot: next.spot, restDays: next.restDays, fullRest: next.fullRest };
}

export const place: StepRules = {
  offers(c: Ctx) {
    if (!c.walk.offered) return [press("stop", { do: "leave" })];
    const reasons = ["sore", "lump", "scar or mole", "cannot reach", "other"] as const;
    return [press("main", { do: "take spot" }), ...reasons.map((reason) => press("choice", { do: "not this spot", reason }))];
  },
  arrive(c) {
    return c.walk.offered || c.walk.noSpot ? [] : [offer(c)];
  },
  decide(c: Ctx, intent: Intent) {
    const spot: Spot | undefined = c.walk.offered?.spot;
    if (!spot) return happen();
    if (intent.do === "take spot") return happen({ type: "spot chosen", spot, code: siteCode(spot) });
    if (intent.do !== "not this spot") return happen();
    const declined: Happened = { type: "spot declined", spot, reason: intent.reason };
    // Marked, so that it is not offered another day: a sore until it heals, a lump until it is told gone, a scar for good.
    const kind = MARKED_AS[intent.reason];
    if (!kind) return happen(declined);
    const noGo: NoGo = { id: `${c.walk.id}:${c.walk.declined.length}`, spot, radiusMm: MARK_RADIUS_MM, kind };
    return happen(declined, { type: "no-go place marked", noGo });
  },
};
