// What only a walk shows and says: one script of its own, which the kitchen screen need not wait for.
import { NumberScreen } from "#screens/kitchen/number-screen.tsx";
import { WalkScreen } from "#screens/kitchen/walk-screen.tsx";
import { AboutScreen } from "#screens/shared/about-screen.tsx";
import { PracticeScreen } from "#screens/shared/practice-screen.tsx";
import { sayRefusal } from "#words/en/refusals.ts";
import { sayEat } from "#words/en/steps/after-needle.ts";
import { sayWalk } from "#words/en/steps.ts";
import { practiceDesk } from "./practice-desk.ts";

export const walkPart = { practiceDesk, AboutScreen, NumberScreen, PracticeScreen, WalkScreen, sayEat, sayRefusal, sayWalk };

export type WalkPart = typeof walkPart;
