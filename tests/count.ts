/** How many tests passed, failed and were left out. */
export type Count = { passed: number; failed: number; skipped: number };

/** The part of Vitest's JSON report that the count is made from. */
export type Report = {
  numPassedTests: number;
  numFailedTests: number;
  numPendingTests: number;
  numTodoTests: number;
  testResults: readonly { status: string; assertionResults: readonly { status: string }[] }[];
};

/**
 * Counts a run. A file that failed without a failed test in it (it could not be loaded, say) counts as one failure, and so does a run that ended badly
 * or ran nothing: a green line must never stand over tests that were not run.
 */
export function countOf(report: Report | undefined, exitCode: number): Count {
  if (report === undefined) return { passed: 0, failed: 1, skipped: 0 };
  const brokenFiles = report.testResults.filter(
    (file) => file.status === "failed" && !file.assertionResults.some((test) => test.status === "failed"),
  ).length;
  const passed = report.numPassedTests;
  const failed = report.numFailedTests + brokenFiles;
  const badEnd = failed === 0 && (exitCode !== 0 || passed === 0);
  return { passed, failed: badEnd ? 1 : failed, skipped: report.numPendingTests + report.numTodoTests };
}

export function lastLine({ passed, failed, skipped }: Count): string {
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ""}`;
}
