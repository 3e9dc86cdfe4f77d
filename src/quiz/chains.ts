/** The ways that current takes through a panel, screw after screw, and what can be wrong with what lies between. */
import type { ControlEventName, FloatName } from '../control/index.ts';
import { type Message, say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';
import type { TerminalId } from '../unit/terminals.ts';

/** One part of a chain failed in one way: the event that brings it about. */
export interface Failure {
  readonly id: string;
  readonly name: Message;
  readonly event: ControlEventName;
}

export interface Link {
  readonly name: Message;
  readonly failures: readonly Failure[];
}

export interface Way {
  readonly nodes: readonly TerminalId[];
  /** What lies between each node and the next. */
  readonly links: readonly Link[];
}

function link(id: string, ...failures: readonly ControlEventName[]): Link {
  return {
    name: say(`drill.link.${id}`),
    failures: failures.map((event) => ({ id: event, name: say(`drill.failure.${event}`), event })),
  };
}

function float(id: FloatName, ways: readonly ('wireOpens' | 'wireBridged')[] = ['wireOpens', 'wireBridged']): Link {
  const name = say(`float.${id}`);
  return {
    name,
    failures: ways.map((way) => ({
      id: `${id}.${way}`,
      name: say(`drill.failure.${way}`, { float: name }),
      event: `${id}.${way}`,
    })),
  };
}

const LEVER = link('pump-lever', 'pumpBreaker.trips');
const FUSE = link('fuse');
const SELECTOR = link('selector', 'selector.off');
const COIL = link('coil');

/** From the line through lever, fuse, floats, timer and selector to the relay's coil. */
function controlWay({ panel }: UnitSpec): Way {
  switch (panel.dosing.kind) {
    case 'demand':
      return {
        nodes: ['line', 'pumpBreaker.load', 'startStopFloat.feed', 'startStopFloat.back', 'coil', 'neutral'],
        links: [LEVER, FUSE, float('startStopFloat'), SELECTOR, COIL],
      };
    case 'night':
      return {
        nodes: [
          ...(['line', 'pumpBreaker.load', 'stopFloat.feed', 'stopFloat.back', 'overrideFloat.back'] as const),
          ...(['coil', 'neutral'] as const),
        ],
        links: [LEVER, FUSE, float('stopFloat'), float('overrideFloat'), SELECTOR, COIL],
      };
    case 'timed':
      return {
        nodes: [
          ...(['line', 'pumpBreaker.load', 'redundantOffFloat.feed', 'redundantOffFloat.back'] as const),
          ...(['stopFloat.back', 'selector.auto', 'coil', 'neutral'] as const),
        ],
        links: [
          // A stop float that opens ends the dose, so that the timer's contact opens with it: two gaps, no fair question.
          ...[LEVER, FUSE, float('redundantOffFloat'), float('stopFloat', ['wireBridged'])],
          ...[link('timer', 'timer.dies'), SELECTOR, COIL],
        ],
      };
  }
}

/** From the line through lever, relay, leads and motor. */
const PUMP_WAY: Way = {
  nodes: ['line', 'pumpBreaker.load', 'motor.1', 'splice.1', 'splice.2', 'neutral'],
  links: [
    LEVER,
    link('relay', 'relay.opens', 'relay.welds'),
    link('lead', 'motorLead.opens'),
    link('motor', 'winding.opens'),
    link('return'),
  ],
};

const HIGH_WATER_WAY: Way = {
  nodes: ['line', 'alarmBreaker.load', 'highWaterFloat.back', 'neutral'],
  links: [link('alarm-lever', 'alarmBreaker.trips'), float('highWaterFloat'), link('input')],
};

export function waysOf(spec: UnitSpec): readonly Way[] {
  return [controlWay(spec), PUMP_WAY, HIGH_WATER_WAY];
}
