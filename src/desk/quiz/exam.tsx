import { useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { OpenElsewhere } from '../elsewhere/later.tsx';
import { Question } from './question.tsx';
import { Result } from './result.tsx';
import { left_s, type Sitting } from './sitting.ts';
import { Sure } from './sure.tsx';
import { TimeUp } from './time-up.tsx';
import { useSitting } from './use-sitting.ts';

interface Props {
  /** One that begins now; without it the one that is kept. */
  readonly fresh: Sitting | null;
  readonly onLeave: () => void;
}

/** A mock exam: its questions, or whether to hand it in, or what came out of it. */
export function ExamScreen({ fresh, onLeave }: Props) {
  const { t } = useDesk();
  const sat = useSitting(fresh, onLeave);
  const [asking, setAsking] = useState(false);
  const { sitting, since_s, elsewhere, change } = sat;
  if (elsewhere !== null) return <OpenElsewhere how={elsewhere} onTake={sat.takeOver} />;
  if (sitting === null) return <main class="waiting">{t('quiz.exam.opening')}</main>;
  if (sitting.handedIn) return <Result sitting={sitting} onLeave={onLeave} />;
  const leave = () => {
    change((same) => same);
    onLeave();
  };
  const handIn = () => change((one) => ({ ...one, handedIn: true }));
  const left = left_s(sitting, since_s);
  if (left === 0) return <TimeUp sitting={sitting} change={change} onHandIn={handIn} />;
  if (asking) return <Sure sitting={sitting} onYes={handIn} onNo={() => setAsking(false)} />;
  return <Question sitting={sitting} left_s={left} change={change} onHandIn={() => setAsking(true)} onLeave={leave} />;
}
