import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

/**
 * Ends a Vitest run in one plain line, `N passed, N failed`; skipped tests are on the line before. Where
 * CLOSING_LINE names a file, the lines go there and whoever started Vitest prints them last.
 */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const count = { passed: 0, failed: 0, skipped: 0, pending: 0 };
    for (const module of modules) {
      for (const test of module.children.allTests()) count[test.result().state]++;
      // A file that broke before its tests could run has no failed test to show for it.
      if (module.errors().length > 0) count.failed++;
    }
    count.failed += errors.length;
    const skipped = count.skipped + count.pending;
    const lines = [
      ...(skipped > 0 ? [`${skipped} tests skipped`] : []),
      `${count.passed} passed, ${count.failed} failed`,
    ].join('\n');
    const file = process.env.CLOSING_LINE;
    if (file) writeFileSync(file, lines);
    else console.log(lines);
  }
}
