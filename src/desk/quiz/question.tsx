import { useMemo } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { TimeLeft } from '../drills/clock.tsx';
import { Item } from '../drills/item.tsx';
import { useFocus } from '../drills/use-focus.ts';
import { Icon } from '../icons.tsx';
import { Switch } from '../switch.tsx';
import { promptId } from './prompt-id.ts';
import { drillOf, type Sitting, withItem } from './sitting.ts';
import { toldOf, withClock, withMore, withoutClock } from './time.ts';

interface Props {
  readonly sitting: Sitting;
  /** Null without a clock. */
  readonly left_s: number | null;
  readonly change: (how: (sitting: Sitting) => Sitting) => void;
  readonly onHandIn: () => void;
  readonly onLeave: () => void;
}

/** One question of an exam: to be answered, changed, marked for later. Nothing of its answer is on the page. */
export function Question({ sitting, left_s, change, onHandIn, onLeave }: Props) {
  const { t } = useDesk();
  const { at, items, unit } = sitting;
  const item = items[at];
  const asked = useMemo(() => item && drillOf(sitting, item), [unit, item?.skill, item?.seed]);
  const { prompt } = useFocus(at);
  if (item === undefined || asked === undefined) return null;
  const go = (place: number) => change((one) => ({ ...one, at: place }));
  const told = left_s === null ? undefined : toldOf(left_s);
  return (
    <main class="drill quiz-exam">
      <div class="drill-head">
        <h1>
          {t('quiz.exam')} <span class="drill-number">{t('quiz.sit.question', { n: at + 1, m: items.length })}</span>
        </h1>
        <div class="drill-clock">
          {left_s === null ? (
            <p class="small">{t('drills.noClock')}</p>
          ) : (
            <>
              <TimeLeft left_s={left_s} />
              <button type="button" class="secondary more-time" onClick={() => change(withMore)}>
                {t('quiz.sit.more')}
              </button>
            </>
          )}
          <Switch label={t('bar.clock')} on={left_s !== null} onFlip={(on) => change(on ? withClock : withoutClock)} />
        </div>
        <button type="button" class="secondary" data-leave onClick={onLeave}>
          {t('quiz.sit.leave')}
        </button>
        <button type="button" class="secondary hand-in" onClick={onHandIn}>
          {t('quiz.sit.handIn')}
        </button>
      </div>
      <p class="quiz-told" role="status">
        {told === undefined ? '' : t('quiz.sit.left', { n: told })}
      </p>
      <Item
        key={at}
        drill={asked}
        answer={item.given}
        judged={false}
        onAnswer={(given) => change((one) => withItem(one, { given }))}
        onBlank={() => change((one) => withItem(one, { given: null }))}
        prompt={prompt}
        promptId={promptId(asked)}
      >
        <div class="quiz-ways">
          <button type="button" class="secondary" aria-disabled={at === 0} onClick={() => at > 0 && go(at - 1)}>
            {t('quiz.sit.back')}
          </button>
          <button
            type="button"
            class="secondary mark-later"
            aria-pressed={item.marked}
            onClick={() => change((one) => withItem(one, { marked: !item.marked }))}
          >
            <Icon name="flag" /> {t(item.marked ? 'quiz.sit.marked' : 'quiz.sit.mark')}
          </button>
          <button
            type="button"
            class="primary next-question"
            onClick={() => (at + 1 < items.length ? go(at + 1) : onHandIn())}
          >
            {t(at + 1 < items.length ? 'quiz.sit.next' : 'quiz.sit.handIn')} <Icon name="arrow" />
          </button>
        </div>
      </Item>
      <Places sitting={sitting} onGo={go} />
    </main>
  );
}

/** Every question by its number: answered or not, marked or not, to go to. */
function Places({ sitting: { items, at }, onGo }: { readonly sitting: Sitting; readonly onGo: (at: number) => void }) {
  const { t } = useDesk();
  return (
    <nav class="card quiz-places" aria-label={t('quiz.sit.all')}>
      <ol>
        {items.map(({ given, marked }, i) => {
          const state = t(given === null ? 'quiz.sit.blank' : 'quiz.sit.answered');
          return (
            <li key={i}>
              <button
                type="button"
                class={given === null ? 'place' : 'place done'}
                aria-current={i === at ? 'true' : undefined}
                aria-label={t(marked ? 'quiz.sit.place.marked' : 'quiz.sit.place', { n: i + 1, state })}
                onClick={() => onGo(i)}
              >
                {i + 1}
                {marked && <Icon name="flag" />}
              </button>
            </li>
          );
        })}
      </ol>
      <p class="small">{t('quiz.sit.key')}</p>
    </nav>
  );
}
