import type { Assistance, DebriefView } from '../../calls/view.ts';
import { type Desk, useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { Said, ScreenTitle } from '../screen.tsx';
import { minutesOf } from './minutes.ts';

interface Props {
  readonly debrief: DebriefView;
  /** Of a coached call only. */
  readonly assistance: Assistance | undefined;
}

/** The outcome at a glance, over a strip of lawn, with tags hung beside it. */
export function VerdictHead({ debrief, assistance }: Props) {
  const { t } = useDesk();
  const safe = debrief.lines.every((line) => line.id !== 'safety' || line.points >= line.of);
  return (
    <section class="verdict-head">
      <div class="verdict-words">
        <ScreenTitle>
          <Said message={debrief.verdict} />
        </ScreenTitle>
        <p class={debrief.passed ? 'good' : 'bad'}>
          <Icon name={debrief.passed ? 'check' : 'flag'} />
          <strong>{t(debrief.passed ? 'debrief.passed' : 'debrief.failed')}</strong>{' '}
          {t(safe ? 'debrief.safe' : 'debrief.unsafe')}
        </p>
      </div>
      <ul class="tags">
        <Tag big={String(Math.round(debrief.score))} small={t('debrief.tag.score')} />
        <Tag
          big={t(safe ? 'debrief.tag.kept' : 'debrief.tag.broken')}
          small={t('debrief.tag.safety')}
          tone={safe ? 'good' : 'bad'}
        />
        <Tag big={String(debrief.flags.length)} small={t('debrief.tag.flags', { n: debrief.flags.length })} />
        <Tag
          big={t('call.minutes', { m: { measure: 'duration_min', value: minutesOf(debrief) } })}
          small={t('debrief.tag.time')}
        />
        {assistance !== undefined && <Tag big={helpInBrief(assistance, t)} small={t('assist.tag')} />}
      </ul>
    </section>
  );
}

function helpInBrief({ led, hints, likely }: Assistance, t: Desk['t']): string {
  if (led !== undefined) return t('assist.led');
  return hints > 0 ? `${hints} / 4` : t(likely ? 'assist.some' : 'assist.none');
}

function Tag({ big, small, tone = '' }: { big: string; small: string; tone?: string }) {
  return (
    <li class={`tag ${tone}`}>
      <strong>{big}</strong>
      <span>{small}</span>
    </li>
  );
}
