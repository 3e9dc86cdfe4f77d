/**
 * What the engine costs. A year of U1 with three persons, weather, all processes and all control: seconds of one core a
 * year, where they go, and the ratio to nothing but the right-hand sides it needed: the same number of derivatives at states
 * met on the way. And control events per second of the remembered table, against XState's own actor and against a control written by
 * hand, all over the events which those days bring.
 */
import { createActor } from 'xstate';
import { shippedClimates } from '../../src/calls/climates.ts';
import { shippedLibrary } from '../../src/calls/index.ts';
import { type ControlEventName, ControlTable, EVENTS, type Panel, panelOf } from '../../src/control/index.ts';
import {
  COMPONENTS,
  CONTACT,
  CONTACT_SIZE,
  Contact,
  type Drive,
  draw,
  householdSource,
  makeWorks,
  PROCESS,
  PROCESS_SIZE,
  STEPPED,
  weatherOf,
} from '../../src/plant/index.ts';
import { kindOf, Unit } from '../../src/unit/index.ts';
import { HandWritten } from './handWritten.ts';

const DAYS = 365;
const SEED = 42;
/** States kept of those met, spread over the first weeks: enough that no cache holds them all. */
const STATES = 20_000;
const REPEATS = 5;

export function run(print: (line: string) => void): void {
  const events = engine(print);
  control(print, events);
}

function unit(): Unit {
  const library = shippedLibrary();
  const spec = library.units.get('u1');
  const household = library.households.get('family-3');
  if (!spec || !household) throw new Error('u1 or family-3 is missing');
  const source = householdSource(household, SEED);
  const climate = shippedClimates().get('ridge');
  if (!climate) throw new Error('no climate "ridge"');
  return new Unit({ spec, source, faults: [], seed: SEED, weather: weatherOf(climate, SEED, 1) });
}

/** Prints the engine's lines; returns the control events of the days. */
function engine(print: (line: string) => void): readonly number[] {
  const met: { y: Float64Array; drive: Drive }[] = [];
  const watched = unit();
  watched.observer = (u) => {
    if (met.length < STATES) met.push({ y: Float64Array.from(u.y), drive: { ...u.driveAt(u.t) } });
  };
  watched.advance(DAYS * 86_400);
  const { derivatives } = watched;
  const { process, contact } = watched.passage;
  const processDerivatives = process.derivatives;
  const contactSteps = contact.steps;

  const whole_s = fastest(() => unit().advance(DAYS * 86_400));
  const works = makeWorks(watched.spec.plant);
  const dy = new Float64Array(STEPPED);
  const bare_s = fastest(() => {
    for (let i = 0; i < derivatives; i++) {
      // Derivatives of a step lie at one place: three in a row at a state, as the engine asks for them.
      const at = met[Math.floor(i / 3) % met.length];
      if (at) works.derivative(at.drive, at.y, dy);
    }
  });
  const masses = watched.y.slice(PROCESS, PROCESS + PROCESS_SIZE);
  const change = new Float64Array(PROCESS_SIZE);
  const processes_s = fastest(() => {
    for (let i = 0; i < processDerivatives; i++) process.derivative(0, masses, change);
  });
  const past = watched.y.slice(CONTACT, CONTACT + CONTACT_SIZE);
  const stretch = { ...process.stretch, days: 1 / 144, clarifierOut: 1, riserOut: 1 };
  const run = { arriving: new Float64Array(COMPONENTS), dieOff: 1, pumpFloor_m2: 2, pumped_min: 0 };
  const each = new Contact();
  each.advance(past, stretch, run);
  const perAdvance = each.steps;
  const contact_s = fastest(() => {
    for (let i = 0; i < contactSteps / perAdvance; i++) each.advance(past, stretch, run);
  });
  const share = (part_s: number) => round(part_s / whole_s);
  print(
    JSON.stringify({
      bench: 'engine',
      days: DAYS,
      persons: 3,
      derivatives,
      processDerivatives,
      contactSteps,
      secondsPerYear: round((whole_s * 365) / DAYS),
      yearsPerSecond: round(DAYS / 365 / whole_s),
      shares: {
        waterEquations: share(bare_s),
        processEquations: share(processes_s),
        contact: share(contact_s),
        steppingEventsAndTheRest: share(whole_s - bare_s - processes_s - contact_s),
      },
      ratioToBareDerivatives: round(whole_s / (bare_s + processes_s)),
    }),
  );
  return watched.log.flatMap((h) => {
    const number = EVENTS.indexOf(h.what as ControlEventName);
    return number < 0 ? [] : [number];
  });
}

