/** The rules of the panel, one sentence a test. The sentences are those of docs/model.md. */
import { describe, expect, it } from 'vitest';
import { FLOATS, type FloatName } from '../../src/control/events.ts';
import {
  type Command,
  type ControlEventName,
  type ControlState,
  eventNumber,
  type OutputId,
} from '../../src/control/index.ts';
import { PANELS, tableOf } from './panels.ts';

const table = tableOf('u1');

interface Panel {
  readonly state: ControlState;
  readonly commands: readonly Command[];
  on(...events: ControlEventName[]): Panel;
}

function panel(state = table.initial().to, commands: readonly Command[] = []): Panel {
  return {
    state,
    commands,
    on(...events) {
      let at = state;
      let said: readonly Command[] = [];
      for (const event of events) {
        const edge = table.step(at, eventNumber(event));
        at = edge.to;
        said = edge.commands;
      }
      return panel(at, said);
    },
  };
}

const MADE = {
  redundantOffFloat: 'redundantOffMade',
  stopFloat: 'stopMade',
  startStopFloat: 'startStopMade',
  doseFloat: 'doseMade',
  overrideFloat: 'overrideMade',
  highWaterFloat: 'highWaterMade',
} as const satisfies Record<FloatName, OutputId>;

const sound = panel();
const out = (p: Panel) => p.state.outputs;
const arms = (p: Panel, delay: string) => p.commands.some((c) => c.kind === 'arm' && c.delay === delay);
const lowAir = sound.on('air.falls', 'lowAir.due');
const highWater = sound.on('highWaterFloat.rises', 'highWater.due');

describe('alarm, latch and silence', () => {
  it('low air closes the alarm after its delay, not before', () => {
    const falling = sound.on('air.falls');
    expect(arms(falling, 'lowAir')).toBe(true);
    expect(out(falling).lamp).toBe(false);
    expect(out(lowAir)).toMatchObject({ lamp: true, buzzer: true });
  });

  it('air that comes back within the delay alarms nobody', () => {
    expect(out(sound.on('air.falls', 'air.rises', 'lowAir.due')).lamp).toBe(false);
  });

  it('high water alarms after its delay', () => expect(out(highWater)).toMatchObject({ lamp: true, buzzer: true }));

  it('the latch keeps the lamp lit when the condition is gone', () => {
    expect(out(lowAir.on('air.rises'))).toMatchObject({ condition: false, lamp: true });
  });

  it.each(['alarmBreaker.off', 'supply.fails'] as const)(
    'loss of the alarm circuit by %s clears latch, silence and delays',
    (event) => {
      const dead = lowAir.on('air.rises', 'silence.pressed', event);
      expect(dead.state.regions).toMatchObject({ latch: 'open', silence: 'off', lowAir: 'idle' });
      expect(out(dead)).toMatchObject({ lamp: false, buzzer: false });
    },
  );

  it('after an outage the lamp is dark though the fault stands, and is lit again after the delay', () => {
    const back = lowAir.on('supply.fails', 'supply.returns');
    expect(out(back).lamp).toBe(false);
    expect(back.state.regions.lowAir).toBe('timing');
    expect(out(back.on('lowAir.due')).lamp).toBe(true);
  });

  it('silence stops the buzzer and nothing else', () => {
    expect(out(lowAir.on('silence.pressed'))).toMatchObject({ lamp: true, buzzer: false });
  });

  it('a new rise sounds again, also while the other condition stands', () => {
    const quiet = lowAir.on('silence.pressed');
    expect(out(quiet.on('highWaterFloat.rises', 'highWater.due')).buzzer).toBe(true);
    expect(out(quiet.on('air.rises', 'air.falls', 'lowAir.due')).buzzer).toBe(true);
  });

  it('silence with nothing to silence does nothing', () => {
    expect(out(sound.on('silence.pressed', 'air.falls', 'lowAir.due')).buzzer).toBe(true);
  });

  it('test lights and sounds, always, and neither latches nor dials', () => {
    const held = sound.on('test.pressed');
    expect(out(held)).toMatchObject({ lamp: true, buzzer: true });
    expect(held.state.regions).toMatchObject({ latch: 'open', dialler: 'idle' });
    expect(out(held.on('test.released'))).toMatchObject({ lamp: false, buzzer: false });
    expect(out(lowAir.on('silence.pressed', 'test.pressed')).buzzer).toBe(true);
  });

  it('a dead bulb stays dark over a true alarm, a dead horn mute', () => {
    expect(out(lowAir.on('lamp.dies'))).toMatchObject({ lamp: false, buzzer: true, alarm: true });
    expect(out(lowAir.on('horn.dies'))).toMatchObject({ lamp: true, buzzer: false });
  });

  it('a surge seals the latch with nothing wrong; a reset clears it for good', () => {
    const surge = sound.on('latch.surge');
    expect(out(surge).lamp).toBe(true);
    expect(out(surge.on('alarmBreaker.off', 'alarmBreaker.on')).lamp).toBe(false);
  });
});

