import { openSound } from '../sound/index.ts';
import { connect } from './engine.ts';
import { mountDesk } from './mount.tsx';
import { openPicture } from './picture.ts';
import { whenQuiet } from './quiet.ts';
import { openStore } from './store.ts';

const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
const root = document.getElementById('desk');
/** A page that was packed for a course platform says so in its head. */
const launched = document.querySelector<HTMLMetaElement>('meta[name="underlawn-course"]')?.content;
const course = launched === undefined ? undefined : (await import('./platform/launch.ts')).courseOf(launched);
if (root !== null) {
  const parts = {
    engine: connect(worker),
    openStore,
    openPicture,
    openSounds: openSound,
    wallClock: () => Date.now(),
  };
  const desk = await mountDesk(root, { ...parts, ...(course && { alone: course.mode }) }, course?.begin);
  // What a platform serves is the platform's to keep.
  if (import.meta.env.PROD && launched === undefined) {
    await whenQuiet(() => desk.session.busy.value !== null);
    (await import('./offline/offline.ts')).keepOffline(desk);
  }
}
