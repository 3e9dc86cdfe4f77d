import '../css/build.css';
import '../css/build-days.css';
import { useEffect, useState } from 'preact/hooks';
import { textAt } from '../../build/draft.ts';
import { STEPS, type Step, stepOf } from '../../build/steps.ts';
import type { PartId } from '../../scene/types.ts';
import { formatClock } from '../../words/measure.ts';
import { Bar } from '../bar.tsx';
import { type Desk, useDesk } from '../desk.ts';
import { OpenElsewhere } from '../elsewhere/later.tsx';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import { FaultCard } from './fault-card.tsx';
import { FaultList } from './faults.tsx';
import { LimitsStep } from './limits.tsx';
import { DraftList } from './list.tsx';
import { ProofCard } from './proof-card.tsx';
import { PropertyStep } from './property.tsx';
import type { Looked, OfferedFault } from './protocol.ts';
import { SaidStep } from './said.tsx';
import { SolutionStep } from './solution.tsx';
import { BuildStage } from './stage.tsx';
import { BuildContext, type BuildState } from './state.ts';
import { Timeline } from './timeline.tsx';
import { type Drafting, useDraft } from './use-draft.ts';
import { useLooker } from './use-looker.ts';
import { useProver } from './use-prover.ts';
import { WeatherStep } from './weather.tsx';

/** Makes calls: the list of those being made, or one of them. */
export function BuildScreen({ draft }: { draft: number | undefined }) {
  const desk = useDesk();
  const [held, setHeld] = useState<'open' | 'taken' | 'mine' | null>(null);
  const claim = async (over: boolean) => {
    await desk.session.leave();
    const name = `draft/${draft}`;
    const mine = draft === undefined || (await desk.store.claim(name, over, () => setHeld('taken')));
    setHeld(mine ? 'mine' : 'open');
  };
  useEffect(() => {
    setHeld(null);
    void claim(false);
    return () => desk.store.letGo();
  }, [desk, draft]);
  if (held === null) return <main class="waiting">{desk.t('build.opening')}</main>;
  if (held !== 'mine') return <OpenElsewhere how={held} onTake={() => void claim(true)} />;
  return draft === undefined ? <DraftList /> : <OneDraft key={draft} at={draft} />;
}

function OneDraft({ at }: { at: number }) {
  const desk = useDesk();
  const drafting = useDraft(desk, at);
  const draft = drafting.edits?.now;
  const looking = useLooker(desk, draft);
  const proving = useProver();
  const [step, setStep] = useState<Step>('property');
  const [fault, chooseFault] = useState(0);
  const [part, choosePart] = useState<PartId | null>(null);
  const [dragged, drag] = useState<OfferedFault | null>(null);
  const [asked_s, show] = useState<number | undefined>(undefined);
  useKeys(drafting);
  if (drafting.missing) {
    return (
      <div>
        <Bar subtitle={desk.t('title.build')} />
        <main class="waiting">
          <ScreenTitle>{desk.t('build.missing')}</ScreenTitle>
          <a href="#/build">{desk.t('build.to-list')}</a>
        </main>
      </div>
    );
  }
  if (draft === undefined) return <main class="waiting">{desk.t('build.opening')}</main>;
  const { preview } = looking.looked ?? {};
  const go = (next: Step) => {
    setStep(next);
    requestAnimationFrame(() => document.getElementById('step-title')?.focus());
  };
  const state: BuildState = {
    draft,
    ...looking,
    proving,
    step,
    go,
    fault,
    chooseFault,
    part,
    choosePart,
    dragged,
    drag,
    at_s: preview && Math.min(asked_s ?? preview.report_s, preview.end_s),
    show,
    set: drafting.set,
    keep: drafting.keep,
  };
  const title = textAt(draft, 'title', desk.words.value.language);
  const name = title === '' ? desk.t('build.untitled') : title;
  return (
    <BuildContext.Provider value={state}>
      <div class="build">
        <Bar subtitle={`${desk.t('title.build')} · ${name}`}>
          <Undo drafting={drafting} />
        </Bar>
        <main>
          <ScreenTitle hidden>{name}</ScreenTitle>
          <Steps step={step} looked={looking.looked} onGo={go}>
            <Kept desk={desk} drafting={drafting} />
          </Steps>
          <div class={step === 'faults' ? 'build-top with-faults' : 'build-top'}>
            {step === 'faults' && <FaultList />}
            <BuildStage />
            {step === 'faults' && <FaultCard />}
          </div>
          <div class="build-bench">
            <div class="build-main">
              {step !== 'faults' && <Form step={step} />}
              <Timeline />
            </div>
            <ProofCard />
          </div>
        </main>
      </div>
    </BuildContext.Provider>
  );
}

