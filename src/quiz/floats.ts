/** Read a float tree: what the panel does at this level, or which float contradicts the water or itself. */
import type { ControlEventName, ControlState, FloatName, OutputId } from '../control/index.ts';
import { type Message, quantity, say } from '../service/message.ts';
import { floatHeights_m, floatsOf, type UnitSpec } from '../unit/spec.ts';
import { Bench } from './bench.ts';
import { Draws, untilFair } from './draws.ts';
import type { Made, Option } from './drill.ts';
import type { FloatShown, FloatsFigure } from './figure.ts';

const MADE = {
  redundantOffFloat: 'redundantOffMade',
  stopFloat: 'stopMade',
  startStopFloat: 'startStopMade',
  doseFloat: 'doseMade',
  overrideFloat: 'overrideMade',
  highWaterFloat: 'highWaterMade',
} as const satisfies Record<FloatName, OutputId>;

/** The lowest level drawn, and how clear of every set height, m (conventions). */
const LOWEST_m = 0.1;
const CLEAR_m = 0.02;
/** The high-water delay is over by then, s. */
const STANDS_s = 60;
/** Shares of drills: the water falls, a dose is under way, a tree without a contradiction. */
const FALLING = 0.4;
const DOSING = 0.3;
const AGREES = 0.2;

interface Water {
  readonly level_m: number;
  /** Where it fell from; none where it rose. */
  readonly from_m: number | undefined;
}

export function floatsDrill(seed: number, spec: UnitSpec): Made {
  const draws = new Draws(seed, 'floats');
  return draws.chance(0.5) ? whatNow(draws, seed, spec) : whichFloat(draws, seed, spec);
}

const read = (m: number) => quantity('length_m', m, 0.01);

/** A level within a zone between two set heights, so that every zone comes as often. */
function drawWater(draws: Draws, spec: UnitSpec): Water {
  const heights = floatsOf(spec.panel).flatMap((float) => {
    const { makes_m, breaks_m } = floatHeights_m(spec.panel, float);
    return [makes_m, breaks_m];
  });
  const marks = [LOWEST_m, ...heights.sort((a, b) => a - b), inletOver(spec)];
  const zones = marks.slice(1).flatMap((high, i) => {
    const low = marks[i] ?? high;
    return high - low > 2.5 * CLEAR_m ? [[low + CLEAR_m, high - CLEAR_m] as const] : [];
  });
  const level_m = Math.round(draws.between(...draws.one(zones)) * 100) / 100;
  // A latched alarm would tell of water that is no longer there: it falls from under the high-water float.
  const ceiling_m = floatHeights_m(spec.panel, 'highWaterFloat').breaks_m - CLEAR_m;
  const falls = draws.chance(FALLING) && level_m < ceiling_m;
  return { level_m, from_m: falls ? draws.between(level_m, ceiling_m) : undefined };
}

function inletOver({ plant }: UnitSpec): number {
  return plant.pump.inlet_m - plant.pump.floor_m;
}

function filled(bench: Bench, { level_m, from_m }: Water): Bench {
  return from_m === undefined ? bench.rise(level_m) : bench.rise(from_m).fall(level_m);
}

function figureOf(
  spec: UnitSpec,
  { level_m, from_m }: Water,
  state: ControlState,
  timer: FloatsFigure['timer'],
): FloatsFigure {
  const { pump } = spec.plant;
  return {
    kind: 'floats',
    ceiling_m: pump.ceiling_m - pump.floor_m,
    inlet_m: inletOver(spec),
    level_m,
    rising: from_m === undefined,
    floats: floatsOf(spec.panel).map((float) => shownOf(spec, float, state)),
    timer,
  };
}

function shownOf(spec: UnitSpec, float: FloatName, { regions, outputs }: ControlState): FloatShown {
  const up = regions[float] === 'up' || regions[float] === 'heldUp';
  return {
    id: float,
    ...floatHeights_m(spec.panel, float),
    position: up ? 'up' : 'hanging',
    made: outputs[MADE[float]],
  };
}

