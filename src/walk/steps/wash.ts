// Step 3: wash and dry the hands. Unwashed hands can double a reading (Diabetes Care 2011, fruit-peeling study).
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, press, refuse, type StepRules, waitOver } from "#walk/context.ts";
import { careMs } from "./care-ms.ts";

export const wash: StepRules = {
  offers(c: Ctx) {
    const skip = press("choice", { do: "skip washing", reason: "no water here" });
    if (!c.walk.wait) return [press("main", { do: "begin wait" }), press("choice", { do: "already washed" }), skip];
    if (waitOver(c.walk, c.now, c.sure)) return [press("main", { do: "wait is over" })];
    return [press("choice", { do: "already washed" }), skip];
  },
  decide(c: Ctx, intent: Intent) {
    switch (intent.do) {
      case "begin wait":
        return happen({ type: "wait began", for: "wash", ms: careMs(c.card, "washSeconds") });
      case "wait is over":
        return waitOver(c.walk, c.now, c.sure)
          ? happen({ type: "hands washed", how: "counted", reason: null })
          : refuse({ no: "wait is not over" });
      case "already washed":
        return happen({ type: "hands washed", how: "already washed", reason: null });
      case "skip washing":
        return happen(
          { type: "near miss", step: "wash", what: "washing skipped", detail: intent.reason },
          { type: "hands washed", how: "skipped", reason: intent.reason },
        );
      default:
        return happen();
    }
  },
};
