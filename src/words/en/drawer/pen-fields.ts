// The names of what a keeper types of a pen.

export const PEN_NAMES: Readonly<Record<string, string>> = {
  "pen.device": "What is it?",
  "pen.kind": "Kind of insulin",
  "pen.insulin": "Which insulin",
  "pen.insulinName": "Name of the insulin",
  "pen.unitsPerMl": "Strength of the insulin",
  "pen.cloudy": "Cloudy, needs mixing",
  "pen.mark": "Mark that fingers feel",
  "pen.unitsPerClick": "Units of one click",
  "pen.unitsWhenOpened": "Units in a full pen",
  "pen.openedOn": "Opened on",
  "pen.inUseDays": "Days it lasts once opened",
  "pen.expiresOn": "Good until",
};

export const PEN_HINTS: Readonly<Record<string, string>> = {
  "pen.mark": "For example one rubber band. No other pen has it.",
  "pen.unitsWhenOpened": "Blank if it is not known.",
  "pen.openedOn": "With the month as a word. Blank if it is still closed.",
  "pen.inUseDays": "From the leaflet of this pen.",
  "pen.expiresOn": "The date printed on the pen.",
};
