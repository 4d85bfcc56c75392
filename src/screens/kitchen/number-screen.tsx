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
  return (
    <TurnedScreen
      title={asked.title}
      lines={asked.lines}
      buttons={asked.buttons.map((b, i) => (i > 0 && i === asked.buttons.length - 1 && asked.soFar !== "" ? { ...b, role: "main" } : b))}
      banner={banner}
      chrome={{ ...chrome, onBack: asked.back }}
      speaking={speaking}
      focusHeading={focusHeading}
      {...(asked.soFar === ""
        ? {}
        : {
            head: (
              <p class="big-number">
                <span class="big-value">{asked.soFar}</span>
              </p>
            ),
          })}
    />
  );
}
