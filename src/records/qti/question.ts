/** A question as any course platform can ask it: words only, each answer with what is said of it. Made from a drill. */
import { type Ask, type Drill, type Option, slipReach } from '../../quiz/drill.ts';
import { figureWords } from '../../quiz/figure-words.ts';
import { type Message, say } from '../../service/message.ts';
import { decimal, TEXT, text } from '../limits.ts';

export interface Choosing {
  readonly kind: 'choice';
  readonly options: readonly { readonly id: string; readonly text: string; readonly why: string }[];
  /** More than one where all of them are to be chosen. */
  readonly right: readonly string[];
}

export interface Sequencing {
  readonly kind: 'order';
  readonly items: readonly { readonly id: string; readonly text: string; readonly why: string }[];
  /** Ids in their order. */
  readonly right: readonly string[];
  readonly whole: string;
}

export interface Counting {
  readonly kind: 'number';
  /** What stands before the field. */
  readonly label: string;
  readonly value: string;
  /** How far off still counts as right. */
  readonly tolerance: string;
  readonly why: string;
  /** Numbers that a known slip comes to, each within its own reach. */
  readonly slips: readonly { readonly value: string; readonly reach: string; readonly why: string }[];
  readonly other: string;
}

export interface Question {
  readonly id: string;
  readonly language: 'en' | 'es';
  readonly title: string;
  readonly prompt: string;
  /** What is to be seen, told line by line. */
  readonly shown: readonly string[];
  readonly ask: Choosing | Sequencing | Counting;
  /** For who teaches or scores: the worked solution line by line, and where rule and numbers come from. */
  readonly ground: readonly string[];
}

/** `speak` says a message in the language that is named. */
export function questionOf(
  drill: Drill,
  language: Question['language'],
  speak: (message: Message) => string,
): Question {
  const { skill, seed, prompt, figure, ask, source } = drill;
  return {
    id: text(TEXT.itemIdentifier, `${skill}-${seed}`),
    language,
    title: `${speak(say(`drills.skill.${skill}`))} ${seed}`,
    prompt: speak(prompt),
    shown: figureWords(figure).map(speak),
    ask: askedOf(ask, speak),
    ground: [...(ask.kind === 'number' ? ask.worked : []), source].map(speak),
  };
}

function askedOf(ask: Ask, speak: (message: Message) => string): Question['ask'] {
  const answers = (options: readonly Option[]) =>
    options.map(({ id, label, why }) => ({ id: answerId(id), text: speak(label), why: speak(why) }));
  switch (ask.kind) {
    // A part of the plan is pointed at by its name: what the plan shows is told line by line.
    case 'choice':
    case 'point':
      return { kind: 'choice', options: answers(ask.options), right: [answerId(ask.right)] };
    case 'order':
      return { kind: 'order', items: answers(ask.items), right: ask.right.map(answerId), whole: speak(ask.whole) };
    case 'number':
      return {
        kind: 'number',
        label: speak(say('drills.number', { unit: ask.unit })),
        value: decimal(ask.value),
        tolerance: decimal(ask.tolerance),
        why: speak(ask.right),
        slips: ask.slips.map((slip) => ({
          value: decimal(slip.value),
          reach: decimal(slipReach(slip, ask)),
          why: speak(slip.why),
        })),
        other: speak(ask.other),
      };
  }
}

/** Some ids are bare numbers, which an identifier must not begin with. */
function answerId(id: string): string {
  return text(TEXT.itemIdentifier, `answer-${id.replace(/[^\w.-]/g, '-')}`);
}
