// Step 9: one spot, offered; "not there" brings the next best at once.
import type { Happened } from "#events/happened.ts";
import type { Intent } from "#events/intent.ts";
import { DAY } from "#events/quantity.ts";
import type { Region, Spot } from "#events/spot.ts";
import type { SiteUse, SpotQuestion } from "#rules/body/limits.ts";
import { nextSpot } from "#rules/body/planner.ts";
import { siteCode } from "#rules/body/site-code.ts";
import { siteRules } from "#rules/body/site-rules.ts";
import { type Ctx, happen, press, type StepRules } from "#walk/context.ts";

const BLANK = { restDays: null, lastSpotMm: null, navelMm: null };

/** What the planner is asked for this walk. Days are whole days since the use. */
export function spotQuestion(c: Ctx): SpotQuestion {
  const uses: SiteUse[] = c.me.uses.map((u) => ({ spot: u.spot, daysAgo: Math.max(0, Math.floor((c.now.wall - u.at) / DAY)) }));
  const kept = c.walk.meal ? c.card?.regions?.[c.walk.meal] : null;
  return {
    body: c.me.person.body,
    noGo: c.me.noGo,
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
    // A lump rests long and a scar stays: marked, so that it is not offered another day.
    if (intent.reason === "lump" || intent.reason === "scar or mole") {
      const kind = intent.reason === "lump" ? "lump" : "scar";
      return happen(declined, {
        type: "no-go place marked",
        noGo: { id: `${c.walk.id}:${c.walk.declined.length}`, spot, radiusMm: 15, kind },
      });
    }
    return happen(declined);
  },
};
