// All that can be measured of one screen, as one list of faults: the accessibility rules, the sizes in millimetres, what is cut off.
import { axe } from "./axe.ts";
import { clipped, targets, textSizes } from "./measure-mm.ts";
import type { Tablet } from "./tablet.ts";

/** Letters of the person's screens are at least so high, and targets at least so wide and high (mm on the glass). */
const LETTERS_MM = 9.2;
const TARGET_MM = 20;
/** Between two targets; the keys of the number pad stand closer. */
const GAP_MM = 8;
const KEY_GAP_MM = 4;
/** From the edge of the glass, where thumbs hold it. */
const EDGE_MM = 5;
/** Layout rounds to parts of a pixel. */
const ROUNDING_MM = 0.06;

/** One line for each fault, empty if there is none. Throws if the screen has no text or no control: that would look like a clean one. */
export async function screenFaults(t: Tablet): Promise<string[]> {
  const { page } = t;
  await t.settle();
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  const texts = await textSizes(page);
  const controls = await targets(page);
  if (texts.length === 0 || controls.length === 0) throw new Error("nothing was seen on the screen");
  const small = texts.filter(({ mm }) => mm < LETTERS_MM - ROUNDING_MM).map(({ text, mm }) => `letters of ${mm.toFixed(1)} mm: ${text}`);
  const keys = controls.filter(({ name }) => /^[0-9.]$/.test(name)).map(({ name }) => name);
  const tight = controls.flatMap(({ name, width, height, gap, nearest, edge, free }) => {
    const least = keys.includes(name) && keys.includes(nearest) ? KEY_GAP_MM : GAP_MM;
    return [
      ...(width < TARGET_MM - ROUNDING_MM || height < TARGET_MM - ROUNDING_MM
        ? [`${name}: ${width.toFixed(1)} by ${height.toFixed(1)} mm`]
        : []),
      ...(gap < least - ROUNDING_MM ? [`${name}: ${gap.toFixed(1)} mm from ${nearest}`] : []),
      ...(edge < EDGE_MM - ROUNDING_MM ? [`${name}: ${edge.toFixed(1)} mm from the edge`] : []),
      ...(free ? [] : [`${name}: something lies over it`]),
    ];
  });
  const scrolls = await page.evaluate(() => {
    const { scrollWidth, scrollHeight, clientWidth, clientHeight } = document.documentElement;
    return scrollWidth > clientWidth || scrollHeight > clientHeight ? ["the page scrolls"] : [];
  });
  return [...small, ...tight, ...(await clipped(page)), ...scrolls, ...(await axe(page))];
}
