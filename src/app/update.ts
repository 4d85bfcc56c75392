// A new version waits until somebody asks for it on the kitchen screen; it never comes in during a walk.
import { signal } from "@preact/signals";

export const updateReady = signal(false);
let apply: (reload?: boolean) => Promise<void> = async () => undefined;

/** Registers the service worker, once the first screen stands. Where the address is not secure there is none, and the app says so elsewhere. */
export async function watchForUpdates(): Promise<void> {
  const { registerSW } = await import("virtual:pwa-register");
  apply = registerSW({
    onNeedRefresh() {
      updateReady.value = true;
    },
  });
}

export const takeUpdate = (): void => void apply(true);
