import { describe, expect, it } from "vitest";
import { fixedCard, odile, odilePen } from "../../kit/people.ts";
import { Table } from "../../kit/table.ts";

const table = () => new Table([{ person: odile, card: fixedCard, pens: [odilePen] }]);

describe("a whole meal walk with a card of fixed units", () => {
  it("goes through every step and ends with the meal eaten", () => {
    const t = table();
    t.send({ do: "open meal", person: "odile", meal: "breakfast" });
    expect(t.step()).toBe("wash");
    t.send({ do: "already washed" }).number("reading", "120");
    expect(t.step()).toBe("plate");
    t.send({ do: "exercise", hard: false }, { do: "meal is ready" });
    expect(t.step()).toBe("card");
    expect(t.state.people.odile?.walk?.told?.units).toBe(6);
    t.send({ do: "heard dose" }, { do: "pick pen", pen: "odile-meal", how: "mark" }, { do: "insulin looks", look: "as it should be" });
    t.send({ do: "needle fitted" }, { do: "primed", stream: true });
    expect(t.step()).toBe("dial");
    t.number("dial", "6").send({ do: "take spot" }, { do: "skin cleaned", how: "wiped" });
    t.pass(20);
    t.send({ do: "wait is over" });
    expect(t.step()).toBe("inject");
    t.send({ do: "button is down" });
    t.pass(10);
    t.send({ do: "wait is over" }, { do: "window is at zero" }, { do: "put away" });
    expect(t.step()).toBe("eat");
    expect(t.state.people.odile?.bell).not.toBeNull();
    t.pass(300);
    t.send({ do: "eating" });
    expect(t.state.people.odile?.bell).toBeNull();
    t.send({ do: "finish" });
    expect(t.step()).toBe("kitchen");
    expect(t.state.people.odile?.doses[0]?.units).toBe(6);
  });
});
