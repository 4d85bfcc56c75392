// Finding a food by kind or by first letter, a screenful at a time.

import { FOOD_GROUPS, type Food, type FoodGroup, nameOf } from "#rules/food/foods.ts";
import { byFirstLetter, byGroup, firstLetters, mealGroups } from "#rules/food/groups.ts";
import { useHearable } from "#screens/shared/hear.ts";
import { FIXED } from "#words/en/fixed.ts";
import { groupName, plateWords as words } from "#words/en/plate.ts";
import { type ChoiceButton, TurnedScreen } from "./choices-screen.tsx";
import type { FindStep, Part, Step } from "./plate-part.ts";

/** Letters to a range: four are the buttons of one screen. */
const RANGE = 4;
/** More foods than this on a letter: their kinds first. */
const MANY_FOODS = 8;

const kindsOf = (foods: readonly Food[]): FoodGroup[] => FOOD_GROUPS.filter((group) => foods.some((food) => food.group === group));

const rangesOf = (letters: readonly string[]): string[][] =>
  Array.from({ length: Math.ceil(letters.length / RANGE) }, (_, place) => letters.slice(place * RANGE, (place + 1) * RANGE));

export function FindFood({ part, step, onFood }: { part: Part; step: FindStep; onFood: (id: string) => void }) {
  const { locale, go } = part;
  const toFoods = (foods: readonly Food[], heading: string) => go({ at: "foods", heading, sentence: null, foods });

  switch (step.at) {
    case "groups":
      return (
        <Choose
          part={part}
          heading={words.kindHeading}
          items={mealGroups().map((group) => ({
            label: groupName(group, locale),
            press: () => toFoods(byGroup(group), groupName(group, locale)),
          }))}
          back={{ at: "how" }}
          wayOut={words.toPlate}
        />
      );
    case "letters": {
      const toLetter = (letter: string) => {
        const foods = byFirstLetter(letter, locale);
        if (foods.length > MANY_FOODS && kindsOf(foods).length > 1) go({ at: "kinds", letter, foods });
        else toFoods(foods, words.foodHeading);
      };
      const items = step.range
        ? step.range.map((letter) => ({ label: letter.toUpperCase(), press: () => toLetter(letter) }))
        : rangesOf(firstLetters(locale)).map((range) => ({ label: words.range(range), press: () => go({ at: "letters", range }) }));
      return (
        <Choose
          part={part}
          heading={words.letterHeading}
          items={items}
          back={step.range ? { at: "letters", range: null } : { at: "how" }}
          wayOut={step.range ? null : words.toPlate}
        />
      );
    }
    case "kinds":
      return (
        <Choose
          part={part}
          heading={words.kindHeading}
          items={kindsOf(step.foods).map((group) => ({
            label: groupName(group, locale),
            press: () =>
              toFoods(
                step.foods.filter((food) => food.group === group),
                words.foodHeading,
              ),
          }))}
          back={{ at: "letters", range: null }}
          wayOut={words.toPlate}
        />
      );
    case "foods":
      return (
        <ChooseAloud
          part={part}
          heading={step.heading}
          lines={step.sentence === null ? [] : [step.sentence]}
          items={step.foods.map((food) => ({ label: nameOf(food, locale), press: () => onFood(food.id) }))}
          back={{ at: "how" }}
          wayOut={words.noneOfThese}
        />
      );
  }
}

interface ChooseProps {
  part: Part;
  heading: string;
  /** What is to be read before choosing. */
  lines?: readonly string[];
  items: readonly ChoiceButton[];
  /** Where Back leads within the plate; null: to the question before the plate. */
  back: Step | null;
  /** The last of the choices leads out: back to the plate, or on to another way of finding. */
  wayOut: string | null;
}

function buttonsOf({ part, items, back, wayOut }: ChooseProps): ChoiceButton[] {
  return wayOut === null
    ? [...items]
    : [...items, { label: wayOut, press: () => part.go(wayOut === words.toPlate || !back ? { at: "plate" } : back) }];
}

/** A list of choices for the hand: meanwhile the ear takes foods, grams and servings by their names. What the walk says again is shown. */
export function Choose(props: ChooseProps) {
  const { part, heading, lines = [], back } = props;
  const { chrome, says, refused, ...frame } = part.frame;
  return (
    <TurnedScreen
      {...frame}
      chrome={back ? { ...chrome, onBack: () => part.go(back) } : chrome}
      title={heading}
      lines={refused || (lines.length === 0 && frame.speaking >= 0) ? says : lines}
      buttons={buttonsOf(props)}
    />
  );
}

/** The same, but what can be pressed can be said: which of several foods, and how much of it. */
export function ChooseAloud(props: ChooseProps) {
  const { part, heading, lines = [], back } = props;
  const spoken = lines.length > 0 ? lines : [heading];
  const out = back ? [{ label: FIXED.back, press: () => part.go(back) }] : [];
  useHearable({ title: heading, lines: spoken, buttons: [...buttonsOf(props), ...out] }, false);
  return <Choose {...props} lines={spoken} />;
}
