// Only where the card says the insulin comes after eating: the meal is eaten before the pen is touched.
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, press, type StepRules } from "#walk/context.ts";

export const eatFirst: StepRules = {
  offers: () => [press("main", { do: "meal eaten first" }), press("stop", { do: "leave" })],
  decide(_c: Ctx, intent: Intent) {
    return intent.do === "meal eaten first" ? happen({ type: "meal eaten first" }) : happen();
  },
};