function Form({ step }: { step: Exclude<Step, 'faults'> }) {
  switch (step) {
    case 'property':
      return <PropertyStep />;
    case 'weather':
      return <WeatherStep />;
    case 'said':
      return <SaidStep />;
    case 'limits':
      return <LimitsStep />;
    case 'proof':
      return <SolutionStep />;
  }
}

interface StepsProps {
  readonly step: Step;
  readonly looked: Looked | undefined;
  readonly onGo: (step: Step) => void;
  readonly children: preact.ComponentChildren;
}

/** The steps, each with what is still to mend in it; they can be done in any order. */
function Steps({ step, looked, onGo, children }: StepsProps) {
  const { t } = useDesk();
  return (
    <nav class="build-steps" aria-label={t('build.steps')}>
      <ol>
        {STEPS.map((one, i) => {
          const open = (looked?.problems ?? []).filter(({ path }) => stepOf(path) === one).length;
          return (
            <li key={one}>
              <button
                type="button"
                data-step={one}
                aria-current={one === step ? 'step' : undefined}
                onClick={() => onGo(one)}
              >
                <span class={open === 0 ? 'step-mark done' : 'step-mark'}>
                  {open === 0 && one !== step ? <Icon name="check" /> : i + 1}
                </span>
                {t(`build.step.${one}`)}
                {open > 0 && <span class="step-open">{t('build.step.open', { n: open })}</span>}
              </button>
            </li>
          );
        })}
      </ol>
      {children}
    </nav>
  );
}

function Kept({ desk, drafting }: { desk: Desk; drafting: Drafting }) {
  const { keptAt } = drafting;
  const at = keptAt === undefined ? undefined : new Date(keptAt);
  return (
    <p class="small kept" role="status">
      {at === undefined
        ? desk.t('build.keeping')
        : desk.t('build.kept', { time: formatClock(at.getHours() * 3600 + at.getMinutes() * 60) })}
    </p>
  );
}

function Undo({ drafting: { edits, takeBack, makeAgain } }: { drafting: Drafting }) {
  const { t } = useDesk();
  const [back, again] = [edits?.before.length ?? 0, edits?.after.length ?? 0];
  return (
    <div class="undo">
      <button type="button" class="pill" data-undo aria-disabled={back === 0} onClick={takeBack}>
        {t('build.back')}
      </button>
      <button type="button" class="pill" data-redo aria-disabled={again === 0} onClick={makeAgain}>
        {t('build.again')}
      </button>
    </div>
  );
}

/** Ctrl or Command with Z takes a change back, with Shift or with Y makes it again; also in the middle of a field. */
function useKeys({ takeBack, makeAgain }: Drafting): void {
  useEffect(() => {
    const key = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const pressed = event.key.toLowerCase();
      if (pressed !== 'z' && pressed !== 'y') return;
      event.preventDefault();
      if (pressed === 'y' || event.shiftKey) makeAgain();
      else takeBack();
    };
    addEventListener('keydown', key);
    return () => removeEventListener('keydown', key);
  });
}
