// The accessibility rules that a program can check, run in the page itself. What it cannot decide counts as a fault.
import axeCore, { type Result } from "axe-core";
import type { Page } from "playwright-core";

const tags = ["wcag2a", "wcag2aa", "wcag2aaa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];

/** One line for each fault, empty if there is none. Throws if no rule ran at all: that would look like a clean page. */
export async function axe(page: Page): Promise<string[]> {
  // By evaluate, not by a script tag: the page's own rules refuse a tag and stay as they are.
  await page.evaluate(axeCore.source);
  const { passes, violations, incomplete } = await page.evaluate(async (runOnly) => {
    const engine = (globalThis as typeof globalThis & { axe: typeof import("axe-core") }).axe;
    const result = await engine.run(document, { runOnly });
    return { passes: result.passes.length, violations: result.violations, incomplete: result.incomplete };
  }, tags);
  if (passes === 0) throw new Error("axe ran no rule that passed: it did not see the page");
  return [...violations.map((rule) => line("broken", rule)), ...incomplete.map((rule) => line("undecided", rule))];
}

function line(kind: string, rule: Result): string {
  const places = rule.nodes.map(
    (node) => `${node.target.join(" ")} (${[...node.any, ...node.all, ...node.none].map((check) => check.message).join("; ")})`,
  );
  return `${kind} ${rule.id}: ${rule.help}: ${places.join(", ")}`;
}
