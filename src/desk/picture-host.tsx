import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { PartId, Scene } from '../scene/types.ts';
import { useDesk } from './desk.ts';
import type { Hotspot, Picture, ViewName } from './picture.ts';

interface Props {
  readonly scene: Scene;
  readonly part: PartId | null;
  readonly view: ViewName;
  readonly onSelect: (part: PartId) => void;
  readonly children?: (spots: readonly Hotspot[]) => ComponentChildren;
}

/** Holds the drawn picture: loads it when first needed, keeps it told, and lets it go. */
export function PictureHost({ scene, part, view, onSelect, children }: Props) {
  const desk = useDesk();
  const host = useRef<HTMLDivElement>(null);
  const [picture, setPicture] = useState<Picture | null>(null);
  const [spots, setSpots] = useState<readonly Hotspot[]>([]);
  const [failed, setFailed] = useState(false);
  const still = desk.stillWanted.value;
  const text = desk.speak.value;

  useEffect(() => {
    const at = host.current;
    if (at === null || desk.openPicture === undefined) return;
    let gone = false;
    let opened: Picture | undefined;
    desk
      .openPicture(at, { text: desk.speak.peek(), still: desk.stillWanted.peek(), onSelect })
      .then((made) => {
        if (gone) return made.dispose();
        opened = made;
        made.onHotspots(setSpots);
        setSpots(made.hotspots());
        setPicture(made);
      })
      .catch(() => setFailed(true));
    return () => {
      gone = true;
      opened?.dispose();
    };
  }, [desk, onSelect]);

  useEffect(() => picture?.draw(scene), [picture, scene]);
  useEffect(() => picture?.view(view), [picture, view]);
  useEffect(() => picture?.setStill(still), [picture, still]);
  useEffect(() => picture?.setText(text), [picture, text]);
  useEffect(() => {
    picture?.select(part);
    if (part !== null) picture?.panTo(part);
  }, [picture, part]);

  return (
    <div class="picture">
      <div ref={host} class="picture-host" aria-hidden="true" />
      {picture === null && (
        <p class="picture-wait">{desk.t(failed ? 'call.picture.failed' : 'call.picture.loading')}</p>
      )}
      {picture !== null && children?.(spots)}
    </div>
  );
}
