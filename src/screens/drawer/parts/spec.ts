// What a form asks, as values: the form draws them, the tests read them. Names, hints and answers are words/en/drawer's.

export type Spec =
  | { kind: "text" | "number" | "phone" | "long" | "pin" | "name"; field: string; hint?: string }
  | { kind: "choice"; field: string; options: readonly string[] }
  | { kind: "tick"; field: string }
  /** Fields that belong together: in one line, or one below the other. */
  | { kind: "row"; field: string; specs: readonly Spec[]; below?: true };

export interface Section {
  /** Left out where the page has no other part. */
  heading?: string;
  specs: readonly Spec[];
  /** Buttons under the section: one more row. goesTo: its place, whose first box takes the focus then. */
  more?: readonly { label: string; goesTo: string; onPress: () => void }[];
}
