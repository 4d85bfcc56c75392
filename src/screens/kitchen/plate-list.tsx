// The plate as it is, the ways to fill it, and taking a food off again.
import type { PlateLine } from "#events/plate.ts";
import type { Grams } from "#events/quantity.ts";
import { lineLabel, plateWords as words } from "#words/en/plate.ts";
import { TurnedScreen } from "./choices-screen.tsx";
import { Choose, ChooseAloud } from "./plate-find.tsx";
import type { Part } from "./plate-part.ts";

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
  const { says, refused, ...frame } = part.frame;
  const shown = [...words.soFar(total), ...newest.map((line) => `${lineLabel(line)}.`), ...(others > 0 ? [words.others(others)] : [])];
  return (
    <TurnedScreen
      {...frame}
      title={words.heading}
      lines={refused ? says : shown}
      buttons={[
        { label: words.takeOff, press: () => part.go({ at: "take off" }) },
        { label: words.add, press: () => part.go({ at: "how" }) },
        { label: words.done, role: "main", press: onDone },
      ]}
    />
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
  const usual = usualMeals.map((meal, index) => ({ label: words.usual(meal.name, meal.grams), press: () => onUsual(index) }));
  return (
    <Choose
      part={part}
      heading={words.howHeading}
      lines={part.frame.says}
      items={[
        ...(empty ? usual : []),
        { label: words.byKind, press: () => part.go({ at: "groups" }) },
        { label: words.byLetter, press: () => part.go({ at: "letters", range: null }) },
        { label: words.typeGrams, press: onGrams },
        ...(empty ? [{ label: words.countServings, press: onServings }] : []),
      ]}
      back={empty ? null : { at: "plate" }}
      wayOut={empty ? null : words.toPlate}
    />
  );
}

interface TakeOffProps {
  part: Part;
  lines: readonly PlateLine[];
  onRemove: (index: number) => void;
}

export function TakeOff({ part, lines, onRemove }: TakeOffProps) {
  const items = lines.map((line, index) => ({ label: lineLabel(line), press: () => onRemove(index) }));
  return <ChooseAloud part={part} heading={words.takeOffHeading} items={items} back={{ at: "plate" }} wayOut={words.toPlate} />;
}
