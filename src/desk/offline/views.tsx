import { useEffect, useState } from 'preact/hooks';
import type { Message } from '../../service/message.ts';
import { quantity, say } from '../../service/message.ts';
import { offline as en } from '../../words/en/offline.ts';
import { offline as es } from '../../words/es/offline.ts';
import '../css/offline.css';
import '../css/progress.css';
import { type Desk, type OfflineViews, useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { speakWith } from '../own-words.ts';
import type { Newer, Watching } from './watching.ts';

/** In the settings how the copy of the page stands; on the first screen that a newer version waits, and a way to it. */
export function viewsOf(watching: Watching): OfflineViews {
  return { Note: () => <UpdateNote watching={watching} />, Copy: () => <CopyState watching={watching} /> };
}

interface Props {
  readonly watching: Watching;
}

function UpdateNote({ watching }: Props) {
  const desk = useDesk();
  const said = speakWith(desk, { en, es });
  const [taking, setTaking] = useState(false);
  // What is left half way may have changed since.
  useEffect(() => void watching.look(), [watching]);
  const newer = watching.newer.value;
  if (newer === null) return null;
  const takeUp = async () => {
    setTaking(true);
    await desk.session.leave();
    await watching.takeUp();
    location.reload();
  };
  return (
    <section class="card update-note" aria-labelledby="update-note">
      <div>
        <h2 id="update-note">{said(say('offline.update'))}</h2>
        <p class="small">{said(whatOf(newer, desk))}</p>
      </div>
      <button type="button" class="secondary" disabled={taking} onClick={() => void takeUp()}>
        <Icon name="again" /> {said(say('offline.update.take'))}
      </button>
    </section>
  );
}

/** What taking the version up means for what was left half way. */
function whatOf({ ends }: Newer, { progress, words }: Desk): Message {
  if (ends.length === 0) return say('offline.update.waits');
  const named = ends.flatMap((id): Message[] => {
    if (id === 'round') return [say('offline.round')];
    const title = progress.value.find(({ callId }) => callId === id)?.saved.title;
    return title === undefined ? [] : [say('offline.call', { title: title[words.value.language] })];
  });
  const [first, ...more] = named;
  if (first === undefined) return say('offline.update.unsure');
  return say('offline.update.ends', { what: more.reduce((a, b) => say('offline.and', { a, b }), first) });
}

function CopyState({ watching }: Props) {
  const said = speakWith(useDesk(), { en, es });
  const copy = watching.copy.value;
  if (copy === null) return null;
  if (copy.kind === 'coming') {
    const text = said(say('offline.coming', { done: megabytes(copy.done), of: megabytes(copy.of) }));
    return (
      <div class="offline-copy">
        <progress value={copy.done} max={copy.of} aria-label={text} />
        <p class="small" aria-hidden="true">
          {text}
        </p>
      </div>
    );
  }
  if (copy.kind === 'kept') {
    return (
      <div class="offline-copy">
        <p class="small good" role="status">
          <Icon name="check" /> {said(say('offline.kept', { n: megabytes(copy.bytes) }))}
        </p>
        {copy.noRoomForNewer && <p class="small">{said(say('offline.newer.full'))}</p>}
      </div>
    );
  }
  return (
    <div class="offline-copy">
      <p class="small" role="status">
        {said(say(`offline.not.${copy.why}`))}
      </p>
      {copy.why !== 'denied' && (
        <button type="button" class="secondary" onClick={() => void watching.begin()}>
          <Icon name="again" /> {said(say('offline.again'))}
        </button>
      )}
    </div>
  );
}

const megabytes = (bytes: number) => quantity('count', bytes / 1e6, 0.1);
