// The accessibility rules that a program can check, run in the page itself. What it cannot decide counts as a fault.
import axeCore from "axe-core";
import type { Page } from "playwright-core";

const tags = ["wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** One line for each fault, empty if there is none. Throws if no rule ran at all: that would look like a clean page. */
export async function axe(page: Page): Promise<string[]> {
  // By evaluate, not by a script tag: the page's own rules refuse a tag and stay as they are.
  await page.evaluate(axeCore.source);
  const { passes, faults } = await page.evaluate(async (runOnly) => {
    const engine = (globalThis as typeof globalThis & { axe: typeof import("axe-core") }).axe;
    const result = await engine.run(document, { runOnly });
    const line = (kind: string) => (rule: (typeof result.violations)[number]) =>
      `${kind} ${rule.id}: ${rule.help}: ${rule.nodes.map((node) => node.target.join(" ")).join(", ")}`;
    return { passes: result.passes.length, faults: [...result.violations.map(line("broken")), ...result.incomplete.map(line("undecided"))] };
  }, tags);
  if (passes === 0) throw new Error("axe ran no rule that passed: it did not see the page");
  return faults;
}
