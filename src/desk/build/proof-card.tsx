import type { ComponentChildren } from 'preact';
import { useDesk } from '../desk.ts';
import { Icon, type IconName } from '../icons.tsx';
import { Said } from '../screen.tsx';
import { ProblemLine } from './fields.tsx';
import type { AlikeView, ProveReply } from './protocol.ts';
import { Share } from './share.tsx';
import { useBuild } from './state.ts';
import type { Ended } from './use-prover.ts';

type Proved = Extract<ProveReply, { kind: 'proved' }>;

/** What proving the call brought, and the ways to hand it on. */
export function ProofCard() {
  const { t } = useDesk();
  const build = useBuild();
  const { running, ended, begin, cancel } = build.proving;
  const fresh = ended?.of === build.draft;
  const whole = build.looked !== undefined && !build.busy && build.looked.problems.length === 0;
  return (
    <section class="card proof-card" aria-labelledby="proof-title">
      <header>
        <h2 id="proof-title">{t('build.proof')}</h2>
        {fresh && ended.it.kind === 'proved' && <Stamp proved={ended.it} />}
      </header>
      <div role="status" class="proof-status">
        {running !== null ? (
          <Running stage={running.stage} kind={running.kind} onCancel={cancel} />
        ) : (
          <>
            {ended === null && <p class="small">{t('build.proof.none')}</p>}
            {ended !== null && !fresh && <p class="changed">{t('build.proof.stale')}</p>}
          </>
        )}
      </div>
      {running === null && ended !== null && <Came ended={ended.it} />}
      {running === null && (
        <div class="buttons">
          <button
            type="button"
            class="primary"
            data-prove
            aria-disabled={!whole}
            onClick={() => whole && begin('prove', build.draft)}
          >
            <Icon name="check" /> {t('build.prove')}
          </button>
        </div>
      )}
      {!whole && build.looked !== undefined && !build.busy && (
        <p class="small">{t('build.prove.wait', { n: build.looked.problems.length })}</p>
      )}
      <Share whole={whole} />
    </section>
  );
}

function Stamp({ proved: { proof } }: { proved: Proved }) {
  const { t } = useDesk();
  const holds = proof.problems.length === 0;
  return <strong class={holds ? 'stamp good' : 'stamp bad'}>{t(holds ? 'build.proved' : 'build.unproved')}</strong>;
}

interface RunningProps {
  readonly kind: 'prove' | 'solve';
  readonly stage: Extract<ProveReply, { kind: 'stage' }> | undefined;
  readonly onCancel: () => void;
}

function Running({ kind, stage, onCancel }: RunningProps) {
  const { t } = useDesk();
  const words = kind === 'solve' ? t('build.solving') : t(`build.stage.${stage?.stage ?? 'promises'}`);
  const known = stage?.of !== undefined;
  return (
    <div class="running">
      <p>{words}</p>
      <progress aria-label={words} {...(known ? { value: stage.done ?? 0, max: stage.of } : {})} />
      <button type="button" class="secondary" onClick={onCancel}>
        <Icon name="cross" /> {t('build.stop')}
      </button>
    </div>
  );
}

function Came({ ended }: { ended: Ended }) {
  const { t } = useDesk();
  if (ended.kind === 'failed') return <p class="bad">{t('build.failed')}</p>;
  if (ended.kind === 'unsound') {
    return (
      <ul class="verdicts" lang="en">
        {ended.problems.map((one) => (
          <li key={`${one.path} ${one.message}`}>
            <ProblemLine problem={one} where />
          </li>
        ))}
      </ul>
    );
  }
  if (ended.kind === 'solved') {
    const { passed, score, steps } = ended;
    return (
      <p class={passed ? 'good' : 'bad'}>{t(passed ? 'build.solved' : 'build.unsolved', { n: steps.length, score })}</p>
    );
  }
  return <Verdicts proved={ended} />;
}

function Verdicts({ proved: { proof, harder, alikes } }: { proved: Proved }) {
  const { t, speak } = useDesk();
  const { symptomsArise, solvedBy, lookAlikes, shortcuts, difficulty, problems } = proof;
  return (
    <>
      <ul class="verdicts">
        <Verdict holds={symptomsArise} title={t('build.verdict.symptoms')} />
        <Verdict holds={solvedBy.includes('solution')} title={t('build.verdict.solution')} />
        <Verdict holds={lookAlikes && solvedBy.includes('expert')} title={t('build.verdict.expert')} />
        <Verdict holds={lookAlikes && lookAlikes.length === 0} title={t('build.verdict.apart')}>
          {alikes.map((alike) => (
            <Alike key={speak.value(alike.cause)} alike={alike} />
          ))}
        </Verdict>
        <Verdict holds={shortcuts && shortcuts.length === 0} title={t('build.verdict.shortcuts')} />
      </ul>
      {problems.length > 0 && (
        <>
          <h3>{t('build.mends')}</h3>
          <ul class="mends" lang="en">
            {problems.map((one) => (
              <li key={`${one.path} ${one.message}`}>
                <ProblemLine problem={one} where />
              </li>
            ))}
          </ul>
        </>
      )}
      {difficulty && (
        <p class="difficulty">
          <strong>{t('build.difficulty')}</strong>{' '}
          {t('build.difficulty.is', {
            bits: difficulty.bits,
            m: { measure: 'duration_min', value: difficulty.expectedMinutes },
          })}
          {harder && (
            <>
              {' '}
              {t('build.difficulty.above', { n: harder.easier, of: harder.of })}
              <meter min={0} max={harder.of} value={harder.easier} aria-label={t('build.difficulty')} />
            </>
          )}
        </p>
      )}
    </>
  );
}

interface VerdictProps {
  /** Undefined where it was not looked at. */
  readonly holds: boolean | undefined;
  readonly title: string;
  readonly children?: ComponentChildren;
}

function Verdict({ holds, title, children }: VerdictProps) {
  const { t } = useDesk();
  const icon: IconName = holds === undefined ? 'minus' : holds ? 'check' : 'cross';
  const tone = holds === undefined ? 'open' : holds ? 'good' : 'bad';
  return (
    <li class={`verdict ${tone}`}>
      <span class="verdict-mark">
        <Icon name={icon} />
      </span>
      <div>
        <strong>{title}</strong> <span class="small">{t(`build.verdict.${tone}`)}</span>
        {children}
      </div>
    </li>
  );
}

/** A cause that reads as the true one does, and what both show. */
function Alike({ alike }: { alike: AlikeView }) {
  const { t } = useDesk();
  return (
    <div class="alike">
      <p>
        {t('build.alike')} <Said message={alike.cause} />
      </p>
      <ul>
        {alike.shared.map(({ label, lines }) => (
          <li key={label.id}>
            <Said message={label} />:{' '}
            {lines.map((line, i) => (
              <span key={i}>
                <Said message={line} />{' '}
              </span>
            ))}
          </li>
        ))}
      </ul>
    </div>
  );
}
