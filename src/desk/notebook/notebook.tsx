import '../css/printed.css';
import '../css/notebook.css';
import { useCallback, useEffect, useState } from 'preact/hooks';
import type { CallView } from '../../calls/view.ts';
import { formatMoment } from '../../words/calendar.ts';
import { formatClock } from '../../words/measure.ts';
import type { Yard } from '../../yard/index.ts';
import { Bar } from '../bar.tsx';
import { clockAt } from '../call/time.ts';
import { takenUp, useFinished } from '../debrief/load.ts';
import { type Desk, useDesk } from '../desk.ts';
import { posterWords } from '../picture/poster-words.ts';
import { PictureHost } from '../picture-host.tsx';
import { writeRoute } from '../routes.ts';
import { Said, ScreenTitle } from '../screen.tsx';

const noPart = () => {};

/** The notebook of a finished call on paper: what was seen, as a sketch in pencil and ink, and every line that was written down. */
export function NotebookScreen({ recordKey }: { recordKey: number }) {
  const desk = useDesk();
  const { t } = desk;
  const view = useFinished(desk, recordKey, withWords);
  const speak = desk.speak.value;
  const [drawn, setDrawn] = useState<{ readonly by: typeof speak; readonly url: string }>();
  const keep = useCallback((url: string) => setDrawn({ by: speak, url }), [speak]);
  useEffect(() => drawn && (() => URL.revokeObjectURL(drawn.url)), [drawn]);
  // In another language or other units it is drawn anew.
  const sketch = drawn?.by === speak ? drawn.url : undefined;
  const ready = view !== null && (sketch !== undefined || desk.openPicture === undefined);
  return (
    <div class="printed">
      <Bar subtitle={t('title.notebook')} />
      <main>
        <div class="buttons not-on-paper">
          <button type="button" class="primary" aria-disabled={!ready} onClick={() => ready && print()}>
            {t('notebook.print')}
          </button>
          <a class="secondary" href={writeRoute({ screen: 'debrief', key: recordKey })}>
            {t('notebook.back')}
          </a>
        </div>
        {view === null ? (
          <p role="status">{t('debrief.opening')}</p>
        ) : (
          <Paper view={view} sketch={sketch} onSketch={keep} />
        )}
      </main>
    </div>
  );
}

/** The finished call as it stood when it ended, with the words of its sketch. */
async function withWords(desk: Desk, recordKey: number): Promise<CallView> {
  await desk.readyFor('picture');
  return takenUp(desk, recordKey);
}

interface PaperProps {
  readonly view: CallView;
  readonly sketch: string | undefined;
  readonly onSketch: (url: string) => void;
}

function Paper({ view, sketch, onSketch }: PaperProps) {
  const desk = useDesk();
  const { t, local } = desk;
  return (
    <article class="paper notebook-paper">
      <header>
        <p class="label">{t('title.notebook')}</p>
        <ScreenTitle>{local(view.title)}</ScreenTitle>
        <p>{t('notebook.until', { when: formatMoment(desk.words.value, view.clock) })}</p>
      </header>
      {desk.openPicture !== undefined && (
        <figure class="notebook-sketch">
          {sketch === undefined ? (
            <PictureHost bare scene={view.scene} part={null} view="yard" onSelect={noPart}>
              {(_, yard) => <Draw yard={yard} view={view} onSketch={onSketch} />}
            </PictureHost>
          ) : (
            <img src={sketch} alt={t('notebook.sketch')} />
          )}
        </figure>
      )}
      <table>
        <caption>{t('notebook.lines', { n: view.notebook.length })}</caption>
        <thead>
          <tr>
            <th scope="col">{t('notes.time')}</th>
            <th scope="col">{t('notes.what')}</th>
            <th scope="col">{t('notes.reading')}</th>
          </tr>
        </thead>
        <tbody>
          {view.notebook.map((note) => (
            <tr key={note.id}>
              <td>{formatClock(clockAt(view, note.at_s))}</td>
              <th scope="row">
                <Said message={note.what} /> · <Said message={note.where} />
              </th>
              <td>
                <Said message={note.reading} />
                {note.remark && (
                  <>
                    {' '}
                    <strong>
                      <Said message={note.remark.text} />
                    </strong>
                  </>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="small">{t('notebook.simulated')}</p>
    </article>
  );
}

interface DrawProps {
  readonly yard: Yard;
  readonly view: CallView;
  readonly onSketch: (url: string) => void;
}

/** Has the picture drawn in lines once it stands. */
function Draw({ yard, view, onSketch }: DrawProps) {
  const desk = useDesk();
  useEffect(() => {
    let gone = false;
    yard
      .poster({ kind: 'svg', progress: () => {}, ...posterWords(desk, view.scene, desk.local(view.title)) })
      .then((drawn) => {
        if (!gone) onSketch(URL.createObjectURL(drawn));
      })
      .catch(() => desk.fail({ id: 'trouble.notLoaded' }));
    return () => {
      gone = true;
    };
  }, [desk, yard, view, onSketch]);
  return null;
}
