// Lumps, every four weeks: each old one first, then a new one, told by fingers from a landmark and read back.
import { useState } from "preact/hooks";
import type { Intent } from "#events/intent.ts";
import type { Region, Side, Spot } from "#events/spot.ts";
import type { Stamp } from "#events/stamp.ts";
import { REGIONS, SIDES } from "#rules/body/area.ts";
import { directions } from "#rules/body/directions.ts";
import { fromsOf, placeTold, type ToldFrom } from "#rules/body/told-place.ts";
import { lumpsOf } from "#walk/lump-question.ts";
import type { PersonState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { askAlong, askOutwards, fromLabel, LUMPS, partLabel } from "#words/en/lumps.ts";
import { sayPlace } from "#words/en/places.ts";
import { type ChoiceButton, ChoicesScreen, type ChoicesScreenProps } from "./choices-screen.tsx";
import { FingerCount } from "./finger-count.tsx";

type Part = { region: Region; side: Side };
type Stage =
  | { at: "old"; lump: string }
  | { at: "new" }
  | { at: "part" }
  | { at: "from"; part: Part }
  | { at: "along"; part: Part; from: ToldFrom }
  | { at: "outwards"; part: Part; from: ToldFrom; along: number }
  | { at: "check"; spot: Spot }
  | { at: "saved"; lines: readonly string[] };

type LumpsScreenProps = Pick<ChoicesScreenProps, "chrome" | "speaking" | "focusHeading" | "banner"> & {
  me: PersonState;
  now: Stamp;
  onIntent(intent: Intent): void;
  onDone(): void;
};

export function LumpsScreen({ me, now, onIntent, onDone, ...frame }: LumpsScreenProps) {
  const { id: person, body, leftOutRegions } = me.person;
  // As it was when the question was opened: a lump told gone leaves the list.
  const [old] = useState(() => lumpsOf(me));
  const [before] = useState(me.lumpsAsked.at);
  const [stages, setStages] = useState<readonly Stage[]>([old[0] ? { at: "old", lump: old[0].id } : { at: "new" }]);
  const stage = stages.at(-1) ?? { at: "new" };
  const go = (next: Stage) => setStages([...stages, next]);
  const answer = (intent: Intent, lines: readonly string[]) => {
    onIntent(intent);
    setStages([{ at: "saved", lines }]);
  };
  const around = {
    ...frame,
    chrome: { ...frame.chrome, onBack: stages.length > 1 ? () => setStages(stages.slice(0, -1)) : frame.chrome.onBack },
  };
  // A key and a title of its own for each: a new screen is deaf at first, and one press must not answer two questions.
  const choose = (lines: readonly string[], buttons: readonly ChoiceButton[]) => (
    <ChoicesScreen
      key={`${stages.length} ${JSON.stringify(stage)}`}
      {...around}
      title={lines.at(-1) ?? ""}
      lines={lines}
      buttons={buttons}
    />
  );

  switch (stage.at) {
    case "old": {
      const lump = old.find(({ id }) => id === stage.lump);
      const after = old[old.findIndex(({ id }) => id === stage.lump) + 1];
      const next: Stage = after ? { at: "old", lump: after.id } : { at: "new" };
      if (!lump) return null;
      const gone = () => {
        onIntent({ do: "lump is gone", person, id: lump.id });
        // No way back to it: it was told gone.
        setStages([next]);
      };
      return choose(
        [LUMPS.old({ wall: lump.markedAt, offset: now.offset }), ...sayPlace(directions(lump.spot, body)), LUMPS.stillThere],
        [
          { label: LUMPS.gone, also: LUMPS.goneSaid, press: gone },
          { label: LUMPS.there, role: "main", press: () => go(next) },
        ],
      );
    }
    case "new":
      return choose(LUMPS.ask, [
        { label: LUMPS.notNow, press: () => answer({ do: "feel for lumps", person, found: "not now" }, LUMPS.savedLater) },
        { label: LUMPS.found, also: LUMPS.foundSaid, press: () => go({ at: "part" }) },
        { label: LUMPS.none, role: "main", press: () => answer({ do: "feel for lumps", person, found: "none" }, LUMPS.savedNone) },
      ]);
    case "part": {
      const parts = REGIONS.filter((region) => !leftOutRegions.includes(region)).flatMap((region) =>
        SIDES.map((side) => ({ region, side })),
      );
      return choose(
        [LUMPS.whichPart],
        [
          ...parts.map((part) => ({ label: partLabel(part), press: () => go(afterPart(part, me)) })),
          { label: LUMPS.cannotSay, press: () => answer({ do: "mark lump", person, spot: null }, LUMPS.savedNowhere) },
        ],
      );
    }
    case "from":
      return choose(
        [LUMPS.fromWhere],
        fromsOf(stage.part.region, body).map((from) => ({
          label: fromLabel(from),
          also: [from.way],
          press: () => go({ at: "along", part: stage.part, from }),
        })),
      );
    case "along":
      return (
        <FingerCount
          key="along"
          {...around}
          question={askAlong(stage.from)}
          onCount={(along) => go({ at: "outwards", part: stage.part, from: stage.from, along })}
        />
      );
    case "outwards":
      return (
        <FingerCount
          key="outwards"
          {...around}
          question={askOutwards(stage.part)}
          onCount={(outwards) => {
            const spot = placeTold({ ...stage.part, from: stage.from, along: stage.along, outwards }, body);
            if (spot) go({ at: "check", spot });
          }}
        />
      );
    case "check":
      return choose(
        [...sayPlace(directions(stage.spot, body)), LUMPS.isThere],
        [
          { label: LUMPS.again, press: () => setStages([{ at: "new" }, { at: "part" }]) },
          {
            label: LUMPS.yesThere,
            role: "main",
            press: () => answer({ do: "mark lump", person, spot: stage.spot }, LUMPS.savedPlace),
          },
        ],
      );
    case "saved": {
      // Nothing is said to be saved before it is (promise 9).
      const lines = me.lumpsAsked.at === before ? [LUMPS.storing] : stage.lines;
      return choose(lines, [{ label: FIXED.ok, role: "main", press: onDone }]);
    }
  }
}

/** With one landmark only there is nothing to choose. */
function afterPart(part: Part, me: PersonState): Stage {
  const [from, ...others] = fromsOf(part.region, me.person.body);
  return from && others.length === 0 ? { at: "along", part, from } : { at: "from", part };
}
