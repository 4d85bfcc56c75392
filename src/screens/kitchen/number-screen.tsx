// A number that was not heard well: which of two, or its digits one at a time. What it says and hears is made by whoever asks.
import type { ComponentChildren } from "preact";
import type { Chrome } from "#screens/shared/bar.tsx";
import type { HearableScreen } from "#screens/shared/hear.ts";
import { TurnedScreen } from "./choices-screen.tsx";

export interface NumberScreenProps {
  asked: HearableScreen & { soFar: string; back(): void };
  chrome: Chrome;
  speaking: number;
  focusHeading: boolean;
  banner: ComponentChildren;
}

export function NumberScreen({ asked, chrome, speaking, focusHeading, banner }: NumberScreenProps) {
  const { soFar } = asked;
  const buttons = asked.buttons.filter((b) => !b.byVoice);
  return (
    <TurnedScreen
      title={asked.title}
      lines={asked.lines}
      buttons={buttons.map((b, i) => (soFar !== "" && i > 0 && i === buttons.length - 1 ? { ...b, role: "main" } : b))}
      chrome={{ ...chrome, onBack: asked.back }}
      speaking={speaking}
      focusHeading={focusHeading}
      banner={banner}
      together={soFar !== ""}
      side={
        soFar === "" ? null : (
          <p class="big-number">
            <span class="big-value">{soFar}</span>
          </p>
        )
      }
      // The digits so far need the room of the heading, which screen readers still have.
      {...(soFar === "" ? {} : { head: null })}
    />
  );
}
