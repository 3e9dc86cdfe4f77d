/**
 * A technician with a list: the same checks in the same order on every visit, the water side after the air side, until the
 * readings leave one cause. Reads what it sees as well as the expert does; never asks which check is worth most.
 */
import { ACTION_BY_ID } from '../../service/index.ts';
import type { CallSession } from '../session.ts';
import { Expert } from './expert.ts';

/** A sensible order (common practice, no source). Those a unit lacks are passed over. */
const LIST = [
  'read-panel',
  'press-test',
  'supply-volts',
  'read-timer',
  'look-at-outlet',
  'listen-compressor',
  'feel-compressor',
  'look-at-intake-filter',
  'tee-pressure',
  'follow-air-line',
  'soap-air-line',
  'dead-head-compressor',
  'look-into-aeration',
  'measure-oxygen',
  'look-into-clarifier',
  'look-at-disinfectant',
  'watch-feed',
  'look-at-ultraviolet',
  'look-into-pump-tank',
  'measure-level',
  'lift-float:stopFloat',
  'lift-float:startStopFloat',
  'lift-float:doseFloat',
  'lift-float:overrideFloat',
  'lift-float:highWaterFloat',
  'amps-in-hand',
  'draw-down',
  'test-relay',
  'open-disc-filter',
  'head-pressure',
  'zone-pressure',
  'look-at-field',
  'dip-strip',
  'look-into-trash-tank',
  'look-into-clean-out',
  'look-at-traps',
  'dye-toilet',
  'test-air-switch',
  'measure-tethers',
  'look-into-panel',
  'look-at-splices',
  'winding-ohms',
  'insulation-test:pumpBreaker',
  'insulation-test:compressorBreaker',
  'insulation-test:alarmBreaker',
  'check-phone-line',
];

export function playChecklist(session: CallSession): void {
  let next = 0;
  new Expert(session, () => {
    while (next < LIST.length) {
      const id = LIST[next++];
      if (id !== undefined && ACTION_BY_ID.has(id) && session.definition(id)) return [id];
    }
    return undefined;
  }).play();
}
