import { holdLongerText } from './longer-text-sweep.ts';

holdLongerText([
  { width: 390, height: 844, touch: true },
  { width: 820, height: 1180, touch: true },
  { width: 1440, height: 900 },
]);
