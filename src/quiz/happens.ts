/** What happens next: a fault comes to a sound unit in the morning, and the unit is run to see what is noticed first. */
import { formOf } from '../diagnosis/hypotheses.ts';
import { faultsOf, type PlacedFault } from '../faults/index.ts';
import { STATE_SIZE, WATER } from '../plant/layout.ts';
import { quantity, say } from '../service/message.ts';
import { Unit } from '../unit/engine.ts';
import type { UnitSpec } from '../unit/spec.ts';
import { Draws, untilFair } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { nameOf } from './faultNames.ts';
import { kept } from './kept.ts';
import { ordinaryDays, usedDaily } from './ordinary.ts';

const OUTCOMES = ['air', 'water', 'spray', 'overflows', 'quiet'] as const;
type Outcome = (typeof OUTCOMES)[number];

const HOUR_s = 3600;
const ONSET_s = 32 * HOUR_s;
/** As long as one looks on; what takes longer is not noticed by anybody (convention). */
const WATCHED_s = 48 * HOUR_s;
/** An air alarm comes within minutes, one of water takes hours; nothing that lies between is asked for. */
const MINUTES_s = 900;
const LATER_s = HOUR_s;
/** Hours in which a night unit has no business to spray. */
const DAY_h = [6, 23] as const;
const LAMPS = ['lamp.on', 'airLamp.on', 'waterLamp.on'];
const QUARTER_s = 900;
/** What is noticed on the ground: a litre. */
const DROP_m3 = 1e-3;
/** Faults that are plain, whatever their degree. */
const ASKED =
  /^(joint-leak|line-off|diaphragm|intake-clogged|compressor|winding|pump-seized|stuck-down:(stop|startStop)|timer-dead|relay-open|terminal|breaker-retrips:(pump|compressor)|sewer-blocked|inlet-blocked|outlet-blocked)/;

interface Happened {
  readonly outcome: Outcome;
  readonly after_h: number;
}

/** What is noticed first, and how long it takes; undefined where it could be told either way. */
const happens = kept<Happened | undefined>((spec, fault) => lived(spec, fault));

/** The unit with a fault, or sound. */
export function lived(spec: UnitSpec, fault?: PlacedFault): Happened | undefined {
  const faults = fault ? [formOf(fault, ONSET_s, fault.severity)] : [];
  const unit = new Unit({ ...ordinaryDays(spec), faults });
  const over_s = runsOver(unit);
  const night = spec.panel.dosing.kind === 'night';
  for (const { what, t } of unit.log) {
    if (t < ONSET_s) continue;
    if (t > over_s) break;
    const after_h = (t - ONSET_s) / HOUR_s;
    const hour = (t / HOUR_s) % 24;
    if (LAMPS.includes(what)) {
      if (t - ONSET_s < MINUTES_s) return { outcome: 'air', after_h };
      return t - ONSET_s > LATER_s ? { outcome: 'water', after_h } : undefined;
    }
    if (night && what === 'pumpRuns.on' && hour > DAY_h[0] && hour < DAY_h[1]) return { outcome: 'spray', after_h };
  }
  if (over_s < Number.POSITIVE_INFINITY) return { outcome: 'overflows', after_h: (over_s - ONSET_s) / HOUR_s };
  return { outcome: 'quiet', after_h: WATCHED_s / HOUR_s };
}

/** Runs the unit to the end, and tells when sewage first came out of it, to a quarter of an hour. */
function runsOver(unit: Unit): number {
  const y = new Float64Array(STATE_SIZE);
  const out_m3 = () => (y[WATER.relieved] ?? 0) + (y[WATER.indoors] ?? 0) + (y[WATER.leaked] ?? 0);
  let over_s = Number.POSITIVE_INFINITY;
  for (let t = ONSET_s; t <= ONSET_s + WATCHED_s; t += QUARTER_s) {
    unit.advance(t);
    unit.stateAt(t, y);
    if (out_m3() > DROP_m3) over_s = Math.min(over_s, t);
  }
  return over_s;
}

export const happensDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'happens');
  const asked = faultsOf(spec).filter(({ key }) => ASKED.test(key));
  const { fault, right, after_h } = untilFair(() => {
    const drawn = draws.one(asked);
    const happened = happens(spec, drawn);
    return happened && { fault: drawn, right: happened.outcome, after_h: happened.after_h };
  });
  const night = spec.panel.dosing.kind === 'night';
  const offered = OUTCOMES.filter((one) => night || one !== 'spray');
  const time =
    after_h < 1 ? quantity('duration_min', Math.max(1, Math.round(60 * after_h))) : quantity('duration_h', after_h, 1);
  const values = { fault: nameOf(fault), time };
  const shown = say(`drill.happens.shown.${right}`, values);
  const next = say(`drill.happens.next.${right}`);
  const option = (id: Outcome): Option => ({
    id,
    label: say(`drill.happens.${id}`),
    why:
      id === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.happens.needs.${id}`), b: shown, c: next }),
  });
  return {
    skill: 'happens',
    seed,
    prompt: say('drill.happens.ask'),
    figure: {
      kind: 'sheet',
      rows: [
        say('drill.happens.fault', values),
        say('drill.happens.load', { v: quantity('volume_m3', usedDaily(spec)) }),
        say(`drill.works.dosing.${spec.panel.dosing.kind}`),
        say(`drill.works.alarm.${spec.panel.alarm}`),
      ],
    },
    ask: { kind: 'choice', right, options: offered.map(option) },
  };
};
