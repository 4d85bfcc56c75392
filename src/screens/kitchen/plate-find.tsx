// Finding a food by kind or by first letter, a screenful at a time.
import type { ComponentChildren } from "preact";
import { FOOD_GROUPS, type Food, type FoodGroup, nameOf } from "#rules/food/foods.ts";
import { byFirstLetter, byGroup, firstLetters, mealGroups } from "#rules/food/groups.ts";
import { BigButton } from "#ui/button.tsx";
import { type PickItem, PickList } from "#ui/pick-list.tsx";
import { groupName, plateWords as words } from "#words/en/plate.ts";
import type { FindStep, Part } from "./plate-part.ts";

/** Letters are small words: a whole alphabet of 20 mm tiles fits one page. */
const LETTERS_ON_A_PAGE = 26;

const kindsOf = (foods: readonly Food[]): FoodGroup[] => FOOD_GROUPS.filter((group) => foods.some((food) => food.group === group));

export function FindFood({ part, step, onFood }: { part: Part; step: FindStep; onFood: (id: string) => void }) {
  const { locale, pageSize, go } = part;
  const toFoods = (foods: readonly Food[], heading: string) => go({ at: "foods", heading, sentence: null, foods });
  const named = (groups: readonly FoodGroup[]): PickItem[] => groups.map((group) => ({ id: group, label: groupName(group, locale) }));
  const groupOf = (id: string): FoodGroup | undefined => FOOD_GROUPS.find((group) => group === id);

  switch (step.at) {
    case "groups":
      return (
        <Choose
          key="groups"
          part={part}
          heading={words.kindHeading}
          items={named(mealGroups())}
          onPick={(id) => {
            const group = groupOf(id);
            if (group) toFoods(byGroup(group), groupName(group, locale));
          }}
        />
      );
    case "letters":
      return (
        <Choose
          key="letters"
          part={part}
          heading={words.letterHeading}
          items={firstLetters(locale).map((letter) => ({ id: letter, label: letter.toUpperCase() }))}
          tiles
          onPick={(letter) => {
            const foods = byFirstLetter(letter, locale);
            if (foods.length > 2 * pageSize && kindsOf(foods).length > 1) go({ at: "kinds", letter, foods });
            else toFoods(foods, words.foodHeading);
          }}
        />
      );
    case "kinds":
      return (
        <Choose
          key={`kinds ${step.letter}`}
          part={part}
          heading={words.kindHeading}
          items={named(kindsOf(step.foods))}
          onPick={(id) =>
            toFoods(
              step.foods.filter((food) => food.group === id),
              words.foodHeading,
            )
          }
        />
      );
    case "foods":
      return (
        <Choose
          key={`foods ${step.foods.map((food) => food.id).join(" ")}`}
          part={part}
          heading={step.heading}
          items={step.foods.map((food) => ({ id: food.id, label: nameOf(food, locale) }))}
          wayOut="none of these"
          onPick={onFood}
        >
          {step.sentence === null ? null : <p>{step.sentence}</p>}
        </Choose>
      );
  }
}

interface ChooseProps {
  part: Part;
  heading: string;
  items: readonly PickItem[];
  onPick: (id: string) => void;
  tiles?: boolean;
  /** Where the button out of here leads: to the plate, or to another way of finding where nothing fits, or nowhere. */
  wayOut?: "to the plate" | "none of these" | null;
  children?: ComponentChildren;
}

/** A list of choices with the way out that every screen of the plate has. */
export function Choose({ part, heading, items, onPick, tiles = false, wayOut = "to the plate", children }: ChooseProps) {
  const none = wayOut === "none of these";
  const out = (
    <BigButton
      role="choice"
      label={none ? words.noneOfThese : words.toPlate}
      onPress={() => part.go({ at: none ? "how" : "plate" })}
      safe
    />
  );
  return (
    <PickList
      heading={heading}
      headingLevel={1}
      items={items}
      onPick={onPick}
      pageSize={tiles ? LETTERS_ON_A_PAGE : part.pageSize}
      shape={tiles ? "tiles" : "rows"}
      moreLabel={words.more}
      beforeLabel={words.before}
      pageWords={words.page}
      actions={wayOut === null ? null : out}
      {...part.turned}
    >
      {children}
    </PickList>
  );
}
