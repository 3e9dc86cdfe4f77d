import type { ComponentChildren, Ref } from 'preact';
import type { Answer, Ask, Drill } from '../../quiz/drill.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';
import { FigureView } from './figure.tsx';
import { NumberAnswer } from './number.tsx';
import { Options } from './options.tsx';
import { OrderAnswer } from './order.tsx';

interface AnswerProps {
  readonly ask: Ask;
  /** What has been answered so far. */
  readonly answer: Answer | null;
  /** Whether it is shown which answer was right; until then an answer may be changed. */
  readonly judged: boolean;
  /** What the button says that gives an answer which is made up of several moves: to check it, or to keep it. */
  readonly confirm?: string;
  readonly onAnswer: (answer: Answer) => void;
  /** In an exam, where what is typed counts at once: the answer is taken back. */
  readonly onBlank?: () => void;
}

interface ItemProps extends Omit<AnswerProps, 'ask'> {
  readonly drill: Drill;
  readonly prompt?: Ref<HTMLHeadingElement>;
  /** Where several stand on one page, each has its own. */
  readonly promptId?: string;
  readonly level?: 'h2' | 'h4';
  /** Stands under the question. */
  readonly status?: ComponentChildren;
  /** Comes after the answers: what was right, the way on. */
  readonly children?: ComponentChildren;
}

/** One question with its figure, and how it is answered. It judges nothing by itself. */
export function Item(props: ItemProps) {
  const { drill, prompt, promptId = 'drill-prompt', level: Heading = 'h2', status, children, ...answering } = props;
  const { t } = useDesk();
  const { ask, figure } = drill;
  return (
    <div class="drill-room">
      <section class="card drill-figure" aria-label={t('drills.textTwin')}>
        <FigureView figure={figure} pointing={ask.kind === 'point' ? { ask, ...answering } : undefined} />
      </section>
      <section class="card drill-question" aria-labelledby={promptId}>
        <Heading id={promptId} ref={prompt ?? null} tabIndex={-1} class="prompt">
          <Said message={drill.prompt} />
        </Heading>
        {status}
        <AnswerField ask={ask} {...answering} />
        {children}
      </section>
    </div>
  );
}

function AnswerField({ ask, confirm, ...answering }: AnswerProps) {
  const { t } = useDesk();
  const button = confirm ?? t('drills.check');
  switch (ask.kind) {
    case 'choice':
    case 'point':
      return <Options ask={ask} {...answering} />;
    case 'order':
      return <OrderAnswer ask={ask} confirm={button} {...answering} />;
    case 'number':
      return <NumberAnswer ask={ask} confirm={button} {...answering} />;
  }
}
