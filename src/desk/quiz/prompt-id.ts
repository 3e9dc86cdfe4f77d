import type { Drill } from '../../quiz/drill.ts';

/** An id for the heading of a question, where several stand on one page. */
export function promptId({ skill, seed }: Drill): string {
  return `prompt-${skill}-${seed}`;
}
