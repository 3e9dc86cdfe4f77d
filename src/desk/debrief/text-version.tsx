import type { DebriefView, TimelineBlock } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';

interface Line {
  readonly at_ms: number;
  readonly minutes?: number;
  readonly text: Message;
  readonly flagged: boolean;
  readonly who: 'plant' | 'you';
}

/** The time line as tables: what happened and was done, and the reference beside it. */
export function TextVersion({ debrief }: { debrief: DebriefView }) {
  const desk = useDesk();
  const happened: Line[] = [
    ...debrief.events.map((one): Line => ({ at_ms: one.at_ms, text: one.label, flagged: false, who: 'plant' })),
    ...debrief.done.map(lineOf),
  ].sort((a, b) => a.at_ms - b.at_ms);
  return (
    <div class="text-version">
      <Lines title={desk.t('replay.text.happened')} lines={happened} startOfDay_ms={debrief.startOfDay_ms} />
      <Lines
        title={desk.t('replay.text.reference')}
        lines={debrief.reference.map(lineOf)}
        startOfDay_ms={debrief.startOfDay_ms}
      />
    </div>
  );
}

function lineOf(block: TimelineBlock): Line {
  return {
    at_ms: block.from_ms,
    minutes: (block.to_ms - block.from_ms) / 60_000,
    text: block.label,
    flagged: block.flag !== undefined,
    who: 'you',
  };
}

interface LinesProps {
  readonly title: string;
  readonly lines: readonly Line[];
  readonly startOfDay_ms: number;
}

function Lines({ title, lines, startOfDay_ms }: LinesProps) {
  const desk = useDesk();
  return (
    <table>
      <caption>{title}</caption>
      <thead>
        <tr>
          <th scope="col">{desk.t('notes.time')}</th>
          <th scope="col">{desk.t('replay.text.what')}</th>
          <th scope="col">{desk.t('replay.text.length')}</th>
        </tr>
      </thead>
      <tbody>
        {lines.map((line, index) => (
          <tr key={`${line.at_ms}${line.text.id}${index}`} class={line.who}>
            <td class="time">{formatClock((line.at_ms - startOfDay_ms) / 1000)}</td>
            <td>
              {line.who === 'plant' && <em>{desk.t('replay.text.plant')} </em>}
              <Said message={line.text} />
              {line.flagged && <span class="bad"> {desk.t('replay.text.flagged')}</span>}
            </td>
            <td>
              {line.minutes === undefined
                ? ''
                : desk.t('call.minutes', { m: { measure: 'duration_min', value: line.minutes } })}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