describe('dialler', () => {
  it('waits for an unbroken alarm, then calls once, and again after its day', () => {
    expect(arms(lowAir, 'dial')).toBe(true);
    const called = lowAir.on('dialler.due');
    expect(called.commands.some((c) => c.kind === 'dial')).toBe(true);
    expect(called.on('dialler.again').commands.some((c) => c.kind === 'dial')).toBe(true);
  });

  it('does not call when the alarm was broken, nor with a dead line, nor without alarm power', () => {
    expect(lowAir.on('alarmBreaker.off', 'dialler.due').commands).toEqual([]);
    expect(lowAir.on('phoneLine.dies', 'dialler.due').commands.some((c) => c.kind === 'dial')).toBe(false);
  });

  it('calls over a dead bulb', () => {
    expect(
      sound.on('lamp.dies', 'air.falls', 'lowAir.due', 'dialler.due').commands.some((c) => c.kind === 'dial'),
    ).toBe(true);
  });
});

describe('breakers', () => {
  it('opening one circuit leaves the others alive', () => {
    expect(out(sound.on('pumpBreaker.off'))).toMatchObject({
      alarmLive: true,
      compressorLive: true,
      controlLive: false,
    });
    expect(out(sound.on('alarmBreaker.off'))).toMatchObject({
      alarmLive: false,
      compressorRuns: true,
      controlLive: true,
    });
  });

  it('from tripped, on does nothing until the lever was pushed fully off', () => {
    const tripped = sound.on('compressorBreaker.trips');
    expect(tripped.on('compressorBreaker.on').state.regions.compressorBreaker).toBe('tripped');
    expect(tripped.on('compressorBreaker.off', 'compressorBreaker.on').state.regions.compressorBreaker).toBe('on');
  });

  it('a real short trips again at once', () => {
    const shorted = sound.on('pumpBreaker.shorts');
    expect(shorted.state.regions.pumpBreaker).toBe('tripped');
    expect(shorted.on('pumpBreaker.off', 'pumpBreaker.on').state.regions.pumpBreaker).toBe('tripped');
    const mended = shorted.on('pumpBreaker.shortCleared', 'pumpBreaker.off', 'pumpBreaker.on');
    expect(mended.state.regions.pumpBreaker).toBe('on');
  });
});

