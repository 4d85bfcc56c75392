// Too much insulin, or the wrong one: what is watched, the reading that is due, and a hand's word that a doctor watches now.
import { useState } from "preact/hooks";
import type { Intent } from "#events/intent.ts";
import { insulinWatched } from "#walk/insulin-watch.ts";
import type { PersonState } from "#walk/state.ts";
import { FIXED } from "#words/en/fixed.ts";
import { sayDoctorQuestion, sayDoctorWatches, sayWatchScreen, WATCH } from "#words/en/insulin-watch.ts";
import { labelOf } from "#words/en/labels.ts";
import { ChoicesScreen } from "./choices-screen.tsx";
import type { OnKitchen } from "./on-kitchen.ts";

export interface WatchScreenProps extends OnKitchen {
  me: PersonState;
  onIntent(intent: Intent): void;
  onMeasure(): void;
  /** What was noted has been read. */
  onDone(): void;
}

export function WatchScreen({ house, me, now, onIntent, onMeasure, onDone, ...common }: WatchScreenProps) {
  const [asked, ask] = useState(false);
  const [said, say] = useState(false);
  const doctor: Intent = { do: "doctor watches", person: me.person.id };
  // Only once it is stored: until then its question stands.
  if (said && !insulinWatched(me, now, house.doubt === null))
    return (
      <ChoicesScreen
        {...common}
        chrome={{ ...common.chrome, onBack: onDone }}
        title={FIXED.saved}
        lines={sayDoctorWatches()}
        buttons={[{ label: FIXED.ok, role: "main", press: onDone }]}
      />
    );
  if (asked)
    return (
      <ChoicesScreen
        {...common}
        chrome={{ ...common.chrome, onBack: () => ask(false) }}
        title={labelOf(doctor, house).shown}
        lines={sayDoctorQuestion()}
        buttons={[
          { label: WATCH.noDoctor, press: () => ask(false) },
          {
            label: WATCH.yesDoctor,
            // No voice ends a watch: a doctor on television might.
            byHand: true,
            press: () => {
              say(true);
              onIntent(doctor);
            },
          },
        ]}
      />
    );
  return (
    <ChoicesScreen
      {...common}
      title={WATCH.title}
      lines={sayWatchScreen(house, me, now)}
      buttons={[
        { label: labelOf(doctor, house).shown, byHand: true, press: () => ask(true) },
        { label: WATCH.measure, role: "main", press: onMeasure },
      ]}
    />
  );
}
