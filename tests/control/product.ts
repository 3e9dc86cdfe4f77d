/**
 * The whole product of a panel's regions, walked from the start by events: every state, every transition, and every
 * pair of states of two regions, but for the pairs that the wiring forbids. Those are listed here with the reason; the
 * list and the walk must agree both ways.
 */
import { describe, expect, it } from 'vitest';
import type { Panel } from '../../src/control/index.ts';
import { type Explored, explore } from './explore.ts';
import { type PanelName, tableOf } from './panels.ts';
import { written } from './walk.ts';

interface Forbidden {
  readonly because: string;
  readonly one: readonly string[];
  readonly other: readonly string[];
}

const dead = (circuit: string) => ['supply.off', `${circuit}.off`, `${circuit}.tripped`, `${circuit}Wire.shorted`];
const CONDITIONS = ['lowAir', 'highWater', 'lampOut'];
const LATCHES = ['latch', 'airLatch', 'waterLatch'];
const states = (regions: readonly string[], ...names: string[]) =>
  regions.flatMap((r) => names.map((n) => `${r}.${n}`));
const HEATS = ['protector.heating', 'protector.warming'];

const FORBIDDEN: readonly Forbidden[] = [
  {
    because: 'nothing of the alarm circuit lasts without its power',
    one: dead('alarmBreaker'),
    other: [
      ...states(CONDITIONS, 'timing', 'made'),
      ...states(LATCHES, 'sealed'),
      'silence.on',
      ...states(['dialler'], 'timing', 'waiting'),
    ],
  },
  {
    because: 'a timer that is not fed, or whose clock does not keep time, asks for no dose',
    one: [...dead('pumpBreaker'), ...states(['timerClock'], 'reserve', 'lost', 'dead')],
    other: states(['doseDemand'], 'on', 'firstHalf', 'secondHalf', 'waiting'),
  },
  { because: 'an unfed motor does not heat', one: [...dead('pumpBreaker'), 'timerClock.reserve'], other: HEATS },
  { because: 'an unfed compressor does not heat', one: dead('compressorBreaker'), other: ['compressorCutout.heating'] },
  {
    because: 'low air counts only while the switch is closed',
    one: states(['airContact'], 'open', 'stuckOpen'),
    other: states(['lowAir'], 'timing', 'made'),
  },
  { because: 'a condition dials', one: states(CONDITIONS, 'made'), other: ['dialler.idle'] },
  { because: 'a sealed latch dials', one: states(LATCHES, 'sealed'), other: ['dialler.idle'] },
  {
    because: 'a motor heats only on a whole circuit',
    one: ['relay.open', 'motorLead.open', 'motorLead.shorted', 'winding.open'],
    other: HEATS,
  },
  { because: 'a stalled rotor heats, a running one at most warms', one: ['rotor.free'], other: ['protector.heating'] },
  {
    because: 'a motor labours only when it turns, on a low supply',
    one: ['rotor.seized', 'supply.on'],
    other: ['protector.warming'],
  },
  {
    because: 'a compressor heats only while it runs in a hot housing',
    one: [
      'compressor.stopped',
      'housing.cool',
      'gfci.tripped',
      ...states(['compressorCord'], 'out', 'chafed', 'chafedOut'),
    ],
    other: ['compressorCutout.heating'],
  },
];

/** On a latching panel a condition seals its lamp's latch, and nothing is silenced or dialled without one. */
const LATCHING: readonly Forbidden[] = [
  {
    because: 'low air seals its latch',
    one: states(['lowAir', 'lampOut'], 'made'),
    other: ['latch.open', 'airLatch.open'],
  },
  { because: 'high water seals its latch', one: ['highWater.made'], other: ['latch.open', 'waterLatch.open'] },
  {
    because: 'without an alarm nothing is dialled',
    one: ['latch.open'],
    other: states(['dialler'], 'timing', 'waiting'),
  },
  { because: 'without an alarm nothing is silenced', one: ['silence.on'], other: ['latch.open', 'dialler.idle'] },
];

/** An unfed clock of a night timer lives on its reserve. */
const NIGHT: readonly Forbidden[] = [
  { because: 'an unfed clock lives on its reserve', one: dead('pumpBreaker'), other: ['timerClock.keeping'] },
];

/** A mechanical clock that is fed goes again. */
const MECHANICAL: readonly Forbidden[] = [
  {
    because: 'a mechanical clock stands still only unfed',
    one: ['timerClock.lost'],
    other: ['doseDemand.on', ...HEATS],
  },
];

function forbidden(panel: Panel): string[] {
  const names = Object.entries(panel.parts).flatMap(([r, part]) => Object.keys(part.states).map((s) => `${r}.${s}`));
  const rules = [
    ...FORBIDDEN,
    ...(panel.kind.alarm === 'latching' ? LATCHING : []),
    ...(panel.kind.dosing === 'night' ? NIGHT : []),
    ...(panel.kind.clock === 'mechanical' ? MECHANICAL : []),
  ];
  const pairs = new Set<string>();
  for (const { one, other } of rules) {
    for (const a of one) {
      for (const b of other) {
        const [i, j] = [names.indexOf(a), names.indexOf(b)];
        if (i >= 0 && j >= 0) pairs.add(i < j ? `${a} & ${b}` : `${b} & ${a}`);
      }
    }
  }
  return [...pairs].sort();
}

export function productTests(name: PanelName): void {
  describe(`the whole product of the panel of ${name}`, () => {
    const { panel } = tableOf(name);
    let found: Explored | undefined;
    const walked = (): Explored => {
      found ??= explore(panel);
      return found;
    };
    const parts = Object.entries(panel.parts);

    it('reaches every state of every region', () => {
      const all = parts.flatMap(([r, part]) => Object.keys(part.states).map((s) => `${r}.${s}`));
      expect(all.filter((s) => !walked().reached.has(s))).toEqual([]);
    });

    it('takes every transition that is written', () => {
      const { moves } = walked();
      const all = parts.flatMap(([r, part]) =>
        written(part.states).map((t) => `${r}: ${t.from} ${t.event ?? 'any'} ${t.target}`),
      );
      expect(all.length).toBeGreaterThan(150);
      expect(all.filter((move) => !moves.has(move))).toEqual([]);
    });

    it('reaches every pair of states of two regions, but for those that the wiring forbids', () => {
      const { unmet, pairs, states, edges } = walked();
      console.log(`${name}: ${pairs} pairs reached, ${unmet.length} forbidden; ${states} states, ${edges} edges`);
      expect([...unmet].sort()).toEqual(forbidden(panel));
    });
  });
}
