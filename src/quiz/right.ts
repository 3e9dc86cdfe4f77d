import type { checked, Drill } from './drill.ts';

/** An answer as it is given: what `checked` takes. */
export type Answer = Parameters<typeof checked>[1];

/** The right answer to a question, as somebody would give it. */
export function rightAnswer({ ask }: Drill): Answer {
  return ask.kind === 'choice' ? ask.right : ask.value;
}
