// Screens laid over the kitchen or the walk. Each goes back to the one from which it was opened.
import { signal } from "@preact/signals";

export type Overlay = "help" | "wrong" | "voice" | "day book" | "drawer" | "about" | "helper" | "practice" | null;

export class Overlays {
  readonly top = signal<Overlay>(null);
  /** What lies under the top, the next one last: help under "Who speaks?". */
  private under: Exclude<Overlay, null>[] = [];

  /** One that lies further down comes up again: nobody goes back round and round. */
  open(overlay: Exclude<Overlay, null>): void {
    const now = this.top.value;
    if (now === overlay) return;
    const before = this.under.indexOf(overlay);
    if (before >= 0) this.under = this.under.slice(0, before);
    else if (now) this.under.push(now);
    this.top.value = overlay;
  }

  close(): void {
    this.top.value = this.under.pop() ?? null;
  }

  /** Something was answered, and the screen under them has changed. */
  closeAll(): void {
    this.under = [];
    this.top.value = null;
  }
}
