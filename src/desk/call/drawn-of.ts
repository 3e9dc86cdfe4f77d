import type { PartView } from '../../calls/view.ts';
import type { ChamberScene, CompressorScene, FloatScene, PanelScene, Scene, TimerScene } from '../../scene/types.ts';
import { type Message, quantity, say } from '../../service/message.ts';
import type { access } from '../../words/en/access.ts';

type Drawn = Extract<keyof typeof access, `drawn.${string}`>;
const drawn = (id: Drawn, values?: Message['values']): Message => say(id, values);
const length = (m: number) => quantity('length_m', m, 0.01);

/** What the picture draws of a part beyond its outline, in words: nothing of what is in pencil. Shades of water have none. */
export function drawnOf(scene: Scene, part: PartView['id']): readonly Message[] {
  switch (part) {
    case 'house':
      return either(scene.house.backingUp, 'drawn.house.backs-up', 'drawn.house.runs');
    case 'clean-out':
      return either(orNull(scene.flows.relief_Ls), 'drawn.clean-out.out', 'drawn.clean-out.dry');
    case 'trash-tank':
    case 'aeration':
    case 'clarifier':
      return chamber(scene.chambers[part]);
    case 'disinfection':
      return [
        ...chamber(scene.chambers.disinfection),
        ...(scene.ultraviolet.present ? either(scene.ultraviolet.lit, 'drawn.uv.lit', 'drawn.uv.dark') : []),
      ];
    case 'pump-tank':
      return [
        ...chamber(scene.chambers['pump-tank']),
        ...either(scene.pump.running, 'drawn.pump.runs', 'drawn.pump.rests'),
        ...scene.floats.flatMap(float),
      ];
    case 'disc-filter':
      return share(scene.discFilter.flowShare);
    case 'spray-field':
      return pressure(scene.field.headPressure_kPa);
    case 'panel':
      return panel(scene.panel);
    case 'compressor':
      return compressor(scene.compressor);
    case 'phone':
      return [];
  }
}

function either(is: boolean | null, yes: Drawn, no: Drawn): Message[] {
  return is === null ? [] : [drawn(is ? yes : no)];
}

function orNull(flow: number | null): boolean | null {
  return flow === null ? null : flow > 0;
}

function chamber({ lid, level_m, scum_m, sludge_m, bubbles_Lmin }: ChamberScene): Message[] {
  return [
    ...(lid === 'open' ? [drawn('drawn.lid.open')] : []),
    ...(level_m === null ? [] : [drawn('drawn.level', { m: length(-level_m) })]),
    ...(scum_m === null ? [] : [drawn('drawn.scum', { m: length(scum_m) })]),
    ...(sludge_m === null ? [] : [drawn('drawn.sludge', { m: length(sludge_m) })]),
    ...either(orNull(bubbles_Lmin), 'drawn.bubbles', 'drawn.bubbles.none'),
  ];
}

function float({ id, position, made }: FloatScene): Message[] {
  const name = say(`yard.float.${id}`);
  return [
    ...(position === null ? [] : [drawn('drawn.float', { float: name, how: drawn(`drawn.float.${position}`) })]),
    ...(made === null ? [] : [drawn(made ? 'drawn.float.made' : 'drawn.float.open', { float: name })]),
  ];
}

function share(value: number | null): Message[] {
  return value === null ? [] : [drawn('drawn.filter', { p: quantity('share', value) })];
}

function pressure(kPa: number | null): Message[] {
  if (kPa === null) return [];
  return kPa > 0 ? [drawn('drawn.field.on', { p: quantity('pressure_kPa', kPa, 5) })] : [drawn('drawn.field.off')];
}

function panel({ lamps, buzzer, breakers, selector, timer, counters, gauge }: PanelScene): Message[] {
  return [
    ...lamps.flatMap(({ id, state }) =>
      state === null ? [] : [drawn(`drawn.lamp.${state}`, { lamp: drawn(`drawn.lamp.${id}`) })],
    ),
    ...either(buzzer, 'drawn.buzzer.sounds', 'drawn.buzzer.silent'),
    ...breakers.flatMap(({ id, lever, locked }) => [
      ...(lever === null
        ? []
        : [drawn('drawn.lever', { breaker: say(`control.breaker-${id}`), lever: say(`lever.${lever}`) })]),
      ...(locked ? [drawn('drawn.locked', { breaker: say(`control.breaker-${id}`) })] : []),
    ]),
    ...(selector === null ? [] : [drawn(`drawn.selector.${selector}`)]),
    ...(timer === null ? [] : dial(timer)),
    ...(counters === null
      ? []
      : [drawn('drawn.counters', { h: quantity('duration_h', counters.pumpHours, 0.1), n: counters.pumpCycles })]),
    ...(gauge.kPa === null ? [] : [drawn('drawn.gauge', { p: quantity('pressure_kPa', gauge.kPa, 0.5) })]),
  ];
}

function dial(timer: TimerScene): Message[] {
  if (timer.dial === null) return [];
  const run = quantity('duration_min', timer.dial.run_min, 1);
  return timer.kind === 'timed'
    ? [drawn('drawn.timer.every', { every: quantity('duration_min', timer.dial.every_min, 1), run })]
    : [
        drawn('drawn.timer.night', {
          clock: quantity('clock_s', timer.dial.clock_s),
          n: timer.dial.starts_s.length,
          run,
        }),
      ];
}

function compressor(air: CompressorScene): Message[] {
  return [
    ...either(air.running, 'drawn.air.runs', 'drawn.air.still'),
    ...(air.rattle ? [drawn('drawn.air.rattles')] : []),
    ...(air.pressure_kPa === null
      ? []
      : [drawn('drawn.air.pressure', { p: quantity('pressure_kPa', air.pressure_kPa, 0.5) })]),
    ...(air.flow_Lmin === null ? [] : [drawn('drawn.air.flow', { f: quantity('airFlow_Lmin', air.flow_Lmin, 1) })]),
    ...(air.leak === null ? [] : [drawn(`drawn.air.leak.${air.leak.where}`)]),
    ...(air.foam ? [drawn('drawn.air.foam')] : []),
    ...either(air.outlet.plugged, 'drawn.outlet.plugged', 'drawn.outlet.unplugged'),
    ...(air.outlet.tripped === true ? [drawn('drawn.outlet.tripped')] : []),
  ];
}
