// For whoever is in the house when somebody cannot swallow or does not wake: one step at a time, the call first.
import type { Ctx } from "#walk/context.ts";

/** "kit": a step of the person's own glucagon kit, as the keeper typed it. */
export type HelpStep = { say: "call" | "turn on side" | "stay" } | { say: "kit"; text: string; number: number; of: number };

/** General first-aid teaching and the ADA's patient page: call, glucagon by the kit's own leaflet where there is one, on the side, nothing by mouth. */
export function helpSteps(c: Ctx): HelpStep[] {
  const typed = c.me.person.glucagonSteps ?? [];
  const kit = typed.map((text, i): HelpStep => ({ say: "kit", text, number: i + 1, of: typed.length }));
  return [{ say: "call" }, ...kit, { say: "turn on side" }, { say: "stay" }];
}

/** The step that is said now; the last one stays. A kit that was typed shorter meanwhile leaves the last. */
export function helpStepNow(c: Ctx): { step: HelpStep; isLast: boolean; done: number } {
  const steps = helpSteps(c);
  const done = Math.min(c.walk.low?.helpSteps ?? 0, steps.length - 1);
  return { step: steps[done] ?? { say: "call" }, isLast: done === steps.length - 1, done };
}
