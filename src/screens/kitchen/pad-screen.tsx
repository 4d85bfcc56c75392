// A number on the pad. What was typed stays until it was taken.
import type { NumberSlot } from "#events/told.ts";
import { Bar } from "#screens/shared/bar.tsx";
import { NumberPad } from "#ui/number-pad.tsx";
import { Screen } from "#ui/screen.tsx";
import { frontPerson } from "#walk/offers.ts";
import type { HouseState } from "#walk/state.ts";
import { ASKING } from "#words/en/asking.ts";
import { FIXED, PAD_TITLE } from "#words/en/fixed.ts";
import type { WalkScreenProps } from "./walk-screen.tsx";

const MOST_DIGITS = 6;

/** The unit beside the number, and whether it has a point. */
function unitFor(slot: NumberSlot, house: HouseState): { words: string; point: boolean } {
  switch (slot) {
    case "reading":
    case "recheck":
    case "recheck after low":
    case "reading when ill": {
      const unit = frontPerson(house)?.person.glucoseUnit ?? "mg/dL";
      return { words: unit, point: unit === "mmol/L" };
    }
    case "ketones":
      return { words: "mmol/L", point: true };
    case "grams":
      return { words: "grams", point: true };
    case "servings":
      return { words: "servings", point: true };
    default:
      return { words: "units", point: true };
  }
}

export interface PadScreenProps extends WalkScreenProps {
  slot: NumberSlot;
  text: string;
  onText(change: (text: string) => string): void;
  onClose(): void;
}

export function PadScreen(props: PadScreenProps) {
  const { slot, text, onText, refusal, chrome, house } = props;
  const unit = unitFor(slot, house);
  const caller = slot === "telephoned number" ? (frontPerson(house)?.card?.card.clinic.name ?? null) : null;
  const add = (mark: string) => onText((t) => (t.length < MOST_DIGITS ? t + mark : t));
  // A refusal takes the place of the question, in pages if need be: over the pad it would hide the digits, or be hidden by them.
  const lines = refusal ? [refusal.got, refusal.wrong, refusal.todo] : [props.padFor === slot ? ASKING.pad : PAD_TITLE[slot]];
  return (
    <Screen
      title={refusal ? refusal.heading : PAD_TITLE[slot]}
      screenKey={`${props.screenKey} pad ${slot} ${refusal?.heading ?? ""}`}
      bar={<Bar chrome={{ ...chrome, onBack: props.onClose }} />}
      sentences={lines.map((line, place) => ({
        text: line,
        current: (refusal !== null || props.padFor === slot) && place === props.speaking,
      }))}
      moreLabel={FIXED.readOn}
      focusHeading={props.focusHeading}
      shape="pad"
    >
      <NumberPad
        value={text}
        onDigit={add}
        {...(unit.point ? { onPoint: () => add(".") } : {})}
        onDelete={() => onText((t) => t.slice(0, -1))}
        onDone={() => props.onIntent({ do: "give number", slot, text, via: "touch", helper: caller })}
        unitWords={unit.words}
        label={FIXED.numberIs}
        doneLabel={FIXED.ok}
        deleteLabel={FIXED.delete}
      />
    </Screen>
  );
}
