// Insulin that was too much, or the wrong one, watched: in the kitchen, on its own screen, in its calls, at the end of a reading and for whoever comes.
import { GUARDS } from "#walk/guards.ts";
import { helperPage } from "#words/en/helper.ts";
import { sayDoctorQuestion, sayDoctorWatches, sayInsulinWatchCall, sayWatchScreen } from "#words/en/insulin-watch.ts";
import { dueNow } from "#words/en/kitchen.ts";
import { sayWalk } from "#words/en/steps.ts";
import { me, odileAlone } from "./explore/at-table.ts";
import type { ReviewedScreen } from "./reviewed-screens.ts";
import type { Table } from "./table.ts";

const MINUTE = 60;

const watched = (mishap: "too much" | "wrong insulin", minutes = 0): Table => {
  const t = odileAlone().send({ do: "open mishap", person: "odile", mishap }, { do: "heard mishap advice" });
  t.pass(minutes * MINUTE);
  return t;
};
const measured = (t: Table): Table => t.send({ do: "open reading", person: "odile" }, { do: "already washed" }).number("reading", "140");
const somebodyHears = (t: Table): Table => {
  const { household } = t.state;
  if (household) t.state = { ...t.state, household: { ...household, hearer: { who: "always" } } };
  return t;
};

export function watchScreens(): ReviewedScreen[] {
  const screens: ReviewedScreen[] = [];
  const add = (when: string, lines: readonly string[]) =>
    screens.push({ part: "Too much, or the wrong insulin", when, lines, answers: [] });
  for (const mishap of ["too much", "wrong insulin"] as const) {
    const t = watched(mishap);
    add(`${mishap}: on the kitchen screen`, dueNow(t.state, t.now));
    add(`${mishap}: its own screen`, sayWatchScreen(t.state, me(t), t.now));
    const done = measured(watched(mishap));
    add(`${mishap}: a good reading`, sayWalk(done.state, done.now, GUARDS)?.lines ?? []);
    done.send({ do: "finish" });
    add(`${mishap}: on the kitchen screen after a reading`, dueNow(done.state, done.now));
    add(`${mishap}: for whoever comes`, helperPage(t.state, me(t), t.now).facts);
  }
  const late = (minutes: number) => watched("too much", minutes);
  const call = (t: Table) => [sayInsulinWatchCall(t.state, me(t), t.now)];
  add("the call for a reading", call(late(11)));
  add("no answer for half an hour, and nobody hears", call(late(31)));
  add("no answer for half an hour, and somebody hears", call(somebodyHears(late(31))));
  add("before a doctor watches", sayDoctorQuestion());
  add("a doctor watches", sayDoctorWatches());
  const doubtful = measured(watched("too much")).send({ do: "finish" });
  doubtful.restart();
  add("the clock is not sure", sayWatchScreen(doubtful.state, me(doubtful), doubtful.now));
  return screens;
}
