// The plate as it is, the ways to fill it, and taking a food off again.
import type { PlateLine } from "#events/plate.ts";
import type { Grams } from "#events/quantity.ts";
import { BigButton } from "#ui/button.tsx";
import type { PickItem } from "#ui/pick-list.tsx";
import { lineLabel, plateWords as words } from "#words/en/plate.ts";
import { Choose } from "./plate-find.tsx";
import type { Part } from "./plate-part.ts";
import "./plate.css";

/** Foods shown on the plate's own screen; all of them are behind "Take food off". */
const NEWEST = 3;

interface PlateListProps {
  part: Part;
  lines: readonly PlateLine[];
  total: Grams;
  onDone: () => void;
}

export function PlateList({ part, lines, total, onDone }: PlateListProps) {
  const newest = lines.slice(-NEWEST).toReversed();
  const others = lines.length - newest.length;
  return (
    <section class="plate" aria-labelledby="plate-heading">
      <h1 id="plate-heading" class="screen-title plate-heading">
        {words.heading}
      </h1>
      <p class="plate-total">{words.total(total)}</p>
      <ul class="plate-lines">
        {newest.map((line, place) => (
          <li key={lines.length - place}>{lineLabel(line)}</li>
        ))}
      </ul>
      {others > 0 ? <p>{words.others(others)}</p> : null}
      <div class="plate-actions">
        <BigButton role="choice" label={words.takeOff} onPress={() => part.go({ at: "take off" })} />
        <BigButton role="choice" label={words.add} onPress={() => part.go({ at: "how" })} safe />
        <BigButton role="main" label={words.done} onPress={onDone} />
      </div>
    </section>
  );
}

interface HowToCountProps {
  part: Part;
  lines: readonly PlateLine[];
  usualMeals: readonly { name: string; grams: Grams }[];
  onGrams: () => void;
  onServings: () => void;
  onUsual: (index: number) => void;
}

/** An empty plate may be a usual meal or servings; once foods are on it, only more foods or the grams of the whole meal make sense. */
export function HowToCount({ part, lines, usualMeals, onGrams, onServings, onUsual }: HowToCountProps) {
  const empty = lines.length === 0;
  const ways: (PickItem & { take: () => void })[] = [
    ...(empty
      ? usualMeals.map((meal, index) => ({ id: `usual ${index}`, label: words.usual(meal.name, meal.grams), take: () => onUsual(index) }))
      : []),
    { id: "kind", label: words.byKind, take: () => part.go({ at: "groups" }) },
    { id: "letter", label: words.byLetter, take: () => part.go({ at: "letters" }) },
    { id: "grams", label: words.typeGrams, take: onGrams },
    ...(empty ? [{ id: "servings", label: words.countServings, take: onServings }] : []),
  ];
  const pick = (id: string) => ways.find((way) => way.id === id)?.take();
  return (
    <Choose key="how" part={part} heading={words.howHeading} items={ways} onPick={pick} wayOut={empty ? null : "to the plate"}>
      {empty ? <p>{words.empty}</p> : null}
    </Choose>
  );
}

interface TakeOffProps {
  part: Part;
  lines: readonly PlateLine[];
  onRemove: (index: number) => void;
}

export function TakeOff({ part, lines, onRemove }: TakeOffProps) {
  const items = lines.map((line, index) => ({ id: String(index), label: lineLabel(line) }));
  return <Choose key="take off" part={part} heading={words.takeOffHeading} items={items} onPick={(id) => onRemove(Number(id))} />;
}