function control(print: (line: string) => void, events: readonly number[]): void {
  const many = Array.from({ length: 400 }, () => events).flat();
  const few = Array.from({ length: 8 }, () => events).flat();

  const panel = panelOf(kindOf(unit().spec.panel));
  checkHandWritten(panel, events);
  const table = new ControlTable(panel);
  const cold_s = seconds(() => stepAll(table, events));
  stepAll(table, few);
  const table_ns = perEvent(many, () => stepAll(table, many));

  const hand = new HandWritten();
  const hand_ns = perEvent(many, () => {
    for (const event of many) hand.send(event);
  });

  const actor = createActor(panel.machine).start();
  const named = few.map((event) => ({ type: EVENTS[event] as ControlEventName }));
  const actor_ns = perEvent(few, () => {
    for (const event of named) actor.send(event);
  });
  actor.stop();

  print(
    JSON.stringify({
      bench: 'control',
      events: events.length,
      ...table.size(),
      firstTime_us: round((cold_s * 1e6) / events.length),
      table_ns: round(table_ns),
      handWritten_ns: round(hand_ns),
      actor_ns: round(actor_ns),
      tableEventsPerSecond: Math.round(1e9 / table_ns),
      ratioToActor: Math.round(actor_ns / table_ns),
      ratioToHandWritten: round(hand_ns / table_ns),
    }),
  );
}

function stepAll(table: ControlTable, events: readonly number[]): boolean {
  let state = table.initial().to;
  let asked = 0;
  for (const event of events) {
    const edge = table.step(state, event);
    state = edge.to;
    asked += edge.commands.length;
  }
  return state.outputs.lamp && asked > 0;
}

/** The rival must do the same work: outputs and commands alike, on the days' events and on a walk through all of them. */
function checkHandWritten(panel: Panel, events: readonly number[]): void {
  const walk = Array.from({ length: 20_000 }, (_, i) => Math.floor(draw(1, 'bench', i) * EVENTS.length));
  for (const list of [events, walk]) {
    const table = new ControlTable(panel);
    const hand = new HandWritten();
    let state = table.initial().to;
    list.forEach((event, i) => {
      const edge = table.step(state, event);
      state = edge.to;
      const before = hand.commands;
      hand.send(event);
      for (const id of ['lamp', 'buzzer', 'contact', 'pumpRuns', 'pumpStalls', 'compressorRuns'] as const) {
        if (hand[id] !== state.outputs[id]) throw new Error(`${id} differs after ${EVENTS[event]} (${i})`);
      }
      const asked = hand.commands - before;
      if (asked !== edge.commands.length) {
        throw new Error(`${asked} commands, not ${JSON.stringify(edge.commands)}, after ${EVENTS[event]} (${i})`);
      }
    });
  }
}

function perEvent(events: readonly number[], work: () => void): number {
  return (fastest(work) * 1e9) / events.length;
}

/** The fastest of several runs: what is left when the machine is not busy with something else. */
function fastest(work: () => void): number {
  return Math.min(...Array.from({ length: REPEATS }, () => seconds(work)));
}

function seconds(work: () => unknown): number {
  const from = performance.now();
  work();
  return (performance.now() - from) / 1000;
}

const round = (x: number): number => Math.round(x * 100) / 100;
