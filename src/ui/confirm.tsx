// Asking for a second yes: a screen of its own, never a box on top of another. Both answers stand 12 mm apart.
import { BigButton } from "./button.tsx";
import { Screen, type ScreenProps } from "./screen.tsx";

export interface ConfirmProps extends Omit<ScreenProps, "actions" | "shape" | "side"> {
  /** Says the act, for example "Yes, stop here". */
  yes: { label: string; onPress: () => void };
  /** The way that changes nothing. */
  no: { label: string; onPress: () => void };
}

export function Confirm({ yes, no, ...screen }: ConfirmProps) {
  return (
    <Screen
      {...screen}
      actions={
        <div class="apart">
          <BigButton role="choice" safe {...no} />
          <BigButton role="main" {...yes} />
        </div>
      }
    />
  );
}
