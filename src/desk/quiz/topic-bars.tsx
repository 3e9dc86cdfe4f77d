import type { Topic } from '../../quiz/topics.ts';
import { useDesk } from '../desk.ts';

export interface TopicBar {
  readonly topic: Topic;
  /** 0 to 1; undefined where nothing is known. */
  readonly share: number | undefined;
  readonly more: string;
}

interface Props {
  readonly caption: string;
  readonly bars: readonly TopicBar[];
  /** Share that a line over all of them marks, and what it means. */
  readonly line: number;
  readonly lineSays: string;
}

/** A share for each topic beside a line. The numbers stand in words, the bars are for the eye. */
export function TopicBars({ caption, bars, line, lineSays }: Props) {
  const { t } = useDesk();
  const percent = (share: number) => Math.round(100 * share);
  return (
    <table class="topic-bars" style={`--line-at: ${percent(line)}%`}>
      <caption class="small">{caption}</caption>
      <tbody>
        {bars.map(({ topic, share, more }) => (
          <tr key={topic} data-topic={topic}>
            <th scope="row">{t(`drills.topic.${topic}`)}</th>
            <td class="topic-bar" aria-hidden="true">
              <span class="track">
                {share !== undefined && (
                  <span class={share < line ? 'fill short' : 'fill'} style={`width: ${percent(share)}%`} />
                )}
              </span>
            </td>
            <td class="topic-share">{share === undefined ? '' : t('quiz.share', { n: percent(share) })}</td>
            <td class="topic-more">{more}</td>
          </tr>
        ))}
      </tbody>
      <tfoot aria-hidden="true">
        <tr>
          <td />
          <td class="topic-line">
            <span>{lineSays}</span>
          </td>
          <td colSpan={2} />
        </tr>
      </tfoot>
    </table>
  );
}
