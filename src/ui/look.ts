// Size, theme and the length of a millimetre, set on the page as properties and attributes that theme.css reads.
// CSS pixels are no physical unit: the same panel is 5.6 or 4.2 px to the mm, as its maker chose. So it is measured once.

export const sizeSteps = [1, 1.4, 2] as const;
export type SizeStep = (typeof sizeSteps)[number];

export interface Look {
  /** CSS pixels in one millimetre of this glass. */
  mmPx: number;
  size: SizeStep;
  /** follow: the device's own choice, for somebody who never chose. */
  theme: "light" | "dark" | "follow";
}

export const firstLook: Look = { mmPx: 5.9, size: 1, theme: "follow" };

/** Sets properties through the CSS object model, which a strict style policy allows; it writes no style into the markup. */
export function applyLook(root: HTMLElement, look: Look): void {
  root.style.setProperty("--mm", `${look.mmPx}px`);
  root.style.setProperty("--k", String(look.size));
  root.dataset.size = String(look.size);
  root.dataset.theme = look.theme === "follow" ? deviceTheme() : look.theme;
}

/** The next larger size; the largest goes back to the first. */
export function biggerThan(size: SizeStep): SizeStep {
  return sizeSteps[(sizeSteps.indexOf(size) + 1) % sizeSteps.length] ?? 1;
}

function deviceTheme(): "light" | "dark" {
  return typeof matchMedia === "function" && matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
}
