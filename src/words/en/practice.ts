// What practice shows and says. It must never be taken for the real thing, nor the real thing for practice.

export const PRACTICE = {
  title: "Practice",
  /** On every screen for as long as it lasts. */
  banner: "Practice. Nothing is saved.",
  intro: ["Practice saves nothing.", "Touch no needle. Inject nothing."],
  start: "Start practice",
  busy: ["A walk is open. Finish it first."],
  noInject: "Practice. Inject nothing.",
  madeUp: "This card is made up. Never dose by it.",
  anyHour: "You may practise at any hour.",
  eat: ["In a real walk you eat now.", "Press: I am eating."],
  done: ["That was the whole walk.", "Nothing was saved."],
  over: ["Practice is over.", "Nothing was saved."],
  asleep: ["Practice ended: nobody answered.", "Nothing was saved."],
  low: ["Practice is over.", "Was that number real? Press I feel low."],
} as const;
