// Words of the screens themselves: the five constant things, the kitchen screen, help.
import type { NumberSlot } from "#events/told.ts";
import type { Step } from "#walk/state.ts";

export const FIXED = {
  help: "Help",
  again: "Again",
  quiet: "Quiet",
  goOn: "Go on",
  back: "Back",
  wrong: "Something is wrong",
  /** Brings the next buttons. */
  more: "More",
  /** Turns to the next page of words. */
  readOn: "Read on",
  constant: "Always here",
  pressNumber: "Press the number",
  ok: "OK",
  delete: "Delete",
  numberIs: "The number so far",
  stopHere: "Stop here",
  whatIsWrong: "What is wrong?",
  nothingWrong: "Nothing. Go back",
  call: "Call",
  bigger: "Bigger letters",
  dark: "Dark screen",
  light: "Light screen",
  louder: "Louder",
  softer: "Softer",
  slower: "Slower",
  faster: "Faster",
  loudest: "This is the loudest.",
  softest: "This is the softest.",
  slowest: "This is the slowest.",
  fastest: "This is the fastest.",
  voiceHelp: "Say louder, softer, slower or faster at any time.",
  close: "Close help",
  who: "Who is it?",
  whichMeal: "Which meal?",
  meal: "Start a meal",
  background: "Long-acting insulin",
  reading: "Measure glucose",
  whichBackground: "Which long-acting dose?",
  didI: "Did I take it?",
  low: "I feel low",
  ill: "I feel ill",
  dayBook: "Day book",
  lumps: "Feel for lumps",
  drawer: "Drawer",
  practice: "Practice",
  about: "About Tablebell",
  voiceMode: "Who speaks?",
  appSpeaks: "Tablebell speaks and listens",
  appSpeaksOnly: "Tablebell speaks",
  calls: "it is time to eat",
  kitchenHelp: "Start a meal, or ask if you took it.",
  readerSpeaks: "My screen reader speaks",
  textOnly: "Nobody. Text only",
  later: "Away from home",
  answerMeal: "Tell about the meal",
  listening: "I am listening.",
  noEars: "Press the buttons. I cannot hear you here.",
  noVoice: "No voice here. Read, and listen for tones.",
  soundOff: "Touch anywhere to turn the sound on.",
  demo: "This is a demo household.",
  saved: "Saved.",
  update: "A new version is ready",
  left: "left",
  leftSide: "Left",
  rightSide: "Right",
  oneMoment: "One moment. The demo household is being laid out.",
  walkComes: "One moment. The walk is being laid out.",
  nobodyYet: "Nobody is set up yet. A keeper opens the drawer.",
  oneSwitch: "Use one switch",
  noSwitch: "One switch off",
  youCanSay: "You can say:",
  aNumber: "a number",
  otherAnswers: "Other answers",
  anotherPlace: "Another place",
  press: "Press",
  or: "or",
  earOff: "I stop listening now. Press the buttons.",
} as const;

/** Why the ear cannot hear an answer now, and what to do. */
export const IN_THE_WAY = {
  "too loud": ["It is too loud for me.", "Press, or say it when it is quieter."],
  "other talk": ["I hear other people talk.", "Press the buttons on this screen."],
  deaf: ["I cannot hear you any more.", "Press the buttons."],
} as const;

/** The button that opens the pad for a slot, where the screen offers other answers too. */
export const PAD_BUTTON: Readonly<Record<NumberSlot, string>> = {
  reading: "Press the number",
  grams: "Grams",
  servings: "Servings of 15 grams",
  "own number": "Press the number",
  "telephoned number": "A number by telephone",
  dial: "Press the number",
  "left in window": "Another number",
  recheck: "New reading",
  "recheck after low": "New reading",
  // Under "Call 911 now" a number would be taken for that one.
  "reading when ill": "New reading",
  ketones: "Press the number",
};

export const PAD_TITLE: Readonly<Record<NumberSlot, string>> = {
  reading: "What does the meter show?",
  grams: "How many grams?",
  servings: "How many servings of 15 grams?",
  "own number": "How many units on your card?",
  "telephoned number": "How many units were you told?",
  dial: "What does the dial show?",
  "left in window": "What does the window show?",
  recheck: "What does the meter show?",
  "recheck after low": "What does the meter show?",
  "reading when ill": "What does the meter show?",
  ketones: "What does the ketone meter show?",
};

/** Help for each step: three short lines at most. */
export const HELP: Readonly<Record<Step, readonly string[]>> = {
  taken: ["I look for a dose that was taken already.", "If you are not sure, do not inject."],
  wash: ["Clean hands give a true reading.", "Food on the skin can double it."],
  reading: ["Look at your meter.", "Say the number, or press it.", "If the meter shows HI or LO, press that."],
  plate: ["Tell what you will eat now.", "Sugar that treated a low does not count."],
  card: ["This comes from your signed card.", "I never make a dose of my own."],
  "eat first": ["Your card says: insulin after eating."],
  pen: ["Feel the mark on your pen.", "A new needle each time."],
  dial: ["Turn the dial to the number.", "I stay silent so that you can count."],
  place: ["Use your fingers to find the spot.", "If the skin is not well, choose another place."],
  skin: ["Wet skin can sting.", "Keep the needle up, with its cap on."],
  inject: ["Straight in. Press. Hold for the count.", "If anything is odd, press Something is wrong."],
  "put away": ["Used needles go into the sharps box."],
  eat: ["Insulin is in. Food must follow.", "If you cannot eat, say so at once."],
  done: ["This walk is written in the day book."],
  ill: ["One question at a time.", "If it gets worse, say so at once."],
  low: ["Sugar first. Insulin later.", "The number decides, not the feeling."],
  mishap: ["Do what your card says.", "If in doubt, call."],
  "needle question": ["If you do not know, say so.", "Until you say no, the dose counts as taken."],
};

/** The usual cautions; they stand on the first screen of a new household and in the README. */
export const CAUTIONS: readonly string[] = [
  "Tablebell is not a medical device.",
  "It checks against your clinician's card. It never makes a dose.",
  "Follow your care team. Their word comes first.",
  "If number and feeling disagree, measure again.",
  "If you are unsure, do not inject. Call.",
  "It cannot see the pen, hear through walls or fetch help.",
];

/** What the tool is not for, one sentence each. */
export const NOT_FOR: readonly string[] = [
  "It is not for children.",
  "It is not for insulin pumps.",
  "It is not for insulin drawn by syringe from vials.",
];
