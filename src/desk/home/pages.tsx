import { useEffect, useState } from 'preact/hooks';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';

/** Pages that one turns, or lets turn by themselves until the last. */
export interface Pages {
  readonly at: number;
  readonly last: number;
  readonly playing: boolean;
  turnTo(page: number): void;
  toggle(): void;
}

/** So many pages, of which `by` are turned each `beat_ms`. */
export function usePages(count: number, beat_ms: number, by = 1): Pages {
  const last = count - 1;
  const [at, setAt] = useState(0);
  const [playing, setPlaying] = useState(false);
  useEffect(() => {
    if (!playing) return;
    const timer = setInterval(() => setAt((now) => Math.min(last, now + by)), beat_ms);
    return () => clearInterval(timer);
  }, [playing, last, by, beat_ms]);
  useEffect(() => {
    if (at === last) setPlaying(false);
  }, [at, last]);
  return {
    at,
    last,
    playing,
    turnTo(page) {
      setPlaying(false);
      setAt(page);
    },
    toggle() {
      if (at === last) setAt(0);
      setPlaying(!playing);
    },
  };
}

/** Plays and holds, and leads to any page; `says` tells of the one that is open. */
export function PageHands({ pages, name, says }: { pages: Pages; name: string; says: string }) {
  const { t } = useDesk();
  return (
    <div class="home-drop-hands">
      <button type="button" class="secondary" onClick={pages.toggle}>
        <Icon name={pages.playing ? 'pause' : 'play'} /> {t(pages.playing ? 'home.drop.hold' : 'home.drop.play')}
      </button>
      <input
        type="range"
        min={0}
        max={pages.last}
        value={pages.at}
        aria-label={name}
        aria-valuetext={says}
        onInput={(event) => pages.turnTo(Number(event.currentTarget.value))}
      />
    </div>
  );
}
