import '../css/instructor.css';
import { useEffect, useState } from 'preact/hooks';
import { formatMoment } from '../../words/calendar.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { ScreenTitle } from '../screen.tsx';
import type { TraineeWindow } from './line.ts';
import type { Link } from './link.ts';
import { OpenDesk } from './open-desk.tsx';
import { chosenOf, type Switchboard } from './switchboard.ts';
import { useSwitchboard } from './use-switchboard.ts';

/** A trainer's window: which of the trainees' windows it works with, and that one's call. */
export function InstructorScreen() {
  const desk = useDesk();
  const { t } = desk;
  useEffect(() => {
    void desk.session.leave().then(desk.refreshShelves);
  }, [desk]);
  const board = useSwitchboard();
  return (
    <div class="instructor">
      <Bar subtitle={t('title.instructor')} />
      <main>
        <ScreenTitle hidden>{t('title.instructor')}</ScreenTitle>
        {board === null ? <p class="small">{t('brought.opening')}</p> : <Windows board={board} />}
      </main>
    </div>
  );
}

function Windows({ board }: { readonly board: Switchboard }) {
  const { t } = useDesk();
  const windows = board.windows.value;
  const [wanted, setWanted] = useState<{ readonly name: string; readonly callId: string | undefined } | null>(null);
  const chosen = chosenOf(windows, wanted);
  const link = useLink(board, chosen);
  const callId = chosen === undefined ? undefined : windows.get(chosen)?.call?.callId;
  // What is worked with is remembered with its call: a window that was loaded anew has another name.
  useEffect(() => {
    if (chosen !== undefined) setWanted({ name: chosen, callId });
  }, [chosen, callId]);
  return (
    <>
      {board.other.value && <p class="card other-version">{t('instructor.otherVersion')}</p>}
      {chosen === undefined && <NoWindow gone={wanted !== null} none={windows.size === 0} />}
      {(windows.size > 1 || (windows.size > 0 && chosen === undefined)) && (
        <Choose
          windows={windows}
          chosen={chosen}
          onChoose={(name) => setWanted({ name, callId: windows.get(name)?.call?.callId })}
        />
      )}
      {link !== null && <OpenDesk key={chosen} link={link} />}
    </>
  );
}

/** Where no trainee's window is open, or the one that was is gone; nothing to say where one has only to be chosen. */
function NoWindow({ gone, none }: { readonly gone: boolean; readonly none: boolean }) {
  const { t } = useDesk();
  if (!gone && !none) return null;
  return (
    <section class="card no-window" aria-labelledby="no-window">
      <h2 id="no-window">{gone ? <span role="alert">{t('instructor.gone')}</span> : t('instructor.noWindow')}</h2>
      <p>{t('instructor.noWindow.text')}</p>
      <a class="primary" href="#/" target="_blank" rel="noopener">
        <Icon name="plus" /> {t('instructor.noWindow.open')}
      </a>
    </section>
  );
}

interface ChooseProps {
  readonly windows: ReadonlyMap<string, TraineeWindow>;
  readonly chosen: string | undefined;
  readonly onChoose: (name: string) => void;
}

/** Several windows, told apart by call and time. */
function Choose({ windows, chosen, onChoose }: ChooseProps) {
  const desk = useDesk();
  const { t, local } = desk;
  return (
    <fieldset class="card windows">
      <legend>{t('instructor.windows')}</legend>
      {[...windows].map(([name, { call }], i) => (
        <label key={name} class="option">
          <input type="radio" name="window" checked={name === chosen} onChange={() => onChoose(name)} />
          <span>
            {call === null ? (
              t('instructor.window.idle', { n: i + 1 })
            ) : (
              <>
                <strong>{local(call.title)}</strong> · {formatMoment(desk.words.value, call.clock)}
              </>
            )}
          </span>
        </label>
      ))}
    </fieldset>
  );
}

function useLink(board: Switchboard, name: string | undefined): Link | null {
  const [link, setLink] = useState<{ readonly name: string; readonly link: Link } | null>(null);
  useEffect(() => {
    if (name === undefined) return;
    const opened = board.linkTo(name);
    setLink({ name, link: opened });
    return () => {
      opened.close();
      setLink(null);
    };
  }, [board, name]);
  return link !== null && link.name === name ? link.link : null;
}
