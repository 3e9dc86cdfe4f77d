/**
 * What must hold of a panel in every state and over every event. Written from the trade's rules and the names of the
 * parts, not from the wiring: the two must agree because both are right.
 */
import type {
  BreakerName,
  Command,
  ControlEventName,
  ControlState,
  FloatName,
  PanelKind,
} from '../../src/control/index.ts';

export type Parts = ControlState['regions'];
export type ConditionName = 'lowAir' | 'highWater' | 'lampOut';

/** A lamp of a panel, its latch where it has one, and the conditions that light it. */
export interface LampRule {
  readonly lamp: 'lamp' | 'airLamp' | 'waterLamp';
  readonly latch: 'latch' | 'airLatch' | 'waterLatch' | undefined;
  readonly conditions: readonly ConditionName[];
}

export function lampRules({ lamps, alarm, ultraviolet }: PanelKind): readonly LampRule[] {
  const latches = alarm === 'latching';
  const air: ConditionName[] = ultraviolet ? ['lowAir', 'lampOut'] : ['lowAir'];
  return lamps === 'one'
    ? [{ lamp: 'lamp', latch: latches ? 'latch' : undefined, conditions: [...air, 'highWater'] }]
    : [
        { lamp: 'airLamp', latch: latches ? 'airLatch' : undefined, conditions: air },
        { lamp: 'waterLamp', latch: latches ? 'waterLatch' : undefined, conditions: ['highWater'] },
      ];
}

/** Voltage behind a breaker. */
export function live(parts: Parts, breaker: BreakerName): boolean {
  return parts.supply !== 'off' && parts[breaker] === 'on';
}

/** The float whose leads are on a float's terminals. */
function carrier(kind: PanelKind, parts: Parts, float: FloatName): FloatName {
  const i = kind.floats.indexOf(float);
  const [below, above] = [kind.floats[i - 1], kind.floats[i + 1]];
  if (above && parts.leads === `${float}Swapped`) return above;
  if (below && parts.leads === `${below}Swapped`) return below;
  return float;
}

/** A float that does as the water does, on its own terminals over a whole wire. */
export function isSound(kind: PanelKind, parts: Parts, float: FloatName): boolean {
  const caught = parts[float] === 'heldUp' || parts[float] === 'heldDown';
  return !caught && parts[`${float}Wire`] === 'sound' && carrier(kind, parts, float) === float;
}

/** Whether the panel sees a float's contact closed. */
export function contactMade(kind: PanelKind, parts: Parts, float: FloatName): boolean {
  if (!kind.floats.includes(float)) return false;
  const from = carrier(kind, parts, float);
  const wire = parts[`${from}Wire`];
  if (wire !== 'sound') return wire === 'bridged';
  return parts[from] !== 'down' && parts[from] !== 'heldDown';
}

/** Whether the cause of a condition is there, with the alarm circuit alive to notice it. */
export function causeStands(kind: PanelKind, parts: Parts, condition: ConditionName): boolean {
  if (!live(parts, 'alarmBreaker')) return false;
  switch (condition) {
    case 'lowAir':
      return parts.airContact === 'closed' || parts.airContact === 'stuckClosed';
    case 'highWater':
      return parts.alarmTerminals === 'bridged' || contactMade(kind, parts, 'highWaterFloat');
    case 'lampOut':
      return parts.ultraviolet === 'dead' || !live(parts, 'compressorBreaker');
  }
}

/** An alarm as the lamp and the dialler mean it: a condition or a latch on a live circuit. A test is none. */
export function alarmed(kind: PanelKind, parts: Parts): boolean {
  return live(parts, 'alarmBreaker') && lampRules(kind).some((rule) => calls(parts, rule));
}

function calls(parts: Parts, { latch, conditions }: LampRule): boolean {
  return conditions.some((c) => parts[c] === 'made') || (latch !== undefined && parts[latch] === 'sealed');
}

/** Everything a state breaks, in the trade's words; none when all is well. */
export function stateBreaches(kind: PanelKind, { regions: parts, outputs: out }: ControlState): string[] {
  const found: string[] = [];
  const must = (holds: boolean, says: string) => {
    if (!holds) found.push(says);
  };
  const rules = lampRules(kind);
  const alarmLive = live(parts, 'alarmBreaker');
  const tested = parts.test === 'held';
  const lit = (rule: LampRule) => alarmLive && parts[`${rule.lamp}Bulb`] === 'sound' && (tested || calls(parts, rule));
  for (const rule of rules) {
    must(
      out[rule.lamp] === lit(rule),
      `the ${rule.lamp} is lit exactly when live, sound, and tested, called or latched`,
    );
  }
  must(out.lamp === rules.some(lit), 'a lamp shows exactly when one of the lamps is lit');
  must(
    out.buzzer ===
      (alarmLive && parts.horn === 'sound' && (tested || (alarmed(kind, parts) && parts.silence === 'off'))),
    'the buzzer sounds exactly when live, sound, and tested or alarmed and not silenced',
  );
  for (const rule of rules) {
    for (const c of rule.conditions) must(parts[c] !== 'made' || causeStands(kind, parts, c), `${c} has a cause`);
    must(!rule.latch || parts[rule.latch] !== 'sealed' || alarmLive, 'a latch is held by its own circuit');
  }

  const turns = out.pumpRuns || out.pumpStalls;
  const automatic = parts.relay === 'sound' && parts.selector !== 'hand';
  must(!turns || live(parts, 'pumpBreaker'), 'the pump takes current only with supply and its breaker on');
  must(!(out.pumpRuns && out.pumpStalls), 'a pump turns or stalls, not both');
  must(!turns || parts.winding === 'sound', 'a pump with an open winding takes no current');
  must(!turns || parts.motorLead === 'sound', 'a pump with a broken lead takes no current');
  must(!turns || !['open', 'failed'].includes(parts.protector ?? ''), 'an open protector stops the motor');
  must(!turns || parts.relay !== 'open', 'an open relay stops the motor');
  must(!turns || parts.relay === 'welded' || parts.selector !== 'off', 'Off stops the pump but for a welded relay');
  for (const stop of ['stopFloat', 'startStopFloat'] as const) {
    if (!kind.floats.includes(stop) || !isSound(kind, parts, stop) || parts[stop] !== 'down') continue;
    must(!automatic || !turns, `the pump does not run below a sound ${stop}, but in Hand`);
  }
  if (kind.floats.includes('redundantOffFloat') && parts.relay === 'sound') {
    must(!turns || contactMade(kind, parts, 'redundantOffFloat'), 'the redundant-off stops the pump, in Hand too');
  }
  if (kind.dosing === 'night') must(!overrideCalls(kind, parts) || turns, 'the override beats the timer');

  const outlet = live(parts, 'compressorBreaker') && parts.gfci !== 'tripped';
  must(!out.compressorRuns || outlet, 'the compressor never runs on a dead outlet');
  must(!out.compressorRuns || parts.compressorCord === 'plugged', 'an unplugged or chafed cord stops the compressor');
  must(!out.compressorRuns || parts.compressor === 'sound', 'a stopped compressor does not run');
  must(!out.compressorRuns || parts.compressorCutout !== 'open', 'a cut-out compressor does not run');
  return found;
}

