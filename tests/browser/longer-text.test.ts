import { holdLongerText } from './longer-text-sweep.ts';

holdLongerText([{ width: 360, height: 740, touch: true }]);
