import { useEffect, useState } from 'preact/hooks';
import { SKILLS, type Skill } from '../../quiz/drill.ts';
import { type Answered, type Count, countOf } from '../../quiz/round.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import type { DrillCount } from '../stored.ts';
import { Choose } from './choose.tsx';
import { End } from './end.tsx';
import { RoundScreen } from './round.tsx';
import '../css/drills.css';
import '../css/drill-figures.css';

type Phase =
  | { readonly at: 'choose' }
  | { readonly at: 'round'; readonly skill: Skill; readonly seed: number }
  | { readonly at: 'end'; readonly skill: Skill; readonly answers: readonly Answered[] };

/** Seeds that are drawn where the address names none. */
const SEEDS = 1e9;

/** Two-minute drills: choose a skill, answer, count. */
export function DrillsScreen({ seed }: { seed: number | undefined }) {
  const desk = useDesk();
  const [phase, setPhase] = useState<Phase>({ at: 'choose' });
  const [clockOn, setClock] = useState(true);
  const [counts, setCounts] = useState<readonly Count[]>([]);
  useEffect(() => {
    void desk.session.leave();
    void desk.store.drills().then((kept) => setCounts(kept.flatMap(counted)));
  }, [desk]);
  const begin = (skill: Skill) => setPhase({ at: 'round', skill, seed: seed ?? Math.floor(Math.random() * SEEDS) });
  const end = (skill: Skill, answers: readonly Answered[]) => {
    if (answers.length > 0) {
      const count = { skill, ...countOf(answers) };
      setCounts([...counts, count]);
      void desk.store.addDrill({ version: 1, finishedAt: Date.now(), ...count });
    }
    setPhase({ at: 'end', skill, answers });
  };
  return (
    <div class="drills">
      <Bar subtitle={desk.t('start.drills')} />
      {phase.at === 'choose' && <Choose counts={counts} clockOn={clockOn} onClock={setClock} onBegin={begin} />}
      {phase.at === 'round' && (
        <RoundScreen
          skill={phase.skill}
          seed={phase.seed}
          clockOn={clockOn}
          onClock={setClock}
          onEnd={(answers) => end(phase.skill, answers)}
        />
      )}
      {phase.at === 'end' && (
        <End
          skill={phase.skill}
          answers={phase.answers}
          counts={counts}
          onBegin={begin}
          onChoose={() => setPhase({ at: 'choose' })}
        />
      )}
    </div>
  );
}

/** What is kept of a skill that there is; another page may have known more of them. */
function counted({ skill, asked, right }: DrillCount): readonly Count[] {
  return SKILLS.filter((one) => one === skill).map((one) => ({ skill: one, asked, right }));
}
