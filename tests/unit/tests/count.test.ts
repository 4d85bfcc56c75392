import { describe, expect, it } from "vitest";
import { countOf, lastLine, type Report } from "../../count.ts";

const green: Report = {
  numPassedTests: 3,
  numFailedTests: 0,
  numPendingTests: 0,
  numTodoTests: 0,
  testResults: [{ status: "passed", assertionResults: [{ status: "passed" }, { status: "passed" }, { status: "passed" }] }],
};

describe("the count on the last line", () => {
  it("is plain when all is well", () => {
    expect(lastLine(countOf(green, 0))).toBe("3 passed, 0 failed");
  });
  it("names what was left out", () => {
    expect(lastLine(countOf({ ...green, numPendingTests: 1, numTodoTests: 1 }, 0))).toBe("3 passed, 0 failed, 2 skipped");
  });
  it("counts each failed test once", () => {
    const testResults = [{ status: "failed", assertionResults: [{ status: "failed" }, { status: "failed" }] }];
    expect(lastLine(countOf({ ...green, numFailedTests: 2, testResults }, 1))).toBe("3 passed, 2 failed");
  });
  it("counts a file that could not be loaded as a failure", () => {
    const testResults = [...green.testResults, { status: "failed", assertionResults: [] }];
    expect(lastLine(countOf({ ...green, testResults }, 1))).toBe("3 passed, 1 failed");
  });
  it("is never green when the run ended badly, ran nothing or left no report", () => {
    expect(countOf(green, 1).failed).toBe(1);
    expect(countOf({ ...green, numPassedTests: 0, testResults: [] }, 0).failed).toBe(1);
    expect(countOf(undefined, 0)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});
