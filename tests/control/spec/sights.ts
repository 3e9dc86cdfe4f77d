/** How each sight of a specification is read off a panel. */
import type { ControlState } from '../../../src/control/index.ts';
import type { Sight } from './vocabulary.ts';

/** Whether a sight is seen in a state of the control; whether the panel's clock goes, its bearer knows. */
export function sees({ outputs, regions }: ControlState, clockGoes: boolean, sight: Sight): boolean {
  switch (sight) {
    case 'pump':
      return outputs.pumpRuns;
    case 'stalledPump':
      return outputs.pumpStalls;
    case 'compressor':
      return outputs.compressorRuns;
    case 'ultraviolet':
      return outputs.ultravioletLit;
    case 'clock':
      return clockGoes;
    case 'alarmHandle':
      return regions.alarmBreaker === 'on';
    case 'compressorHandle':
      return regions.compressorBreaker === 'on';
    case 'pumpHandle':
      return regions.pumpBreaker === 'on';
    default:
      return outputs[sight];
  }
}
