import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { type Answer, type Checked, checked, type Drill, type Skill, type System } from '../../quiz/drill.ts';
import { drill } from '../../quiz/index.ts';
import type { Answered } from '../../quiz/round.ts';
import { unitOfTurn } from './units.ts';

/** Two minutes, and how often the clock is looked at, ms. */
const ROUND_ms = 120_000;
const LOOK_ms = 250;

export interface Given extends Checked {
  readonly answer: Answer;
  /** Units that it was asked in: they stay while its explanation is read. */
  readonly system: System;
}

export interface Round {
  readonly drill: Drill;
  readonly number: number;
  readonly given: Given | null;
  readonly answers: readonly Answered[];
  /** Whole seconds left. */
  readonly left_s: number;
  /** Whether this question is the last: the clock ran out while it was open. */
  readonly up: boolean;
  answer(answer: Answer): void;
  next(): void;
}

/**
 * One question after the other. The clock runs while a question is open, stands while its explanation is read, and
 * never cuts a question short.
 */
export function useRound(skill: Skill, seed: number, clockOn: boolean, units: System): Round {
  const [turn, setTurn] = useState(0);
  const [given, setGiven] = useState<Given | null>(null);
  const [answers, setAnswers] = useState<readonly Answered[]>([]);
  const [used_ms, setUsed] = useState(0);
  const opened = useRef(performance.now());
  const looked = useRef(opened.current);
  const system = given?.system ?? units;
  const asked = useMemo(() => drill(skill, seed + turn, unitOfTurn(seed + turn), system), [skill, seed, turn, system]);
  useEffect(() => {
    opened.current = performance.now();
    looked.current = opened.current;
  }, [turn]);
  useEffect(() => {
    if (given !== null || !clockOn) return;
    looked.current = performance.now();
    const timer = setInterval(() => {
      const now = performance.now();
      const passed = now - looked.current;
      looked.current = now;
      setUsed((used) => used + passed);
    }, LOOK_ms);
    return () => clearInterval(timer);
  }, [given, clockOn, turn]);
  return {
    drill: asked,
    number: turn + 1,
    given,
    answers,
    left_s: Math.max(0, Math.ceil((ROUND_ms - used_ms) / 1000)),
    up: clockOn && used_ms >= ROUND_ms,
    answer(answer) {
      if (given !== null) return;
      const result = { answer, system, ...checked(asked, answer) };
      setGiven(result);
      setAnswers([...answers, { right: result.right, seconds: (performance.now() - opened.current) / 1000 }]);
    },
    next() {
      setGiven(null);
      setTurn(turn + 1);
    },
  };
}
