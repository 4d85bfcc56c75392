// The plate within the walk: the builder between the five constant things.
import { grams } from "#events/quantity.ts";
import type { NumberSlot } from "#events/told.ts";
import { plateTotal } from "#rules/food/plate.ts";
import type { PersonState } from "#walk/state.ts";
import { PlateBuilder } from "./plate.tsx";
import type { WalkScreenProps } from "./walk-screen.tsx";

export function PlateStep(props: WalkScreenProps & { me: PersonState; onPad(slot: NumberSlot): void }) {
  const { me, onIntent, refusal } = props;
  const walk = me.walk;
  if (!walk) return null;
  const usual = me.person.usualMeals.flatMap((m, index) => (m.meal === walk.meal ? [{ name: m.name, grams: grams(m.grams), index }] : []));
  return (
    <PlateBuilder
      lines={walk.lines}
      total={plateTotal(walk.lines)}
      locale={me.person.language === "en-GB" ? "UK" : "US"}
      counting={me.card?.card.carbohydrate ?? "total"}
      usualMeals={usual}
      said={props.foodSaid}
      frame={{
        chrome: props.chrome,
        speaking: props.speaking,
        focusHeading: props.focusHeading,
        banner: props.banner,
        says: refusal ? [refusal.got, refusal.wrong, refusal.todo] : props.say.lines,
        refused: refusal !== null,
      }}
      onAdd={(food, portions) => onIntent({ do: "add food", food, portions })}
      onRemove={(index) => onIntent({ do: "remove food", index })}
      onGrams={() => props.onPad("grams")}
      onServings={() => props.onPad("servings")}
      onUsual={(i) => {
        const index = usual[i]?.index;
        if (index !== undefined) onIntent({ do: "usual meal", index });
      }}
      onDone={() => onIntent({ do: "plate is complete" })}
    />
  );
}
