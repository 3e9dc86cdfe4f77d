import { holdScreens } from './screens-sweep.ts';

holdScreens({
  windows: [
    { width: 390, height: 844 },
    { width: 820, height: 1180 },
    { width: 1440, height: 900 },
  ],
  closely: [390, 1440],
});
