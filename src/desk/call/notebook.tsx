import type { CallView, NotebookEntry } from '../../calls/view.ts';
import { formatClock } from '../../words/measure.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';
import { clockAt } from './time.ts';

/** What was read, where and when, newest on top. */
export function Notebook({ view }: { view: CallView }) {
  const desk = useDesk();
  const entries = [...view.notebook].reverse();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region that the keyboard must reach
    <section class="card notebook" aria-labelledby="notebook-title" tabIndex={0}>
      <h2 id="notebook-title">{desk.t('tab.notes')}</h2>
      {entries.length === 0 ? (
        <p class="small">{desk.t('notes.empty')}</p>
      ) : (
        <table>
          <thead class="vh">
            <tr>
              <th scope="col">{desk.t('notes.time')}</th>
              <th scope="col">{desk.t('notes.what')}</th>
              <th scope="col">{desk.t('notes.reading')}</th>
            </tr>
          </thead>
          <tbody>
            {entries.map((entry) => (
              <Row key={entry.id} entry={entry} time={formatClock(clockAt(view, entry.at_s))} />
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

function Row({ entry, time }: { entry: NotebookEntry; time: string }) {
  return (
    <tr>
      <td class="time">{time}</td>
      <th scope="row">
        <Said message={entry.what} />
        <span class="where">
          <Said message={entry.where} />
        </span>
      </th>
      <td>
        <span class="reading">
          <Said message={entry.reading} />
        </span>
        {entry.remark !== undefined && (
          <span class={`remark ${entry.remark.tone}`}>
            <Said message={entry.remark.text} />
          </span>
        )}
      </td>
    </tr>
  );
}
