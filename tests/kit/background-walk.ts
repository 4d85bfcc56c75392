// A person with mealtime and background insulin, and a clean background walk.
import type { BackgroundDose, DoseCard } from "#events/card.ts";
import { type ClockTime, units } from "#events/quantity.ts";
import { fixedCard, odile, odileNight, odilePen } from "./people.ts";
import { Table } from "./table.ts";

export const GLARGINE = { id: "glargine-100", name: "insulin glargine", unitsPerMl: 100, kind: "long-acting" } as const;

export const dose = (at: ClockTime, n: number, over: Partial<BackgroundDose> = {}): BackgroundDose => ({
  insulin: GLARGINE,
  units: units(n),
  at,
  windowMinutes: 1080,
  ...over,
});

export const nightCard: DoseCard = { ...fixedCard, background: [dose("21:30", 14)] };
export const twiceCard: DoseCard = {
  ...fixedCard,
  background: [dose("20:00", 12, { windowMinutes: 480 }), dose("08:00", 10, { windowMinutes: 480 })],
};

/** A card and both pens; noon, and recorded without a gap for longer than any window of a background dose. */
export function withNight(card: DoseCard = nightCard, pens = [odilePen, odileNight]): Table {
  const t = new Table([{ person: odile, card, pens }]);
  t.pass(10 * 3600);
  t.send({ do: "open reading", person: "odile" }, { do: "leave" }, { do: "set aside", person: "odile" });
  t.pass(14 * 3600);
  return t;
}

export const open = (t: Table, at: ClockTime = "21:30"): Table =>
  t.send({ do: "open background", person: "odile", at, insulin: GLARGINE.id });

/** From washing to the dose told, without a reading. */
export const toDose = (t: Table): Table => t.send({ do: "already washed" }, { do: "leave out reading" });

export const toNeedle = (t: Table, text = "14"): Table =>
  t
    .send(
      { do: "heard dose" },
      { do: "pick pen", pen: "odile-night", how: "mark" },
      { do: "pen says", name: "the insulin" },
      { do: "insulin looks", look: "as it should be" },
      { do: "needle fitted" },
      { do: "primed", stream: true },
    )
    .number("dial", text)
    .send({ do: "take spot" }, { do: "skin cleaned", how: "clean without a wipe" });

export function toEnd(t: Table): Table {
  t.send({ do: "button is down" });
  t.pass(10);
  return t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" }, { do: "finish" });
}

export const whole = (t: Table, at: ClockTime = "21:30", text = "14"): Table => toEnd(toNeedle(toDose(open(t, at)), text));
