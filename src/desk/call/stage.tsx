import { useState } from 'preact/hooks';
import type { ActionView, CallView } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import type { Yard } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { CLOSE_UPS } from '../picture.ts';
import { PictureHost } from '../picture-host.tsx';
import { useLater } from '../use-later.ts';
import { Captions } from './captions.tsx';
import { Hotspots } from './hotspots.tsx';

const ZOOM_STEP = 1.4;

/** The cutaway across the width, with real buttons over what can be pressed in it. */
export function Stage({ view, captions }: { view: CallView; captions: readonly Message[] }) {
  const desk = useDesk();
  const { session } = desk;
  const [menu, setMenu] = useState<readonly ActionView[]>([]);
  const [inWords, setInWords] = useState(false);
  const words = useLater(inWords, () => import('./yard-words.tsx'), 'access');
  if (desk.openPicture === undefined) return null;
  const closeUp = session.closeUp.value;
  const chosen = session.part.value;
  const offered = CLOSE_UPS[chosen];
  const toggle = () => {
    setMenu([]);
    session.closeUp.value = closeUp === 'yard' && offered !== undefined ? offered : 'yard';
  };
  return (
    <section class="stage" aria-label={desk.t('call.picture')}>
      <PictureHost
        scene={view.scene}
        part={chosen === 'phone' ? null : chosen}
        view={closeUp}
        onSelect={session.select}
      >
        {(spots, yard) =>
          !inWords && (
            <>
              <Hotspots spots={spots} view={view} menu={menu} onMenu={setMenu} />
              {closeUp === 'yard' && <Zoom yard={yard} />}
            </>
          )
        }
      </PictureHost>
      {words && <words.YardWords view={view} />}
      <div class="stage-buttons">
        <button
          type="button"
          class="over-picture words-button"
          aria-pressed={inWords}
          onClick={() => setInWords(!inWords)}
        >
          <Icon name={inWords ? 'cross' : 'list'} />
          <span>{desk.t('call.inWords')}</span>
        </button>
        {!inWords && (offered !== undefined || closeUp !== 'yard') && (
          <button type="button" class="over-picture close-up-button" onClick={toggle}>
            <Icon name={closeUp === 'yard' ? 'zoom' : 'cross'} />
            {desk.t(closeUp === 'yard' ? 'view.closer' : 'view.yard')}
          </button>
        )}
      </div>
      <Captions captions={captions} />
    </section>
  );
}

/** Zooming by button; choosing a part in the strip below moves the picture there, so that nobody has to drag. */
function Zoom({ yard }: { yard: Yard }) {
  const { t } = useDesk();
  return (
    <div class="zoom">
      <button type="button" class="round" onClick={() => yard.zoom(1 / ZOOM_STEP)}>
        <Icon name="minus" />
        <span class="vh">{t('view.zoomOut')}</span>
      </button>
      <button type="button" class="round" onClick={() => yard.zoom(ZOOM_STEP)}>
        <Icon name="plus" />
        <span class="vh">{t('view.zoomIn')}</span>
      </button>
    </div>
  );
}
