// Filling the plate: find a food, say how many portions, see the running total. What a word means and what a portion holds is decided in rules/food.
import { useContext, useEffect, useLayoutEffect, useState } from "preact/hooks";
import type { PlateLine } from "#events/plate.ts";
import type { Grams } from "#events/quantity.ts";
import { findFoods } from "#rules/food/find.ts";
import { type Counting, type Food, foodById, type Locale } from "#rules/food/foods.ts";
import { GuardContext } from "#ui/guard-context.tsx";
import { plateWords as words } from "#words/en/plate.ts";
import { FindFood } from "./plate-find.tsx";
import { HowToCount, PlateList, TakeOff } from "./plate-list.tsx";
import type { Part, PlateFrame, Step } from "./plate-part.ts";
import { FibreNotKnown, FoodNotFound, Portions } from "./plate-portions.tsx";

export interface PlateBuilderProps {
  lines: readonly PlateLine[];
  total: Grams;
  locale: Locale;
  /** The card's way of counting. */
  counting: Counting;
  /** This person's usual meals for this time of day. */
  usualMeals: readonly { name: string; grams: Grams }[];
  onAdd: (foodId: string, portions: number) => void;
  onRemove: (index: number) => void;
  onGrams: () => void;
  onServings: () => void;
  onUsual: (index: number) => void;
  onDone: () => void;
  /** A food somebody named aloud or typed. A new object is a new request, even with the same text. */
  said?: { text: string } | null;
  frame: PlateFrame;
}

/** A food whose fibre is not known has nothing to count where the card leaves fibre out. */
const stepFor = (food: Food, counting: Counting): Step =>
  counting === "available" && food.available === null ? { at: "fibre not known", food } : { at: "portions", food };

const stepForWord = (text: string, locale: Locale, counting: Counting): Step => {
  const found = findFoods(text, locale);
  switch (found.kind) {
    case "one":
      return stepFor(found.food, counting);
    case "several":
      return { at: "foods", heading: words.whichHeading, sentence: null, foods: found.foods };
    case "ask":
      return { at: "foods", heading: words.whichHeading, sentence: words.ambiguous(found.word), foods: found.choices };
    case "none":
      return { at: "not found", text };
  }
};

const PLATE: Step = { at: "plate" };
const HOW: Step = { at: "how" };

export function PlateBuilder(props: PlateBuilderProps) {
  const { lines, locale, counting, said = null, frame } = props;
  const guard = useContext(GuardContext);
  const [wanted, setStep] = useState<Step>(PLATE);
  // An empty plate is no place to be: it asks how to fill it.
  const step = (wanted.at === "plate" || wanted.at === "take off") && lines.length === 0 ? HOW : wanted;

  useEffect(() => {
    if (said !== null) setStep(stepForWord(said.text, locale, counting));
  }, [said]);
  // A trembling second tap must not land on the next screen.
  useLayoutEffect(() => guard.screenChanged(), [guard, step]);

  const part: Part = { locale, counting, frame, go: setStep };
  const count = { onGrams: props.onGrams, onServings: props.onServings, onUsual: props.onUsual, usualMeals: props.usualMeals };
  switch (step.at) {
    case "plate":
      return <PlateList part={part} lines={lines} total={props.total} onDone={props.onDone} />;
    case "how":
      return <HowToCount part={part} lines={lines} {...count} />;
    case "take off":
      return (
        <TakeOff
          part={part}
          lines={lines}
          onRemove={(index) => {
            props.onRemove(index);
            setStep(PLATE);
          }}
        />
      );
    case "portions":
      return (
        <Portions
          part={part}
          food={step.food}
          onPortions={(portions) => {
            props.onAdd(step.food.id, portions);
            setStep(PLATE);
          }}
        />
      );
    case "fibre not known":
      return <FibreNotKnown part={part} food={step.food} onGrams={props.onGrams} />;
    case "not found":
      return <FoodNotFound part={part} text={step.text} onGrams={props.onGrams} />;
    case "groups":
    case "letters":
    case "kinds":
    case "foods":
      return (
        <FindFood
          part={part}
          step={step}
          onFood={(id) => {
            const food = foodById(id);
            if (food !== null) setStep(stepFor(food, counting));
          }}
        />
      );
  }
}
