/**
 * The coupled system by `odex`, an extrapolation code for any equations: thirty days over the engine's timetable,
 * started anew at every edge. Its right-hand sides, processor time and error at some tolerances, and its time where it is
 * as near to the tight solution as the engine, as a ratio to the engine's.
 */
import { createRequire } from 'node:module';
import { atEqualError, differences, errorsOf } from './compared.ts';
import { absoluteTolerances, Coupled, follow, stepperWay, type Way } from './coupled.ts';
import { cpu, digits, engineCost, fastest, record, SIZE, TIGHT } from './recorded.ts';

/** What is used of the package: its own types are a source that a strict project cannot read, so nothing imports it. */
interface Odex {
  readonly Outcome: { readonly Converged: number };
  readonly Solver: new (
    size: number,
  ) => {
    relativeTolerance: number;
    absoluteTolerance: number[];
    initialStepSize: number;
    solve(
      derivative: (t: number, y: number[]) => number[],
      from: number,
      y: number[],
      to: number,
    ): { readonly y: number[]; readonly outcome: number };
  };
}
const require = createRequire(import.meta.url);
const { Outcome, Solver } = require('odex') as Odex;

const TOLERANCES = [1e-2, 1e-3, 1e-4, 5e-5, 1e-5];
/** As the engine's first step, s. */
const FIRST_STEP_s = 5;

export function run(print: (line: string) => void): void {
  const { edges, samples } = record();
  const tight = new Coupled();
  const reference = follow(tight, edges, samples, stepperWay(tight, TIGHT));
  const ours = engineCost();
  const engine = errorsOf(differences(tight, samples, reference));
  print(JSON.stringify({ bench: 'odex', of: 'engine', ...ours, ...engine }));
  const runs = TOLERANCES.map((rtol) => {
    const once = () => {
      const coupled = new Coupled();
      return { coupled, ...cpu(() => follow(coupled, edges, samples, odexWay(coupled, rtol))) };
    };
    const { coupled, value, cpu_ms } = fastest(once);
    return {
      rtol,
      rightHandSides: coupled.derivatives,
      cpu_ms: Math.round(cpu_ms),
      ...errorsOf(differences(coupled, value, reference)),
      ratioToEngine: digits(cpu_ms / ours.cpu_ms),
    };
  });
  for (const run of runs) print(JSON.stringify({ bench: 'odex', of: 'odex', ...run }));
  print(JSON.stringify({ bench: 'odex', of: 'odex', ...atEqualError(runs, engine) }));
}

function odexWay(coupled: Coupled, rtol: number): Way {
  const solver = new Solver(SIZE);
  solver.relativeTolerance = rtol;
  solver.absoluteTolerance = Array.from(absoluteTolerances(coupled, rtol));
  solver.initialStepSize = FIRST_STEP_s;
  const state = new Float64Array(SIZE);
  const change = new Float64Array(SIZE);
  const derivative = (t: number, y: number[]): number[] => {
    state.set(y);
    coupled.derivative(t, state, change);
    return Array.from(change);
  };
  return (y, from, to) => {
    const { outcome, y: end } = solver.solve(derivative, from, Array.from(y), to);
    if (outcome !== Outcome.Converged) throw new Error(`odex gave up between ${from} s and ${to} s`);
    return Float64Array.from(end);
  };
}
