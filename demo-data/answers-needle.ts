// How the simulated person answers from the pen to the meal.
import { MINUTE } from "#events/quantity.ts";
import { SILENCE_WRITTEN_AT } from "#walk/bell.ts";
import { viaOf } from "./habits.ts";
import type { Answer, Walker } from "./walker.ts";

const penOf = (w: Walker, person: string, kind: "mealtime" | "long-acting"): string =>
  w.home.person(person).pens.find((p) => p.pen.kind === kind && !p.retired)?.pen.id ?? "";

function pickPen(w: Walker): void {
  const { person } = w.habits;
  const other = Object.keys(w.home.state.people).find((id) => id !== person) ?? person;
  if (w.slips("picks the night pen")) w.home.slip({ do: "pick pen", pen: penOf(w, person, "long-acting"), how: "mark" });
  if (w.slips("picks the other's pen")) w.home.slip({ do: "pick pen", pen: penOf(w, other, "mealtime"), how: "mark" });
  w.pause(1, 10);
  w.home.send({ do: "pick pen", pen: penOf(w, person, "mealtime"), how: "mark" });
}

export const pen: Answer = (w, { penCheck }) => {
  if (!penCheck.pen) pickPen(w);
  else if (!penCheck.looked) w.home.send({ do: "insulin looks", look: "as it should be" });
  else w.home.send(penCheck.needle ? { do: "primed", stream: true } : { do: "needle fitted" });
};

export const dial: Answer = (w, walk) => {
  const right = walk.told?.units ?? 0;
  if (w.slips("dials another number")) {
    w.home.send({ do: "give number", slot: "dial", text: `${right + (w.chance.happens(0.5) ? 1 : -1)}`, via: "touch", helper: null });
    w.pause(2, 5);
    w.home.slip({ do: "agree number" });
    w.pause(8, 20);
  }
  w.number("dial", `${right}`, viaOf(w.habits, w.chance));
};

export const place: Answer = (w, walk) => {
  if (!walk.offered) {
    w.home.send({ do: "leave" });
    return;
  }
  if (w.slips("spot is sore")) w.home.send({ do: "not this spot", reason: "sore" });
  if (w.slips("spot has a lump")) w.home.send({ do: "not this spot", reason: "lump" });
  w.pause(1, 4);
  w.home.send({ do: "take spot" });
};

export const skin: Answer = (w) => {
  const cutShort = w.is("drying cut short");
  const wiped = cutShort || w.chance.happens(w.habits.wiped);
  w.home.send({ do: "skin cleaned", how: wiped ? "wiped" : "clean without a wipe" });
  if (!wiped) return;
  if (cutShort) {
    w.pause(4, 9);
    w.home.send({ do: "jump wait", reason: "the skin is dry" });
    return;
  }
  w.waitOut();
  w.home.send({ do: "wait is over" });
};

export const inject: Answer = (w, walk) => {
  if (walk.pressed) {
    if ((walk.dial?.units ?? 0) > 2 && w.slips("number left in the window")) w.number("left in window", "1");
    else w.home.send({ do: "window is at zero" });
    return;
  }
  w.home.send({ do: "button is down" });
  if (w.slips("app stops at the needle")) {
    w.pause(20, 40);
    w.home.startAgain();
  } else if (w.is("needle out early")) {
    w.pause(3, 6);
    w.home.send({ do: "needle came out early" });
  } else {
    w.waitOut();
    w.home.send({ do: "wait is over" });
  }
};

/** The bell rings as it would: each silence is written when it is due. */
export const eat: Answer = (w) => {
  const { bell } = w.me;
  if (bell) {
    const bite = bell.from.wall + w.plan.bite * MINUTE;
    for (const mark of SILENCE_WRITTEN_AT) {
      const due = bell.from.wall + bell.latestMs + mark * MINUTE;
      if (due >= bite) break;
      w.home.passTo(due);
      w.home.send({ do: "pass time" });
    }
    w.home.passTo(bite);
  }
  w.home.send({ do: "eating" });
};
