import type { ComponentChildren, Ref } from 'preact';
import type { Drill } from '../../quiz/drill.ts';
import type { Answer } from '../../quiz/right.ts';
import { useDesk } from '../desk.ts';
import { FigureView } from '../drills/figure.tsx';
import { NumberAnswer } from '../drills/number.tsx';
import { Options } from '../drills/options.tsx';
import type { Given } from '../drills/use-round.ts';
import { Said } from '../screen.tsx';

interface Props {
  readonly drill: Drill;
  /** What was answered, once that is told. */
  readonly given: Given | null;
  readonly onAnswer: (answer: Answer) => void;
  /** In an exam: what is answered so far, and how it is taken back. */
  readonly open?: { readonly chosen: Answer | null; readonly onBlank: () => void };
  readonly prompt?: Ref<HTMLHeadingElement>;
  readonly level?: 'h2' | 'h4';
  readonly children?: ComponentChildren;
}

/** A question with its figure and its answers, in practice, in an exam and in its review. */
export function ItemView({ drill, given, onAnswer, open, prompt = null, level: Heading = 'h2', children }: Props) {
  const { t } = useDesk();
  const id = `prompt-${drill.skill}-${drill.seed}`;
  const { ask } = drill;
  return (
    <div class="drill-room">
      <section class="card drill-figure" aria-label={t('drills.textTwin')}>
        <FigureView figure={drill.figure} />
      </section>
      <section class="card drill-question" aria-labelledby={id}>
        <Heading id={id} ref={prompt} tabIndex={-1} class="prompt">
          <Said message={drill.prompt} />
        </Heading>
        {ask.kind === 'choice' ? (
          <Options
            ask={ask}
            given={given}
            onAnswer={onAnswer}
            {...(open === undefined ? {} : { chosen: open.chosen === null ? null : String(open.chosen) })}
          />
        ) : (
          <NumberAnswer
            ask={ask}
            given={given}
            onAnswer={onAnswer}
            {...(open === undefined ? {} : numberTaken(open, onAnswer))}
          />
        )}
        {children}
      </section>
    </div>
  );
}

function numberTaken({ chosen, onBlank }: NonNullable<Props['open']>, onAnswer: Props['onAnswer']) {
  return {
    chosen: typeof chosen === 'number' ? chosen : null,
    onTyped: (value: number | null) => (value === null ? onBlank() : onAnswer(value)),
  };
}
