/**
 * Answers as SCORM 2004 and xAPI write them alike: elements with `[,]` between them, a step as `number[.]what`, the ends of a
 * range with `[:]` (SCORM 2004 4th Ed. RTE 4.2.9*; xAPI 1.0.3, Data, 2.4.4.1).
 */
import type { Interaction } from '../learnt/learnt.ts';
import { COUNT, decimal, TEXT, text } from '../limits.ts';

export function responseOf(one: Interaction): string {
  if (one.kind === 'numeric') return decimal(one.response);
  return one.kind === 'choice' ? choice(one.response) : steps(one.response);
}

/** Empty where nothing is the right answer. */
export function patternsOf(one: Interaction): readonly string[] {
  if (one.kind === 'numeric') return [`${decimal(one.correct.low)}[:]${decimal(one.correct.high)}`];
  if (one.kind === 'choice') return one.correct.slice(0, COUNT.patterns.most).map(choice);
  return one.correct === undefined ? [] : [steps(one.correct)];
}

function choice(elements: readonly string[]): string {
  return elements.slice(0, COUNT.choices.most).map(element).join('[,]');
}

/** A step carries its number, so that one may be done twice. */
function steps(elements: readonly string[]): string {
  const within = elements.slice(0, COUNT.steps.most);
  return within.map((one, i) => `${i + 1}[.]${element(one)}`).join('[,]');
}

const element = (one: string) => text(TEXT.step2004, one);
