// The fault page: whatever breaks ends in a plain screen with what is saved, the paper way and whom to call.
import { render } from "preact";
import type { Stamp } from "#events/stamp.ts";
import type { FaultKind } from "#words/en/first.ts";
import { numbersToCall } from "#words/en/kitchen.ts";
import type { Desk } from "./desk.ts";

/** What is saved, and how everything else falls silent. */
type Known = Pick<Desk, "state"> & { end(): void };

export interface Faults {
  knows(desk: Known): void;
  show(kind: FaultKind, detail: string): void;
}

/** Listens for what nobody caught. The first fault stays on the screen: a second would only hide it. */
export function faults(root: HTMLElement, now: () => Stamp): Faults {
  let desk: Known | null = null;
  let shown = false;
  const show = (kind: FaultKind, detail: string) => {
    if (shown) return;
    shown = true;
    const house = desk?.state.value ?? null;
    desk?.end();
    void Promise.all([import("#screens/first/stop-screens.tsx"), import("#words/en/first.ts")]).then(([{ FaultScreen }, { lastSaved }]) =>
      render(
        <FaultScreen
          kind={kind}
          detail={detail}
          lastSaved={house ? lastSaved(house, now()) : null}
          numbers={house ? numbersToCall(house) : []}
          onAgain={() => location.reload()}
        />,
        root,
      ),
    );
  };
  window.addEventListener("error", (event) => show("stopped", event.message));
  window.addEventListener("unhandledrejection", (event) =>
    show("stopped", event.reason instanceof Error ? event.reason.message : String(event.reason)),
  );
  return { knows: (known) => (desk = known), show };
}
