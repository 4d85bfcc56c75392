// Step 10: clean the spot and let it dry, with the needle capped.
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, press, refuse, type StepRules, waitOver } from "#walk/context.ts";
import { careMs } from "./care-ms.ts";

export const skin: StepRules = {
  offers(c: Ctx) {
    if (!c.walk.cleaned)
      return [press("main", { do: "skin cleaned", how: "wiped" }), press("choice", { do: "skin cleaned", how: "clean without a wipe" })];
    if (waitOver(c.walk, c.now, c.sure)) return [press("main", { do: "wait is over" })];
    return [press("choice", { do: "jump wait", reason: "the skin is dry" })];
  },
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "skin cleaned":
        // Nothing to dry where nothing was wiped (WHO toolkit 2010: visibly clean skin needs no swab).
        return intent.how === "wiped"
          ? happen({ type: "skin cleaned", how: "wiped" }, { type: "wait began", for: "skin", ms: careMs(c.card, "dryingSeconds") })
          : happen({ type: "skin cleaned", how: intent.how }, { type: "skin dry" });
      case "wait is over":
        return waitOver(c.walk, c.now, c.sure) ? happen({ type: "skin dry" }) : refuse({ no: "wait is not over" });
      case "jump wait":
        return happen(
          { type: "near miss", step: "skin", what: "drying cut short", detail: intent.reason },
          { type: "wait jumped", for: "skin", reason: intent.reason },
          { type: "skin dry" },
        );
      default:
        return happen();
    }
  },
};
