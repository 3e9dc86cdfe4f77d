import { useState } from 'preact/hooks';
import type { ActionView, CallView } from '../../calls/view.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import type { ViewName } from '../picture.ts';
import { PictureHost } from '../picture-host.tsx';
import { Captions } from './captions.tsx';
import { Hotspots } from './hotspots.tsx';

/** The close-up that belongs to a part, where there is one. */
const CLOSE_UPS: Readonly<Record<string, ViewName>> = { panel: 'panel', 'pump-tank': 'floats' };

/** The cutaway across the width, with real buttons over what can be pressed in it. */
export function Stage({ view }: { view: CallView }) {
  const desk = useDesk();
  const { session } = desk;
  const [menu, setMenu] = useState<readonly ActionView[]>([]);
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
        {(spots) => <Hotspots spots={spots} view={view} menu={menu} onMenu={setMenu} />}
      </PictureHost>
      {(offered !== undefined || closeUp !== 'yard') && (
        <button type="button" class="close-up-button" onClick={toggle}>
          <Icon name={closeUp === 'yard' ? 'zoom' : 'cross'} />
          {desk.t(closeUp === 'yard' ? (offered === 'panel' ? 'view.panel' : 'view.floats') : 'view.yard')}
        </button>
      )}
      <Captions cues={view.sounds} />
    </section>
  );
}
