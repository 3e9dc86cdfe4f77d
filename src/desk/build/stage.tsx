import { useEffect, useState } from 'preact/hooks';
import { lengthAt } from '../../build/draft.ts';
import type { Scene } from '../../scene/types.ts';
import type { Hotspot } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { PictureHost } from '../picture-host.tsx';
import { momentWords } from './days.ts';
import { offeredAt } from './fault-at.ts';
import { addFault, DRAGGED } from './faults.tsx';
import { type BuildState, useBuild } from './state.ts';

/** The works at the instant that is looked at, with the faults pinned to their parts; a fault can be dropped on its part. */
export function BuildStage() {
  const desk = useDesk();
  const build = useBuild();
  const { t } = desk;
  const [scene, setScene] = useState<Scene>();
  const { line, looked, at_s } = build;
  useEffect(() => {
    if (line === null || looked?.preview === undefined || at_s === undefined) return;
    let late = false;
    line.ask({ kind: 'open', at_s }).then(
      (reply) => {
        if (!late && reply.scene !== undefined) setScene(reply.scene);
      },
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
    return () => {
      late = true;
    };
  }, [line, looked, at_s]);
  const drop = (event: DragEvent) => {
    const key = event.dataTransfer?.getData(DRAGGED);
    const fault = looked?.offered.faults.find((one) => one.key === key);
    if (fault === undefined) return;
    event.preventDefault();
    build.drag(null);
    addFault(build, fault);
  };
  if (desk.openPicture === undefined) return null;
  return (
    <section
      class={scene === undefined ? 'stage build-stage empty' : 'stage build-stage'}
      aria-label={t('build.picture')}
      onDragOver={(event) => event.preventDefault()}
      onDrop={drop}
    >
      {scene === undefined ? (
        <p class="picture-wait">{t(looked === undefined ? 'build.looking' : 'build.impossible')}</p>
      ) : (
        <>
          <PictureHost scene={scene} part={build.part} view="yard" onSelect={build.choosePart} bare>
            {(spots) => <Pins spots={spots} />}
          </PictureHost>
          {at_s !== undefined && <p class="shown-at">{shownWords(desk, build, at_s)}</p>}
        </>
      )}
    </section>
  );
}

function shownWords(desk: ReturnType<typeof useDesk>, { looked }: BuildState, at_s: number): string {
  const { preview } = looked ?? {};
  if (preview === undefined) return '';
  const when = momentWords(desk.words.value, preview.firstDay, at_s);
  return desk.t(at_s === preview.report_s ? 'build.shown.report' : 'build.shown', { when });
}

/** One pin for each fault, over the part that it is on; several on one part stand side by side. */
function Pins({ spots }: { spots: readonly Hotspot[] }) {
  const { speak } = useDesk();
  const build = useBuild();
  const pins = Array.from({ length: lengthAt(build.draft, 'faults') }, (_, place) => ({
    place,
    offered: offeredAt(build, place),
  }));
  return (
    <>
      <DropTarget spots={spots} />
      <ul class="pins">
        {pins.map(({ place, offered }) => {
          const spot = spots.find(({ id }) => id === offered?.place);
          if (offered === undefined || spot === undefined) return null;
          const before = pins.filter((one) => one.place < place && one.offered?.place === offered.place).length;
          const style = { '--at': `${spot.x + spot.width / 2}px`, top: `${spot.y + 18 + before * 36}px` };
          return (
            <li key={place} style={style}>
              <button
                type="button"
                class="pin-label"
                aria-pressed={build.fault === place}
                onClick={() => build.chooseFault(place)}
              >
                <span class="pin">{place + 1}</span> {speak.value(offered.name)}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** Where the fault that is being dragged belongs; it gets there wherever it is let go. */
function DropTarget({ spots }: { spots: readonly Hotspot[] }) {
  const { dragged } = useBuild();
  const spot = spots.find(({ id }) => id === dragged?.place);
  if (spot === undefined) return null;
  const { x, y, width, height } = spot;
  return (
    <div class="drop-target" style={{ left: `${x}px`, top: `${y}px`, width: `${width}px`, height: `${height}px` }} />
  );
}
