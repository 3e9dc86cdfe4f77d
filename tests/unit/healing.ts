/** What a technician does to be sure of a unit once everything broken is mended, and what a sound unit then shows. */
import { SOUND } from '../../src/plant/index.ts';
import { floatHeights_m, floatsOf, kindOf, type Unit } from '../../src/unit/index.ts';
import { lampRules } from '../control/invariants.ts';
import { floatMakes_m } from './units.ts';

const HOUR = 3600;
const MINUTE = 60;
/** Time in which a sound pump brings any tank down, and hot parts cool. */
const SETTLE_s = 48 * HOUR;

/** Ordinary hand actions, none of which needs a part. */
function hands(unit: Unit): void {
  unit.send('test.released');
  for (const float of floatsOf(unit.spec.panel)) {
    unit.send(`${float}.released`);
    unit.follow();
  }
  for (const breaker of ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const) unit.send(`${breaker}.off`);
  unit.send('compressorCord.plugged');
  unit.cutAt(unit.t + MINUTE);
  for (const breaker of ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const) unit.send(`${breaker}.on`);
  if (unit.spec.panel.gfci) unit.send('gfci.reset');
  unit.send('selector.auto');
  unit.setClock(0);
}

/** Mends all that is broken, sets everything right by hand, waits for the water, and resets what the water latched. */
export function heal(unit: Unit, at_s: number): void {
  unit.cutAt(at_s);
  for (const { fault } of unit.faults) unit.mend(fault.id);
  hands(unit);
  unit.cutAt(unit.t + SETTLE_s);
  hands(unit);
  unit.cutAt(unit.t + 10 * MINUTE);
}

/** What is not as in a sound unit: every part but the floats that follow the water and the doses that follow the clock. */
export function unhealthy(unit: Unit): string[] {
  const { regions, outputs } = unit.control;
  const sound = unit.table.initial().to;
  const floats: readonly string[] = floatsOf(unit.spec.panel);
  const found: string[] = [];
  for (const [part, state] of Object.entries(regions)) {
    if (part === 'doseDemand') continue;
    const healthy = floats.includes(part) ? ['up', 'down'] : [sound.regions[part]];
    if (!healthy.includes(state)) found.push(`healed, and the ${part} is ${state}`);
  }
  for (const name of ['alarmLive', 'controlLive', 'compressorLive', 'outletLive', 'compressorRuns'] as const) {
    if (!outputs[name]) found.push(`healed, and not ${name}`);
  }
  for (const name of ['condition', 'alarm', 'lamp', 'buzzer', 'pumpStalls'] as const) {
    if (outputs[name]) found.push(`healed, and still ${name}`);
  }
  if (outputs.ultravioletLit !== kindOf(unit.spec.panel).ultraviolet)
    found.push('healed, and the ultraviolet lamp is out');
  if (lampRules(kindOf(unit.spec.panel)).some(({ lamp }) => outputs[lamp])) found.push('healed, and a lamp is lit');
  const { condition } = unit.driveAt(unit.t);
  for (const key of Object.keys(SOUND) as (keyof typeof SOUND)[]) {
    if (condition[key] !== SOUND[key]) found.push(`healed, and the works have ${key} ${condition[key]}`);
  }
  for (const float of floatsOf(unit.spec.panel)) {
    const { makes_m } = floatHeights_m(unit.spec.panel, float);
    if (floatMakes_m(unit, float) !== makes_m) found.push(`healed, and the ${float} hangs elsewhere`);
  }
  if (unit.airSwitchFalls_kPa() !== unit.spec.panel.airSwitch.falls_kPa)
    found.push('healed, and the air switch drifted');
  if (Math.abs(unit.clockAhead()) > 1e-6) found.push('healed, and the clock is wrong');
  return found;
}
