import { useMemo, useRef, useState } from 'preact/hooks';
import { type Answer, type Checked, checked, type Drill, SKILLS, type Skill } from '../../quiz/drill.ts';
import { drill } from '../../quiz/index.ts';
import { nextSkill } from '../../quiz/practice.ts';
import type { UnitSpec } from '../../unit/spec.ts';
import { type Desk, useDesk } from '../desk.ts';
import { cardKey } from '../store.ts';
import type { QuizCard } from '../stored.ts';
import { answered, standingOf } from './spacing.ts';

export type Cards = ReadonlyMap<string, QuizCard>;

export async function cardsOf({ store }: Desk): Promise<Cards> {
  return new Map((await store.cards()).map((card) => [cardKey(card), card]));
}

export function standingsOf(cards: Cards, unit: string, now: number) {
  return SKILLS.map((skill) => standingOf(skill, cards.get(cardKey({ skill, unit })), now));
}

/** Questions of one practice (convention). */
export const PRACTICE_LENGTH = 12;

export interface Practice {
  readonly drill: Drill;
  /** From 1. */
  readonly number: number;
  readonly given: (Checked & { readonly answer: Answer }) | null;
  readonly answers: readonly { readonly skill: Skill; readonly right: boolean }[];
  answer(answer: Answer): Promise<void>;
  next(): void;
}

/** One question after the other on a unit, each of the skill whose turn it is. What was answered is kept before it is told. */
export function usePractice(spec: UnitSpec, seed: number, first: Cards, onCards: (cards: Cards) => void): Practice {
  const desk = useDesk();
  const cards = useRef(first);
  const taken = useRef(false);
  const [turn, setTurn] = useState(0);
  const [given, setGiven] = useState<Practice['given']>(null);
  const [answers, setAnswers] = useState<Practice['answers']>([]);
  const asked = useMemo(() => {
    const standings = standingsOf(cards.current, spec.id, desk.wallClock());
    const skill = nextSkill(
      standings,
      answers.map((one) => one.skill),
    );
    return drill(skill, seed + turn, spec, desk.settings.value.units);
    // What is asked next does not change while one answers, nor do its units.
  }, [turn]);
  return {
    drill: asked,
    number: turn + 1,
    given,
    answers,
    async answer(answer) {
      if (given !== null || taken.current) return;
      taken.current = true;
      const { skill } = asked;
      const result = { answer, ...checked(asked, answer) };
      const key = cardKey({ skill, unit: spec.id });
      const card = answered({ skill, unit: spec.id }, cards.current.get(key), result.right, desk.wallClock());
      cards.current = new Map(cards.current).set(key, card);
      await desk.store.putCard(card);
      onCards(cards.current);
      setGiven(result);
      setAnswers([...answers, { skill, right: result.right }]);
    },
    next() {
      taken.current = false;
      setGiven(null);
      setTurn(turn + 1);
    },
  };
}
