import { openSound } from '../sound/index.ts';
import { connect } from './engine.ts';
import { mountDesk } from './mount.tsx';
import { openPicture } from './picture.ts';
import { openStore } from './store.ts';

const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
const root = document.getElementById('desk');
if (root !== null) {
  await mountDesk(root, {
    engine: connect(worker),
    openStore,
    openPicture,
    openSounds: openSound,
    wallClock: () => Date.now(),
  });
}
