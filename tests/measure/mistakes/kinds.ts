// The 32 mistakes that hurt people at this table (DEVELOPERS.md, "The mistakes"), fixed before any run: could a nurse who stands at the elbow see it?
// Our own judgement, no source: she sees hands, pen, meter, skin and plate; she does not see what happened elsewhere, or what is in nobody's sight.

export interface Kind {
  readonly id: number;
  readonly name: string;
  readonly nurseSees: boolean;
  /** What a miss comes from, if there is one. */
  readonly whyMissed: string;
}

const LIKE = "yes was said to a like number";
const ECHO = "the expected number was said, the pen not looked at";

const kind = (id: number, name: string, whyMissed = "", nurseSees = true): Kind => ({ id, name, nurseSees, whyMissed });

export const KINDS: readonly Kind[] = [
  kind(1, "misheard number", LIKE),
  kind(2, "mistyped number", LIKE),
  kind(3, "wrong unit"),
  kind(4, "stale reading"),
  kind(5, "dosing while low"),
  kind(6, "carbohydrate ten times too large", LIKE),
  kind(7, "another meal's row"),
  kind(8, "expired card"),
  kind(9, "stacked correction"),
  kind(10, "second full dose"),
  kind(11, "dialled is not the card's", ECHO),
  kind(12, "wrong insulin or another's pen"),
  kind(13, "pen expired, open too long or spoilt"),
  kind(14, "no priming", ECHO),
  kind(15, "cloudy insulin not mixed"),
  kind(16, "same spot, scar, too near the navel"),
  kind(17, "wet skin"),
  kind(18, "needle out early", ECHO),
  kind(19, "meal late, forgotten or half eaten", "no call of the bell was heard"),
  kind(20, "low not rechecked"),
  kind(21, "wrong person"),
  kind(22, "clock jump"),
  kind(23, "power lost between needle and log"),
  kind(24, "card changed without the right", "the PIN was guessed within eleven tries"),
  kind(25, "correction repeated, still high"),
  kind(26, "dose taken away from the tablet", "nobody told the tablet", false),
  kind(27, "pen empty in mid-dose", "nought was said, the window not looked at"),
  kind(28, "hard exercise not told", "", false),
  kind(29, "another voice answers", LIKE),
  kind(30, "double tap of a tremor"),
  kind(31, "dialled back, or inner cap left on"),
  kind(32, "treatment sugar dosed for"),
];

/** Before: nothing harmful went in. After: it did, and the tablet found it out. Reported: a truthful answer was all that showed it. */
export type Outcome = "before" | "after" | "reported" | "missed";
