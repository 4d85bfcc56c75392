// The rules of each step by its name.

import type { StepRules } from "./context.ts";
import type { Step } from "./state.ts";
import { done, eat, putAway } from "./steps/after.ts";
import { card } from "./steps/card.ts";
import { dial } from "./steps/dial.ts";
import { eatFirst } from "./steps/eat-first.ts";
import { ill } from "./steps/ill.ts";
import { inject } from "./steps/inject.ts";
import { low } from "./steps/low.ts";
import { mishap, needleQuestion } from "./steps/mishap.ts";
import { pen } from "./steps/pen.ts";
import { place } from "./steps/place.ts";
import { plate } from "./steps/plate.ts";
import { reading } from "./steps/reading.ts";
import { skin } from "./steps/skin.ts";
import { taken } from "./steps/taken.ts";
import { wash } from "./steps/wash.ts";

export const STEPS: Readonly<Record<Step, StepRules>> = {
  taken,
  wash,
  reading,
  plate,
  card,
  "eat first": eatFirst,
  pen,
  dial,
  place,
  skin,
  inject,
  "put away": putAway,
  eat,
  done,
  low,
  ill,
  mishap,
  "needle question": needleQuestion,
};
