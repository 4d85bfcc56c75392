// How much of a food, and what to do where the table has no answer.
import { type Food, nameOf } from "#rules/food/foods.ts";
import { portionLabel, portionSentences, plateWords as words } from "#words/en/plate.ts";
import { ChooseAloud } from "./plate-find.tsx";
import type { Part } from "./plate-part.ts";

/** Halves while they matter, whole portions up to the most a plate line holds. The first screen is what is eaten nearly always. */
const PORTIONS = [1, 2, 0.5, 1.5, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20];

export function Portions({ part, food, onPortions }: { part: Part; food: Food; onPortions: (portions: number) => void }) {
  const { counting, locale } = part;
  const onePortion = (counting === "total" ? food.total : food.available) ?? 0;
  const name = nameOf(food, locale);
  return (
    <ChooseAloud
      part={part}
      heading={words.portionsHeading(name)}
      lines={[words.portionsHeading(name), ...portionSentences(food, onePortion, counting, locale)]}
      items={PORTIONS.map((portions) => ({ label: portionLabel(portions), press: () => onPortions(portions) }))}
      back={{ at: "how" }}
      wayOut={words.toPlate}
    />
  );
}

interface DeadEndProps {
  part: Part;
  onGrams: () => void;
}

const waysOn = ({ part, onGrams }: DeadEndProps) => ({
  items: [
    { label: words.typeGrams, press: onGrams },
    { label: words.otherFood, role: "main" as const, press: () => part.go({ at: "how" }) },
  ],
  back: { at: "how" } as const,
  wayOut: null,
});

/** The card leaves fibre out and the source does not report it: nothing is guessed. */
export function FibreNotKnown({ food, ...ways }: DeadEndProps & { food: Food }) {
  const { locale } = ways.part;
  const lines = [words.fibre(nameOf(food, locale)), words.fibreWrong, words.fibreTodo(locale)];
  return <ChooseAloud part={ways.part} heading={words.fibreHeading} lines={lines} {...waysOn(ways)} />;
}

export function FoodNotFound({ text, ...ways }: DeadEndProps & { text: string }) {
  const lines = [words.heard(text), words.notFoundWrong, words.notFoundTodo];
  return <ChooseAloud part={ways.part} heading={words.notFoundHeading} lines={lines} {...waysOn(ways)} />;
}
