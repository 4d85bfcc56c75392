// Steps 12 to 14: put away, eat, and the last sentence.
import type { Intent } from "#events/intent.ts";
import { type Ctx, happen, press, type StepRules } from "#walk/context.ts";

export const putAway: StepRules = {
  offers: () => [press("main", { do: "put away" })],
  decide: (_c: Ctx, intent: Intent) => (intent.do === "put away" ? happen({ type: "pen put away" }) : happen()),
};

export const eat: StepRules = {
  arrive: (c) => (c.walk.eatenFirst ? [{ type: "eating" }] : []),
  offers: () => [press("main", { do: "eating" }), press("wrong", { do: "cannot eat" })],
  decide(_c: Ctx, intent: Intent) {
    if (intent.do === "eating") return happen({ type: "eating" });
    // Insulin is in and no food comes: fast sugar and the low walk's watch.
    if (intent.do === "cannot eat") return happen({ type: "cannot eat" }, { type: "low began", because: "cannot eat" });
    return happen();
  },
};

export const done: StepRules = {
  offers: () => [press("main", { do: "finish" })],
  decide: (_c: Ctx, intent: Intent) => (intent.do === "finish" ? happen({ type: "walk ended", how: "whole walk" }) : happen()),
};
