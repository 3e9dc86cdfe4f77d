import { useEffect, useState } from 'preact/hooks';
import type { PartId, Scene } from '../../scene/types.ts';
import type { CloseUpName, ViewName } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { CLOSE_UPS } from '../picture.ts';
import { PictureHost } from '../picture-host.tsx';
import '../css/picture.css';

const VIEWS: readonly ViewName[] = ['yard', ...Object.values(CLOSE_UPS)];
const noPart = () => {};

interface Props {
  readonly scene: Scene;
  /** What is looked at: another one is shown close up only if it has a close-up of its own. */
  readonly part?: PartId | null;
  readonly onSelect?: (part: PartId) => void;
}

/** The works with everything open: as a whole, or close up by choice. */
export function XrayPicture({ scene, part = null, onSelect = noPart }: Props) {
  const desk = useDesk();
  const [view, setView] = useState<ViewName>('yard');
  const [named, setNamed] = useState(false);
  useEffect(() => {
    desk.readyFor('picture').then(
      () => setNamed(true),
      () => desk.fail({ id: 'trouble.notLoaded' }),
    );
  }, [desk]);
  useEffect(() => {
    if (part !== null) setView((before) => (before === 'yard' ? before : closeUpOf(part)));
  }, [part]);
  return (
    <>
      <PictureHost scene={scene} part={part} view={view} onSelect={onSelect} />
      {named && (
        <label class="view-choice">
          <span class="vh">{desk.t('plate.view')}</span>
          <select
            class="over-picture"
            value={view}
            onChange={(event) => setView(VIEWS.find((one) => one === event.currentTarget.value) ?? 'yard')}
          >
            {VIEWS.map((one) => (
              <option key={one} value={one}>
                {desk.t(one === 'yard' ? 'picture.title' : `plate.title.${one}`)}
              </option>
            ))}
          </select>
        </label>
      )}
    </>
  );
}

function closeUpOf(part: PartId): CloseUpName | 'yard' {
  return CLOSE_UPS[part] ?? 'yard';
}
