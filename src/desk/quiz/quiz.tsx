import { useEffect, useState } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { UNITS } from '../drills/units.ts';
import { Choose } from './choose.tsx';
import { ExamScreen } from './exam.tsx';
import { MOCK } from './mock.ts';
import { PracticeScreen } from './practice.tsx';
import { PracticeEnd } from './practice-end.tsx';
import { begun, type Chosen, readSitting, type Sitting } from './sitting.ts';
import { unitBy } from './units.ts';
import { type Cards, cardsOf, type Practice } from './use-practice.ts';
import '../css/drills.css';
import '../css/drill-figures.css';
import '../css/quiz.css';

type Phase =
  | { readonly at: 'choose' }
  | { readonly at: 'practice'; readonly seed: number }
  | { readonly at: 'end'; readonly answers: Practice['answers'] }
  | { readonly at: 'exam'; readonly fresh: Sitting | null };

/** Seeds and forms that are drawn where the address names none. */
const SEEDS = 1e9;
const FORMS = 1e4;

/** The quiz: practice with the weakest first, and a mock exam. */
export function QuizScreen({ form }: { form: number | undefined }) {
  const desk = useDesk();
  const [phase, setPhase] = useState<Phase>({ at: 'choose' });
  const [cards, setCards] = useState<Cards | null>(null);
  const [sitting, setSitting] = useState<Sitting | undefined>();
  const [unit, setUnit] = useState(UNITS[0]?.id ?? '');
  const [drawn] = useState(() => form ?? Math.floor(Math.random() * FORMS));
  const choose = async () => {
    const kept = readSitting(await desk.store.sitting());
    setCards(await cardsOf(desk));
    setSitting(kept);
    // An exam that is open goes on where it was.
    setPhase(kept?.handedIn === false && cards === null ? { at: 'exam', fresh: null } : { at: 'choose' });
  };
  useEffect(() => {
    void desk.session.leave().then(choose);
  }, [desk]);
  const practise = () => setPhase({ at: 'practice', seed: form ?? Math.floor(Math.random() * SEEDS) });
  const begin = (chosen: Chosen) => setPhase({ at: 'exam', fresh: begun(MOCK, chosen) });
  const spec = unitBy(unit);
  if (cards === null || spec === undefined) return <main class="waiting">{desk.t('brought.opening')}</main>;
  return (
    <div class="quiz">
      <Bar subtitle={desk.t('title.quiz')} />
      {phase.at === 'choose' && (
        <Choose
          cards={cards}
          unit={unit}
          form={drawn}
          sitting={sitting}
          onUnit={setUnit}
          onPractise={practise}
          onBegin={begin}
          onExam={() => setPhase({ at: 'exam', fresh: null })}
        />
      )}
      {phase.at === 'practice' && (
        <PracticeScreen
          spec={spec}
          seed={phase.seed}
          cards={cards}
          onCards={setCards}
          onEnd={(answers) => setPhase({ at: 'end', answers })}
        />
      )}
      {phase.at === 'end' && (
        <PracticeEnd
          answers={phase.answers}
          cards={cards}
          unit={unit}
          onAgain={practise}
          onLeave={() => setPhase({ at: 'choose' })}
        />
      )}
      {phase.at === 'exam' && <ExamScreen fresh={phase.fresh} onLeave={() => void choose()} />}
    </div>
  );
}
