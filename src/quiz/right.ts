import type { Answer, Drill } from './drill.ts';

/** The right answer to a question, as somebody would give it. */
export function rightAnswer({ ask }: Drill): Answer {
  return ask.kind === 'number' ? ask.value : ask.right;
}
