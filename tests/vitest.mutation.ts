// What the mutants of the dose meet. The random promises are left out: they take seconds, and each of these tests an instant.
import { defineConfig } from "vitest/config";

/** Where the walk asks the card, and what it goes by. */
const WALK = [
  "after-low",
  "card-step",
  "eaten-first",
  "low-in-doubt",
  "next-card",
  "numbers",
  "old-reading",
  "pens",
  "taken",
  "telephoned",
];

export default defineConfig({
  test: {
    environment: "node",
    include: ["tests/unit/rules/card/*.test.ts", ...WALK.map((name) => `tests/unit/walk/${name}.test.ts`)],
    exclude: ["tests/unit/rules/card/promises.test.ts"],
    testTimeout: 20_000,
  },
});
