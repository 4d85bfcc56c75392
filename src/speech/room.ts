// What is in the way of listening: noise is told once a screen at most, a few times a walk, and never a nag. Pure.

/** "too loud": nobody can be heard over the room. "other talk": speech that fits nothing, as of a television. "deaf": an ear that heard has died. */
export type Trouble = "too loud" | "other talk" | "deaf";

/** So often in a walk it is said aloud; after that it is only shown (our choice, no source). */
const SAID_A_WALK = 3;
/** One stray remark is no television; three on one screen are talk that does not stop (our choice, no source). */
const TALK_ALLOWED = 3;

export interface Room {
  /** Shown on this screen; null: nothing is in the way. */
  shown: Trouble | null;
  /** Remarks on this screen that fit nothing. */
  talk: number;
  /** How often it was said in this walk. */
  said: number;
}

export const quietRoom: Room = { shown: null, talk: 0, said: 0 };

export const roomOnNextScreen = (r: Room): Room => ({ ...r, shown: null, talk: 0 });

/** With other people's talk in the room, and without an ear, this screen is answered by hand. */
export const buttonsOnly = (r: Room): boolean => r.shown === "other talk" || r.shown === "deaf";

/** An answer was heard: what was in the way is over. */
export const answerHeard = (r: Room): Room => ({ ...r, shown: null, talk: 0 });

/** What changes when the ear met trouble, and whether it is to be said. */
export function troubled(r: Room, trouble: Trouble): { room: Room; say: boolean } {
  // Whoever is waited for must be told, however often the room was in the way before.
  if (trouble === "deaf") return { room: { ...r, shown: "deaf" }, say: r.shown !== "deaf" };
  const talk = trouble === "other talk" ? r.talk + 1 : r.talk;
  if (r.shown === "other talk" || r.shown === trouble || (trouble === "other talk" && talk < TALK_ALLOWED))
    return { room: { ...r, talk }, say: false };
  const say = r.shown === null && r.said < SAID_A_WALK;
  return { room: { shown: trouble, talk, said: say ? r.said + 1 : r.said }, say };
}
