import { useState } from 'preact/hooks';
import type { Scene } from '../scene/types.ts';
import type { ViewName, Yard } from '../yard/index.ts';
import { useDesk } from './desk.ts';
import { Icon } from './icons.tsx';
import { useLater } from './use-later.ts';

/** A glass to hold over the picture, and a way to keep it: both come once they are first wanted. */
export function PictureTools({ yard, scene, view }: { yard: Yard; scene: Scene; view: ViewName }) {
  const { t } = useDesk();
  const [tool, setTool] = useState<'glass' | 'save'>();
  const later = useLater(tool !== undefined, () => import('./picture/tools.tsx'), 'picture');
  const away = () => setTool(undefined);
  return (
    <>
      <div class="picture-tools">
        {(view === 'yard' ? (['glass', 'save'] as const) : (['save'] as const)).map((one) => (
          <button
            key={one}
            type="button"
            class="round"
            data-tool={one}
            aria-pressed={tool === one}
            onClick={() => setTool(tool === one ? undefined : one)}
          >
            <Icon name={one === 'glass' ? 'zoom' : 'save'} />
            <span class="vh">{t(`view.${one}`)}</span>
          </button>
        ))}
      </div>
      {later && tool === 'glass' && view === 'yard' && <later.GlassOver yard={yard} scene={scene} onAway={away} />}
      {later && tool === 'save' && <later.SavePicture yard={yard} scene={scene} view={view} onAway={away} />}
    </>
  );
}
