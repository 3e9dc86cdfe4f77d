/** Problems of a file as a person can mend them: where, what, and what to do. One line each. */
import type * as z from 'zod/mini';

export interface Problem {
  /** Where in the file: `faults[0].onset`; empty for the file as a whole. */
  readonly path: string;
  readonly message: string;
  readonly mend: string;
}

/** Larger files are refused unread: no call needs a hundredth of it. */
export const LARGEST_FILE_bytes = 1_000_000;

export function problemLine(file: string, problem: Problem): string {
  const where = problem.path === '' ? '' : ` at ${problem.path}`;
  return `${file}${where}: ${problem.message}; ${problem.mend}`;
}

/** JSON text to a value, or what is wrong with it. */
export function parseJson(text: string): { readonly value: unknown } | { readonly problem: Problem } {
  if (text.length > LARGEST_FILE_bytes) return { problem: tooLarge(text.length) };
  try {
    return { value: JSON.parse(text) as unknown };
  } catch (error) {
    const reason = error instanceof Error ? error.message.replace(/\s+/g, ' ').slice(0, 120) : 'broken';
    return { problem: { path: '', message: `not JSON (${reason})`, mend: 'close every brace, bracket and quote' } };
  }
}

export function tooLarge(bytes: number): Problem {
  return {
    path: '',
    message: `${bytes} bytes, the most is ${LARGEST_FILE_bytes}`,
    mend: 'is it really a call file? Take out what does not belong',
  };
}

/** Zod's issues as problems. */
export function problemsOf(error: z.core.$ZodError): Problem[] {
  return error.issues.flatMap((issue) => problemOf(issue));
}

function problemOf(issue: z.core.$ZodIssue): Problem[] {
  const path = pathText(issue.path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        path: path === '' ? key : `${path}.${key}`,
        message: 'unknown key',
        mend: 'take it out or correct its spelling',
      }));
    case 'invalid_type':
      return issue.input === undefined
        ? [missing(path)]
        : [{ path, message: `not ${article(issue.expected)}`, mend: `write ${article(issue.expected)}` }];
    case 'invalid_value':
      return issue.input === undefined
        ? [missing(path)]
        : [
            {
              path,
              message: 'not one of the values it may have',
              mend: `write one of ${issue.values.map(String).join(', ')}`,
            },
          ];
    case 'too_big':
      return [{ path, message: 'too large', mend: `at most ${issue.maximum}` }];
    case 'too_small':
      if (issue.origin === 'string') return [{ path, message: 'nothing is written here', mend: 'write it' }];
      if (issue.origin === 'array') return [{ path, message: 'too few', mend: `at least ${issue.minimum}` }];
      return [{ path, message: 'too small', mend: `at least ${issue.minimum}` }];
    case 'invalid_format':
      return [formatProblem(path, issue)];
    case 'invalid_union':
      return [{ path, message: 'none of the forms it may have', mend: 'see the JSON Schema beside the files' }];
    default:
      return [{ path, message: issue.message ?? 'not valid', mend: 'see the JSON Schema beside the files' }];
  }
}

function missing(path: string): Problem {
  const language = /\.(en|es)$/.exec(path)?.[1];
  return language
    ? {
        path,
        message: `the ${language === 'en' ? 'English' : 'Spanish'} text is missing`,
        mend: 'write it: every text is whole in both languages',
      }
    : { path, message: 'missing', mend: 'add it' };
}

function formatProblem(path: string, issue: { pattern?: string | undefined }): Problem {
  const pattern = issue.pattern ?? '';
  if (pattern.includes('^<>')) {
    return {
      path,
      message: 'text with an angle bracket',
      mend: 'write plain words, no < or >: a text is never markup',
    };
  }
  if (pattern.includes('T\\d')) return { path, message: 'not a local instant', mend: 'write it like 2031-05-14T16:42' };
  return { path, message: 'not in the form it must have', mend: `match ${pattern}` };
}

function article(word: string): string {
  return /^[aeiou]/.test(word) ? `an ${word}` : `a ${word}`;
}

function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((p) => (typeof p === 'number' ? `[${p}]` : `.${String(p)}`))
    .join('')
    .replace(/^\./, '');
}
