/**
 * `docs/course-platform-tables.md`: limits and requirements as they stand in the code. Written anew by
 * `npx vitest run tests/unit/records/course-tables.test.ts -u`.
 */
import { expect, it } from 'vitest';
import { COUNT, NUMBER, type NumberLimit, TEXT, type TextLimit } from '../../../src/records/limits.ts';
import { coverageTable, OPEN, UNKNOWN } from './cmi5/coverage.ts';

const RULE = { cut: 'what is beyond is left out', refuse: 'nothing is written, and it is said which field' } as const;

function limitsTable(): string {
  const texts = (Object.values(TEXT) as readonly TextLimit[]).map(
    ({ field, most, beyond, source }) => `| \`${field}\` | ${most} characters | ${RULE[beyond]} | ${source} |`,
  );
  const counts = Object.values(COUNT).map(
    ({ field, most, source }) => `| \`${field}\` | ${most} of them | ${RULE.cut} | ${source} |`,
  );
  const numbers = (Object.values(NUMBER) as readonly NumberLimit[]).map(
    ({ field, least, most, source }) => `| \`${field}\` | ${least} to ${most} | ${RULE.refuse} | ${source} |`,
  );
  return ['| Field | Holds | Beyond it | Source |', '|---|---|---|---|', ...texts, ...counts, ...numbers].join('\n');
}

it('every requirement of cmi5 is met by something named, does not apply, or is the platform’s', () => {
  expect(OPEN).toEqual([]);
  expect(UNKNOWN).toEqual([]);
});

it('the documentation has the tables as they are', async () => {
  const page = `# Course platforms: limits and requirements

Made by a test from the code; [course-platforms.md](course-platforms.md) tells what is exported and how.

## What each field holds

Sections marked \`*\` are cited from memory of the standard. What is cut is cut at a whole element of a list, never within one.

${limitsTable()}

## Requirements of cmi5

By their numbers in the list that the standard's own test suite keeps (\`@cmi5/requirements\`, Apache-2.0). A rule is held against every
statement of every session that a test tells, in \`tests/unit/records/cmi5/rules.ts\`; "statements" is
\`tests/unit/records/cmi5/statements.test.ts\`, "packages" \`tests/unit/records/packages.test.ts\`, "schema"
\`tests/unit/records/cmi5-schema.test.ts\`, "browser" \`tests/browser/platform/cmi5.test.ts\`.

${coverageTable()}
`;
  await expect(page).toMatchFileSnapshot('../../../docs/course-platform-tables.md');
});
