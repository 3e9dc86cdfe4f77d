import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { PartId, Scene } from '../scene/types.ts';
import { STAFFS } from '../words/units.ts';
import type { Hotspot, ViewName, Yard } from '../yard/index.ts';
import { useDesk } from './desk.ts';
import { Icon } from './icons.tsx';
import { PictureTools } from './picture-tools.tsx';
import { useLater } from './use-later.ts';

interface Props {
  readonly scene: Scene;
  readonly part: PartId | null;
  readonly view: ViewName;
  readonly onSelect: (part: PartId) => void;
  /** Without the glass and the way to keep it: other things lie over the picture. */
  readonly bare?: boolean;
  readonly children?: (spots: readonly Hotspot[], yard: Yard) => ComponentChildren;
}

/** Holds the drawn picture: loads it when first needed, keeps it told, and lets it go. */
export function PictureHost({ scene, part, view, onSelect, bare = false, children }: Props) {
  const desk = useDesk();
  const whole = useRef<HTMLDivElement>(null);
  const host = useRef<HTMLDivElement>(null);
  const [yard, setYard] = useState<Yard | null>(null);
  const [spots, setSpots] = useState<readonly Hotspot[]>([]);
  const [failed, setFailed] = useState(false);
  const still = desk.stillWanted.value;
  const text = desk.speak.value;
  const staff = STAFFS[desk.settings.value.units];
  const atFirst = useRef({ text, staff, still });

  useEffect(() => {
    const at = host.current;
    if (at === null || whole.current === null || desk.openPicture === undefined) return;
    let gone = false;
    let opened: Yard | undefined;
    const touch = whole.current;
    desk
      .openPicture(at, { ...atFirst.current, touch, onSelect })
      .then((made) => {
        if (gone) return made.dispose();
        opened = made;
        made.onHotspots(setSpots);
        setYard(made);
      })
      .catch((error: unknown) => {
        console.error(error);
        setFailed(true);
      });
    return () => {
      gone = true;
      opened?.dispose();
    };
  }, [desk, onSelect]);

  const told = useLater(view !== 'yard', () => import('./picture/close-up-told.tsx'), 'picture');

  useEffect(() => yard?.draw(scene), [yard, scene]);
  useEffect(() => {
    if (yard === null) return;
    const go = async () => {
      if (view !== 'yard') await desk.readyFor('picture');
      yard.setSpeech({ text: desk.speak.value, staff });
      await yard.view(view);
    };
    go().catch(() => desk.fail({ id: 'trouble.notLoaded' }));
  }, [desk, yard, view]);
  useEffect(() => yard?.setStill(still), [yard, still]);
  useEffect(() => yard?.setSpeech({ text, staff }), [yard, text, staff]);
  useEffect(() => {
    yard?.select(part);
    if (part !== null) yard?.panTo(part);
  }, [yard, part]);

  return (
    <div class="picture" ref={whole}>
      <div ref={host} class="picture-host" aria-hidden="true" />
      {yard === null && <p class="picture-wait">{desk.t(failed ? 'call.picture.failed' : 'call.picture.loading')}</p>}
      {yard !== null && children?.(spots, yard)}
      {yard && told && <told.CloseUpTold yard={yard} view={view} />}
      {yard !== null && (
        <button
          type="button"
          class="round still-button"
          aria-pressed={desk.settings.value.still}
          onClick={() => void desk.change({ still: !desk.settings.value.still })}
        >
          <Icon name={still ? 'play' : 'pause'} />
          <span class="vh">{desk.t('set.still')}</span>
        </button>
      )}
      {yard !== null && !bare && <PictureTools yard={yard} scene={scene} view={view} />}
    </div>
  );
}