/** What a panel can do at a level. */
const DEEDS = ['rests', 'waits', 'runs', 'alarm-runs', 'alarm-rests'] as const;
type Deed = (typeof DEEDS)[number];

function deedOf(bench: Bench): Deed {
  const { pumpRuns, lamp } = bench.state.outputs;
  if (lamp) return pumpRuns ? 'alarm-runs' : 'alarm-rests';
  if (pumpRuns) return 'runs';
  return bench.after('timer.start').outputs.pumpRuns ? 'waits' : 'rests';
}

function whatNow(draws: Draws, seed: number, spec: UnitSpec): Made {
  const water = drawWater(draws, spec);
  const { dosing } = spec.panel;
  const bench = new Bench(spec);
  if (dosing.kind !== 'demand' && draws.chance(DOSING)) {
    // A dose began while there was water enough; what is left may have fallen under the dose float since.
    const start_m = floatHeights_m(spec.panel, 'doseFloat').makes_m;
    bench.rise(Math.max(start_m, water.from_m ?? water.level_m)).send('timer.start');
    if (water.level_m < start_m || water.from_m !== undefined) bench.fall(water.level_m);
    bench.wait(STANDS_s);
  } else {
    filled(bench, water).wait(STANDS_s);
  }
  const { regions } = bench.state;
  const timer = dosing.kind === 'demand' ? 'none' : regions.doseDemand === 'on' ? 'doses' : 'rests';
  const shown = figureOf(spec, water, bench.state, timer);
  // A dose draws the water down, whatever it did before.
  const figure = { ...shown, rising: shown.rising && timer !== 'doses' };
  const right = deedOf(bench);
  return {
    skill: 'floats',
    seed,
    prompt: say('drill.floats.now', {
      level: read(water.level_m),
      way: wayOf(figure),
      timer: say(`drill.timer.${timer}`),
    }),
    figure,
    ask: { kind: 'choice', right, options: DEEDS.map((deed) => deedOption(deed, right, figure, spec)) },
  };
}

function wayOf({ rising }: FloatsFigure): Message {
  return say(rising ? 'drill.floats.rising' : 'drill.floats.falling');
}

function deedOption(deed: Deed, right: Deed, figure: FloatsFigure, spec: UnitSpec): Option {
  const shown = deedShown(right, figure);
  const next = say(`drill.floats.next.${right}`);
  const noTimer = spec.panel.dosing.kind === 'demand' && deed === 'waits';
  return {
    id: deed,
    label: say(`drill.floats.${deed}`),
    why:
      deed === right
        ? say('drill.two', { a: shown, b: next })
        : say('drill.three', { a: say(`drill.floats.needs.${noTimer ? 'no-timer' : deed}`), b: shown, c: next }),
  };
}

/** What the figure shows that makes the panel do so. */
function deedShown(right: Deed, { floats, level_m, timer }: FloatsFigure): Message {
  const by = (id: FloatName) => floats.find((float) => float.id === id);
  const level = read(level_m);
  const highest = by('highWaterFloat');
  const startStop = by('startStopFloat');
  switch (right) {
    case 'rests':
      return startStop
        ? say('drill.floats.shown.rests-demand', { level, h: read(startStop.makes_m) })
        : say('drill.floats.shown.rests', { level, h: read(by('doseFloat')?.makes_m ?? 0) });
    case 'waits':
      return say('drill.floats.shown.waits', { level, h: read(by('doseFloat')?.makes_m ?? 0) });
    case 'runs':
      if (startStop) {
        const values = { h: read(startStop.makes_m), low: read(startStop.breaks_m) };
        return say('drill.floats.shown.runs-demand', values);
      }
      if (timer === 'doses') {
        return say('drill.floats.shown.runs-dose', { low: read(by('stopFloat')?.breaks_m ?? 0) });
      }
      return say('drill.floats.shown.runs-override', { low: read(by('overrideFloat')?.breaks_m ?? 0) });
    default:
      return say(`drill.floats.shown.${right}`, { level, h: read(highest?.makes_m ?? 0) });
  }
}