/** Everything the override needs is there, so that the pump must take current. */
function overrideCalls(kind: PanelKind, parts: Parts): boolean {
  return (
    live(parts, 'pumpBreaker') &&
    parts.selector === 'auto' &&
    contactMade(kind, parts, 'stopFloat') &&
    contactMade(kind, parts, 'overrideFloat') &&
    parts.relay === 'sound' &&
    !['open', 'failed'].includes(parts.protector ?? '') &&
    parts.motorLead === 'sound' &&
    parts.winding === 'sound'
  );
}

/** One event of a panel: from where to where, and what it asked for. */
export interface Move {
  readonly from: ControlState;
  readonly event: ControlEventName;
  readonly to: ControlState;
  readonly commands: readonly Command[];
}

/** Everything an event breaks, in the trade's words; none when all is well. */
export function moveBreaches(kind: PanelKind, { from, event, to, commands }: Move): string[] {
  const [was, is] = [from.regions, to.regions];
  const found: string[] = [];
  const must = (holds: boolean, says: string) => {
    if (!holds) found.push(says);
  };
  const changed = Object.keys(is).filter((part) => was[part] !== is[part]);
  const rules = lampRules(kind);
  const rose = rules.flatMap((r) => r.conditions).filter((c) => was[c] !== 'made' && is[c] === 'made');
  const dials = commands.filter((c) => c.kind === 'dial').length;

  if (event === 'silence.pressed') {
    must(
      changed.every((part) => part === 'silence'),
      'silence touches nothing but itself',
    );
    const other = Object.keys(to.outputs) as (keyof typeof to.outputs)[];
    must(
      other.every((o) => o === 'buzzer' || from.outputs[o] === to.outputs[o]),
      'silence stops only the buzzer',
    );
    must(!to.outputs.buzzer || is.test === 'held', 'silence stops the buzzer');
  }
  if (is.silence === 'on' && was.silence === 'off') must(event === 'silence.pressed', 'only a press silences');
  if (was.silence === 'on' && is.silence === 'off') {
    must(rose.length > 0 || !live(is, 'alarmBreaker'), 'only a new rise or a dead circuit ends a silence');
  }
  if (rose.length > 0) must(is.silence === 'off', 'a new rise of a condition sounds again');
  if (rose.length > 0) must(event.endsWith('.due'), 'a condition counts only after its delay');

  if (event === 'test.pressed' || event === 'test.released') {
    must(
      changed.every((part) => part === 'test'),
      'the test changes nothing but what it holds: no latch, no dialler',
    );
    must(commands.length === 0, 'the test starts no delay and dials nobody');
  }
  for (const rule of rules) {
    if (!rule.latch) continue;
    if (was[rule.latch] !== 'sealed' && is[rule.latch] === 'sealed') {
      const caused = rule.conditions.some((c) => is[c] === 'made') || event === 'latch.surge';
      must(caused && live(is, 'alarmBreaker'), 'a latch is sealed by its condition or a surge, on a live circuit');
    }
    if (was[rule.latch] === 'sealed' && is[rule.latch] === 'open') {
      must(!live(is, 'alarmBreaker'), 'only a loss of the circuit opens a latch');
    }
  }

  must(dials <= 1, 'one call at a time');
  if (dials > 0) {
    must(event === 'dialler.due' || event === 'dialler.again', 'only the dialler dials');
    must(was.phoneLine === 'good' && alarmed(kind, was), 'it dials on a good line over an alarm');
  }
  for (const breaker of ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const) {
    if (was[breaker] === 'tripped') must(is[breaker] !== 'on', 'a tripped breaker must be pushed off first');
    if (was[breaker] !== 'on' && is[breaker] === 'on') must(event === `${breaker}.on`, 'only a hand puts a breaker on');
    if (event !== `${breaker}.off`) continue;
    const others = (['alarmBreaker', 'compressorBreaker', 'pumpBreaker'] as const).filter((b) => b !== breaker);
    must(
      others.every((b) => was[b] === is[b]),
      'opening one circuit leaves the others as they were',
    );
  }
  return found;
}
