/** What the motor's circuit promises on each unit, and what asks it for work there. */
import type { ControlEventName } from '../../../src/control/index.ts';
import { type MotorEvent, motorMachine } from './motor.ts';
import type { Promised } from './vocabulary.ts';

type Unit = 'u1' | 'u2' | 'u3';
type Does = Readonly<Partial<Record<MotorEvent, readonly ControlEventName[]>>>;

/** By night the override asks, on demand the one float; where all is timed, a start by hand over water enough. */
const WORK: Readonly<Record<Unit, Does>> = {
  u1: {
    'work is asked for': ['stopFloat.rises', 'doseFloat.rises', 'overrideFloat.rises'],
    'work is done': ['overrideFloat.falls', 'doseFloat.falls', 'stopFloat.falls'],
  },
  u2: { 'work is asked for': ['startStopFloat.rises'], 'work is done': ['startStopFloat.falls'] },
  u3: { 'work is asked for': ['timer.start'], 'work is done': ['dose.ends'] },
};

const DOES: Does = {
  'selector to Hand': ['selector.hand'],
  'selector to Off': ['selector.off'],
  'selector to Auto': ['selector.auto'],
  'power fails': ['supply.fails'],
  'power sags': ['supply.sags'],
  'power returns': ['supply.returns'],
  'pump breaker trips': ['pumpBreaker.trips'],
  'pump breaker pushed off': ['pumpBreaker.off'],
  'pump breaker pushed on': ['pumpBreaker.on'],
  'pump circuit shorted': ['pumpBreaker.shorts'],
  'pump circuit cleared': ['pumpBreaker.shortCleared'],
  'relay opens': ['relay.opens'],
  'relay welds': ['relay.welds'],
  'relay renewed': ['relay.renewed'],
  'motor lead opens': ['motorLead.opens'],
  'motor lead shorts': ['motorLead.shorts'],
  'motor lead mended': ['motorLead.mended'],
  'winding opens': ['winding.opens'],
  'winding renewed': ['winding.renewed'],
  'rotor seizes': ['rotor.seizes'],
  'rotor freed': ['rotor.freed'],
  'protector fails': ['protector.fails'],
  'protector renewed': ['protector.renewed'],
  'the protector is hot': ['protector.hot'],
  'the protector has cooled': ['protector.cool'],
};

const FAULTS: Readonly<Record<string, readonly MotorEvent[]>> = {
  'pump breaker tripped once': ['pump breaker trips'],
  'pump breaker trips again': ['pump circuit shorted', 'pump circuit cleared'],
  'relay open': ['relay opens', 'relay renewed'],
  'relay welded': ['relay welds', 'relay renewed'],
  'motor lead open': ['motor lead opens', 'motor lead mended'],
  'motor lead shorted': ['motor lead shorts', 'motor lead mended'],
  'winding open': ['winding opens', 'winding renewed'],
  'rotor seized': ['rotor seizes', 'rotor freed'],
  'protector failed': ['protector fails', 'protector renewed'],
};

export const MOTOR_PROMISES: readonly Promised[] = (['u1', 'u2', 'u3'] as const).map((unit) => ({
  name: 'motor and protector',
  unit,
  machine: motorMachine(`motor of ${unit}`, unit === 'u3'),
  does: { ...DOES, ...WORK[unit] } as Promised['does'],
  before: unit === 'u3' ? ['redundantOffFloat.rises', 'stopFloat.rises', 'doseFloat.rises'] : [],
  sights: ['pump', 'stalledPump', 'pumpHandle'],
  delays: ['protectorHeat', 'protectorWarm', 'protectorCool', ...(unit === 'u3' ? (['dose'] as const) : [])],
  anytime: ['pump breaker pushed off', 'pump breaker pushed on'],
  faults: FAULTS,
}));
