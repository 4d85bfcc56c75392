// What the forms call a length of the body, a part that is left out, and a place that is marked.

export const BODY_NAMES: Readonly<Record<string, string>> = {
  "person.body.fingerMm": "Width of one finger",
  "person.body.handMm": "Width of one hand",
  "person.body.bellyWidthMm": "Width of the belly",
  "person.body.bellyHeightMm": "Height of the belly",
  "person.body.thighLengthMm": "Length of the thigh",
  "person.body.armLengthMm": "Length of the upper arm",
  "person.leftOut.belly": "Never the belly",
  "person.leftOut.thigh": "Never the thigh",
  "person.leftOut.arm": "Never the arm",
  "person.leftOut.buttock": "Never the buttock",
  "hands.handMm": "Width of one hand",
  "hands.bellyWidthMm": "Width of the belly",
  "hands.bellyHeightMm": "Height of the belly",
  "hands.thighLengthMm": "Length of the thigh",
  "hands.armLengthMm": "Length of the upper arm",
  "mark.kind": "What is there?",
  "mark.part": "Part of the body",
  "mark.from": "Counted from",
  "mark.along": "Fingers up or down",
  "mark.outwards": "Fingers outwards",
  "mark.radiusMm": "From its middle to its edge",
};

export const BODY_HINTS: Readonly<Record<string, string>> = {
  "person.body.fingerMm": "Blank: 17 millimeters.",
  "person.body.handMm": "Blank: 80 millimeters.",
  "person.body.bellyWidthMm": "From flank to flank. Blank: 500 millimeters.",
  "person.body.bellyHeightMm": "From the ribs to the groin. Blank: 240 millimeters.",
  "person.body.thighLengthMm": "From groin to knee. Blank: 380 millimeters.",
  "person.body.armLengthMm": "From shoulder to elbow. Blank: 360 millimeters.",
  "mark.along": "From the landmark. 0 if it is level with it.",
  "mark.outwards": "Away from the middle line; on the arm towards the back.",
  "mark.radiusMm": "Blank: 15 millimeters.",
};
