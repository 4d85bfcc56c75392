// One question and its answers, for the small screens around the walk.
import type { ComponentChildren } from "preact";
import { Bar, type Chrome } from "#screens/shared/bar.tsx";
import { useHearable } from "#screens/shared/hear.ts";
import { BigButton, type ButtonRole } from "#ui/button.tsx";
import { PickList } from "#ui/pick-list.tsx";
import { Screen } from "#ui/screen.tsx";
import { FIXED } from "#words/en/fixed.ts";

export interface ChoiceButton {
  label: string;
  role?: ButtonRole;
  press(): void;
}

export interface ChoicesScreenProps {
  title: string;
  lines?: readonly string[];
  speaking: number;
  focusHeading: boolean;
  chrome: Chrome;
  buttons: readonly ChoiceButton[];
  banner?: ComponentChildren;
  /** In place of the heading, which then is for screen readers only. */
  head?: ComponentChildren;
  /** Only a hand may choose here. */
  byHand?: boolean;
}

/** Up to four buttons stand at the bottom; more than four become a list in pages. */
export function ChoicesScreen({
  title,
  lines = [],
  buttons,
  speaking,
  chrome,
  focusHeading,
  banner,
  head,
  byHand = false,
}: ChoicesScreenProps) {
  useHearable({ title, lines, buttons }, byHand);
  const few = buttons.length <= 4;
  return (
    <Screen
      title={title}
      bar={<Bar chrome={chrome} />}
      sentences={lines.map((text, i) => ({ text, current: i === speaking }))}
      moreLabel={FIXED.more}
      focusHeading={focusHeading}
      banner={banner}
      hideTitle={head !== undefined || (few && buttons.length > 2 && lines.length > 0)}
      actions={few ? buttons.map((b) => <BigButton key={b.label} label={b.label} role={b.role ?? "choice"} onPress={b.press} />) : null}
    >
      {head}
      {few ? null : (
        <PickList
          heading={title}
          items={buttons.map((b) => ({ id: b.label, label: b.label }))}
          onPick={(id) => buttons.find((b) => b.label === id)?.press()}
          pageSize={4}
          moreLabel={FIXED.more}
          beforeLabel={FIXED.before}
          pageWords={FIXED.page}
        />
      )}
    </Screen>
  );
}
