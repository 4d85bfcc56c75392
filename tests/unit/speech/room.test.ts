import { describe, expect, it } from "vitest";
import { answerHeard, buttonsOnly, quietRoom, type Room, roomOnNextScreen, type Trouble, troubled } from "#speech/room.ts";

function wentThrough(list: readonly (Trouble | "next screen" | "answer")[]): { room: Room; said: number } {
  let room = quietRoom;
  let said = 0;
  for (const what of list) {
    if (what === "next screen") room = roomOnNextScreen(room);
    else if (what === "answer") room = answerHeard(room);
    else {
      const next = troubled(room, what);
      room = next.room;
      if (next.say) said++;
    }
  }
  return { room, said };
}
const loudScreen = ["too loud", "next screen"] as const;
const times = <T>(n: number, what: T): T[] => Array.from({ length: n }, () => what);

describe("a loud room", () => {
  it("is told once a screen", () => {
    expect(wentThrough(times(5, "too loud"))).toMatchObject({ said: 1, room: { shown: "too loud" } });
    expect(wentThrough(["too loud", "next screen"]).room.shown).toBeNull();
    expect(wentThrough(["too loud", "next screen", "too loud"]).said).toBe(2);
  });

  it("is said three times a walk at most, and shown after that", () => {
    const loud = times(6, [...loudScreen]).flat();
    expect(wentThrough([...loud, "too loud"])).toMatchObject({ said: 3, room: { shown: "too loud" } });
  });

  it("is no reason to stop listening", () => {
    expect(buttonsOnly(wentThrough(["too loud"]).room)).toBe(false);
  });
});

describe("other people's talk", () => {
  it("is passed over once and twice; the third remark on a screen leaves it to the buttons until the next", () => {
    expect(wentThrough(times(2, "other talk"))).toMatchObject({ said: 0, room: { shown: null } });
    const three = wentThrough(times(3, "other talk"));
    expect([three.said, buttonsOnly(three.room)]).toEqual([1, true]);
    expect(buttonsOnly(wentThrough([...times<Trouble>(3, "other talk"), "next screen" as const]).room)).toBe(false);
  });

  it("is counted anew after an answer, and on the next screen", () => {
    for (const between of ["answer", "next screen"] as const)
      expect(wentThrough(["other talk", "other talk", between, "other talk", "other talk"]).room.shown).toBeNull();
  });

  it("takes the place of a loud room without another word", () => {
    const both = wentThrough(["too loud", ...times(4, "other talk" as const)]);
    expect([both.said, both.room.shown]).toEqual([1, "other talk"]);
  });
});