/** How a float can contradict the water, or its contact the float. */
const CONTRADICTIONS = ['heldUp', 'heldDown', 'wireOpens', 'wireBridged'] as const;
type Contradiction = (typeof CONTRADICTIONS)[number];

/** Whether it would show at this level: a float caught where the water has it anyway tells nothing. */
function shows(what: Contradiction, { makes_m, breaks_m, position }: FloatShown, level_m: number): boolean {
  switch (what) {
    case 'heldUp':
      return level_m < breaks_m;
    case 'heldDown':
      return level_m > makes_m;
    case 'wireOpens':
      return position === 'up';
    case 'wireBridged':
      return position === 'hanging';
  }
}

function whichFloat(draws: Draws, seed: number, spec: UnitSpec): Made {
  const water = drawWater(draws, spec);
  const sound = figureOf(spec, water, filled(new Bench(spec), water).state, 'none');
  const what = untilFair(() => {
    const float = draws.one(sound.floats);
    const kind = draws.one(CONTRADICTIONS);
    return shows(kind, float, water.level_m) ? { float, kind } : undefined;
  });
  const event: ControlEventName = `${what.float.id}.${what.kind}`;
  const events = draws.chance(AGREES) ? [] : [event];
  const figure = figureOf(spec, water, filled(new Bench(spec), water).send(...events).state, 'none');
  const odd = figure.floats.filter((float, i) => !alike(float, sound.floats[i]));
  const right = odd[0]?.id ?? 'none';
  const shown = right === 'none' ? 'none' : what.kind;
  // On the largest tree one float that fits is left out, to keep to five answers.
  const fitting = draws.some(figure.floats.filter((float) => float.id !== right));
  const offered = new Set<string>([right, ...fitting.slice(0, right === 'none' ? 4 : 3).map(({ id }) => id)]);
  const values = { float: say(`float.${what.float.id}`), level: read(water.level_m), h: read(heightAsked(what)) };
  const facts = {
    shown: say(`drill.tree.shown.${shown}`, shown === 'none' ? { level: values.level } : values),
    next: say(`drill.tree.next.${shown}`),
  };
  const options = figure.floats
    .filter(({ id }) => offered.has(id))
    .map((float) => treeOption(float.id, say(`float.${float.id}`), fits(float, water.level_m), right, facts));
  return {
    skill: 'floats',
    seed,
    prompt: say('drill.tree.ask', { level: values.level, way: wayOf(figure) }),
    figure,
    ask: {
      kind: 'choice',
      right,
      options: [...options, treeOption('none', say('drill.tree.none'), say('drill.tree.needs.none'), right, facts)],
    },
  };
}

function alike(a: FloatShown, b: FloatShown | undefined): boolean {
  return a.position === b?.position && a.made === b.made;
}

/** The height that the contradiction is measured against. */
function heightAsked({ float, kind }: { readonly float: FloatShown; readonly kind: Contradiction }): number {
  return kind === 'heldUp' ? float.breaks_m : float.makes_m;
}

/** Why a float does not contradict anything. */
function fits({ id, makes_m, breaks_m }: FloatShown, level_m: number): Message {
  const values = { float: say(`float.${id}`), high: read(makes_m), low: read(breaks_m) };
  if (level_m > makes_m) return say('drill.tree.needs.up', { float: values.float, high: values.high });
  if (level_m < breaks_m) return say('drill.tree.needs.down', { float: values.float, low: values.low });
  return say('drill.tree.needs.between', values);
}

function treeOption(
  id: string,
  label: Message,
  needs: Message,
  right: string,
  { shown, next }: { readonly shown: Message; readonly next: Message },
): Option {
  const why =
    id === right ? say('drill.two', { a: shown, b: next }) : say('drill.three', { a: needs, b: shown, c: next });
  return { id, label: say('drill.option', { label }), why };
}
