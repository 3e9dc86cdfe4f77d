import { holdScreens } from './screens-sweep.ts';

/** The narrowest of each kind; the deep run looks at all. */
holdScreens({
  windows: [
    { width: 320, height: 640 },
    { width: 360, height: 740 },
  ],
  closely: [360],
});
