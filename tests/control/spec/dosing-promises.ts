/** What dosing promises on each unit: by the night clock, by one float, or by a timer all day. */
import type { ControlEventName, DelayId } from '../../../src/control/index.ts';
import type { PanelName } from '../panels.ts';
import { type ClockKind, type DosingKind, dosingMachine } from './dosing.ts';
import type { DosingEvent } from './dosing-words.ts';
import { floatDoes, floatFaults, type Ladder } from './floats.ts';
import type { Promised } from './vocabulary.ts';

type Does = Partial<Record<DosingEvent, readonly ControlEventName[]>>;

const HANDS: Does = {
  'selector to Hand': ['selector.hand'],
  'selector to Off': ['selector.off'],
  'selector to Auto': ['selector.auto'],
  'pump breaker pushed off': ['pumpBreaker.off'],
  'pump breaker pushed on': ['pumpBreaker.on'],
  'power fails': ['supply.fails'],
  'power returns': ['supply.returns'],
};

const TROUBLE: Does = {
  'pump breaker trips': ['pumpBreaker.trips'],
  'pump circuit shorted': ['pumpBreaker.shorts'],
  'pump circuit cleared': ['pumpBreaker.shortCleared'],
  'power sags': ['supply.sags'],
};

const TIMER: Does = {
  'the dose minutes end': ['dose.ends'],
  'timer dies': ['timer.dies'],
  'timer renewed': ['timer.renewed'],
};

const CLOCK: Does = {
  'a start hour comes': ['timer.start'],
  'the reserve ends': ['timer.reserveEnds'],
  'timer loses its time': ['timer.loses'],
  'timer set': ['timer.set'],
};

const REST: Does = {
  'a start by hand': ['timer.start'],
  'half the rest passes': ['rest.half'],
  'the rest ends': ['rest.ends'],
};

interface Dosing {
  readonly unit: PanelName;
  readonly kind: DosingKind;
  readonly clock: ClockKind;
  /** Floats that dosing reads, and above them the one whose leads may be taken for one of theirs. */
  readonly ladder: Ladder;
  readonly does: Does;
  readonly delays: readonly DelayId[];
  readonly faults: Readonly<Record<string, readonly DosingEvent[]>>;
}

const POWER_FAULTS: Dosing['faults'] = {
  'pump breaker tripped once': ['pump breaker trips'],
  'pump breaker trips again': ['pump circuit shorted', 'pump circuit cleared'],
  'supply low': ['power sags'],
};
const CLOCK_FAULTS: Dosing['faults'] = {
  'clock lost': ['timer loses its time'],
  'timer dead': ['timer dies', 'timer renewed'],
};

const NIGHT: Omit<Dosing, 'unit' | 'clock'> = {
  kind: 'night',
  ladder: ['stop', 'dose', 'override', 'alarm'],
  does: { ...TIMER, ...CLOCK },
  delays: ['dose', 'timerReserve'],
  faults: CLOCK_FAULTS,
};

const UNITS: readonly Dosing[] = [
  { unit: 'u1', clock: 'digital', ...NIGHT },
  { unit: 'mechanical', clock: 'mechanical', ...NIGHT },
  { unit: 'u2', kind: 'demand', clock: 'digital', ladder: ['start/stop', 'alarm'], does: {}, delays: [], faults: {} },
  {
    unit: 'u3',
    kind: 'timed',
    clock: 'digital',
    ladder: ['redundant-off', 'stop', 'dose', 'override', 'alarm'],
    does: { ...TIMER, ...REST },
    delays: ['dose', 'restFirst', 'restSecond'],
    faults: { 'timer dead': ['timer dies', 'timer renewed'] },
  },
];

function promised({ unit, kind, clock, ladder, does, delays, faults }: Dosing): Promised {
  const ailing = ladder.filter((float) => float !== 'alarm');
  return {
    name: `dosing (${kind})`,
    unit,
    machine: dosingMachine(`dosing of ${unit}`, kind, ladder, ailing, clock),
    does: { ...floatDoes(ladder, ailing), ...HANDS, ...TROUBLE, ...does } as Promised['does'],
    sights: kind === 'night' ? ['pump', 'pumpHandle', 'clock'] : ['pump', 'pumpHandle'],
    delays,
    anytime: [
      'pump breaker pushed off',
      'pump breaker pushed on',
      ...Object.keys(does).filter((e) => ['a start hour comes', 'a start by hand', 'timer set'].includes(e)),
    ],
    faults: { ...POWER_FAULTS, ...faults, ...floatFaults(ladder, ailing) },
  };
}

export const DOSING_PROMISES: readonly Promised[] = UNITS.map(promised);
