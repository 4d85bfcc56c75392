// How much of a food, and what to do where the table has no answer.
import { type Food, nameOf } from "#rules/food/foods.ts";
import { BigButton } from "#ui/button.tsx";
import { Notice } from "#ui/notice.tsx";
import { portionLabel, portionSentences, plateWords as words } from "#words/en/plate.ts";
import { Choose } from "./plate-find.tsx";
import type { Part } from "./plate-part.ts";
import "./plate.css";

/** Halves while they matter, whole portions up to the most a plate line holds. The first page is what is eaten nearly always. */
const PORTIONS = [0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20];

export function Portions({ part, food, onPortions }: { part: Part; food: Food; onPortions: (portions: number) => void }) {
  const { counting, locale } = part;
  const onePortion = (counting === "total" ? food.total : food.available) ?? 0;
  const items = PORTIONS.map((portions) => ({ id: String(portions), label: portionLabel(portions) }));
  return (
    <Choose
      key={`portions ${food.id}`}
      part={part}
      heading={words.portionsHeading(nameOf(food, locale))}
      items={items}
      onPick={(id) => onPortions(Number(id))}
    >
      <p>{portionSentences(food, onePortion, counting, locale).join(" ")}</p>
    </Choose>
  );
}

interface DeadEndProps {
  part: Part;
  onGrams: () => void;
}

const WaysOn = ({ part, onGrams }: DeadEndProps) => (
  <div class="plate-actions">
    <BigButton role="choice" label={words.typeGrams} onPress={onGrams} />
    <BigButton role="main" label={words.otherFood} onPress={() => part.go({ at: "how" })} safe />
  </div>
);

/** The card leaves fibre out and the source does not report it: nothing is guessed. */
export function FibreNotKnown({ part, food, onGrams }: DeadEndProps & { food: Food }) {
  return (
    <div class="plate">
      <h1 class="screen-title plate-heading">{words.heading}</h1>
      <Notice
        heading={words.fibreHeading}
        got={words.fibre(nameOf(food, part.locale))}
        wrong={words.fibreWrong}
        todo={words.fibreTodo(part.locale)}
      />
      <WaysOn part={part} onGrams={onGrams} />
    </div>
  );
}

export function FoodNotFound({ part, text, onGrams }: DeadEndProps & { text: string }) {
  return (
    <div class="plate">
      <h1 class="screen-title plate-heading">{words.heading}</h1>
      <Notice heading={words.notFoundHeading} got={words.heard(text)} wrong={words.notFoundWrong} todo={words.notFoundTodo} />
      <WaysOn part={part} onGrams={onGrams} />
    </div>
  );
}