describe('pump', () => {
  const wet = sound.on('stopFloat.rises', 'doseFloat.rises');
  const dosing = wet.on('timer.start');

  it('doses when the timer starts and the dose float is made', () => {
    expect(arms(dosing, 'dose')).toBe(true);
    expect(out(dosing).pumpRuns).toBe(true);
    expect(out(dosing.on('dose.ends')).pumpRuns).toBe(false);
    expect(out(sound.on('stopFloat.rises', 'timer.start')).pumpRuns).toBe(false);
  });

  it('stops when the stop float breaks, and the dose is over', () => {
    const dry = dosing.on('stopFloat.falls');
    expect(out(dry).pumpRuns).toBe(false);
    expect(out(dry.on('stopFloat.rises')).pumpRuns).toBe(false);
  });

  it('override runs it at any hour until its float breaks', () => {
    const over = wet.on('overrideFloat.rises');
    expect(out(over).pumpRuns).toBe(true);
    expect(out(over.on('overrideFloat.falls')).pumpRuns).toBe(false);
  });

  it('a stop float held down keeps timer and override off; Hand pumps all the same', () => {
    const held = sound.on('stopFloat.heldDown', 'doseFloat.rises', 'overrideFloat.rises', 'timer.start');
    expect(out(held).pumpRuns).toBe(false);
    expect(out(held.on('selector.hand')).pumpRuns).toBe(true);
  });

  it('Hand passes every float, Off stops all, a welded relay runs in Off', () => {
    expect(out(sound.on('selector.hand')).pumpRuns).toBe(true);
    expect(out(wet.on('overrideFloat.rises', 'selector.off')).pumpRuns).toBe(false);
    expect(out(sound.on('relay.welds', 'selector.off')).pumpRuns).toBe(true);
    expect(out(sound.on('relay.opens', 'selector.hand')).pumpRuns).toBe(false);
  });

  it('never runs with its breaker open, an open winding or an open protector', () => {
    for (const event of ['pumpBreaker.off', 'pumpBreaker.trips', 'winding.opens'] as const) {
      expect(out(sound.on('selector.hand', event)).pumpRuns).toBe(false);
    }
  });

  it('a seized rotor stalls, heats, opens the protector, and tries again when cooled', () => {
    const stalled = sound.on('rotor.seizes', 'selector.hand');
    expect(out(stalled)).toMatchObject({ pumpStalls: true, pumpRuns: false });
    const open = stalled.on('protector.hot');
    expect(out(open).pumpStalls).toBe(false);
    expect(out(open.on('protector.cool')).pumpStalls).toBe(true);
  });

  it('a float freed by hand follows the water again; one in a hand is made', () => {
    const caught = wet.on('overrideFloat.heldUp');
    expect(out(caught).pumpRuns).toBe(true);
    expect(out(caught.on('overrideFloat.freed')).pumpRuns).toBe(false);
    expect(out(wet.on('overrideFloat.lifted')).pumpRuns).toBe(true);
    expect(out(wet.on('overrideFloat.lifted', 'overrideFloat.released')).pumpRuns).toBe(false);
  });

  it('a clock that has lost the time does not dose until it is set', () => {
    const lost = wet.on('pumpBreaker.off', 'timer.reserveEnds', 'pumpBreaker.on');
    expect(out(lost.on('timer.start')).pumpRuns).toBe(false);
    expect(out(lost.on('timer.set', 'timer.start')).pumpRuns).toBe(true);
  });
});

describe('compressor', () => {
  it('runs on supply, breaker, plug and sound parts, and never dead', () => {
    expect(out(sound).compressorRuns).toBe(true);
    for (const event of [
      'supply.fails',
      'compressorBreaker.off',
      'compressorCord.pulled',
      'compressor.stops',
    ] as const) {
      expect(out(sound.on(event)).compressorRuns).toBe(false);
    }
  });

  it('a hot housing cuts it out and lets it start again when cooled', () => {
    const hot = sound.on('housing.heats');
    expect(arms(hot, 'cutoutHeat')).toBe(true);
    const out1 = hot.on('cutout.hot');
    expect(out(out1).compressorRuns).toBe(false);
    expect(out(out1.on('cutout.cool')).compressorRuns).toBe(true);
  });
});

describe.each(PANELS)('the floats of %s', (name, { kind }) => {
  it.each(kind.floats)('%s is made while the water has it up, and not the others', (float) => {
    const own = tableOf(name);
    const start = own.initial().to;
    const up = own.step(start, eventNumber(`${float}.rises`)).to;
    const made = (at: ControlState) => FLOATS.filter((f) => at.outputs[MADE[f]]);
    expect(made(start)).toEqual([]);
    expect(made(up)).toEqual([float]);
    expect(made(own.step(up, eventNumber(`${float}.falls`)).to)).toEqual([]);
  });
});
