/**
 * How far thirty days of the engine are from the coupled system solved tightly over the same timetable: the levels, then
 * every component in every compartment, in its own unit and as a share of what is there. And what the tight solution
 * is good to, from one at a tenfold tolerance, and what the same method costs at looser ones.
 */
import { type Difference, differences, errorsOf } from './compared.ts';
import { Coupled, follow, stepperWay } from './coupled.ts';
import { cpu, digits, engineCost, record, TIGHT } from './recorded.ts';

const LOOSER = [1e-8, 1e-4, 1e-3, 1e-2];

export function run(print: (line: string) => void): void {
  const { edges, samples } = record();
  const solved = (rtol: number) => {
    const coupled = new Coupled();
    const { value, cpu_ms } = cpu(() => follow(coupled, edges, samples, stepperWay(coupled, rtol)));
    return { coupled, samples: value, cpu_ms };
  };
  const show = (line: object) => print(JSON.stringify({ bench: 'accuracy', ...line }));

  const tight = solved(TIGHT);
  const { coupled } = tight;
  show({ of: 'reference', rtol: TIGHT, rightHandSides: coupled.derivatives, cpu_ms: Math.round(tight.cpu_ms) });
  for (const rtol of LOOSER) {
    const looser = solved(rtol);
    const rightHandSides = looser.coupled.derivatives;
    const off = summary(differences(coupled, looser.samples, tight.samples));
    show({ of: 'coupled, Bogacki-Shampine', rtol, rightHandSides, cpu_ms: Math.round(looser.cpu_ms), ...off });
  }
  const all = differences(coupled, samples, tight.samples);
  show({ of: 'engine', edges: edges.length, ...engineCost(), ...summary(all) });
  for (const place of new Set(all.map((d) => d.place))) {
    const here = all.filter((d) => d.place === place);
    show({ place, ...Object.fromEntries(here.map((d) => [d.name, figures(d)])) });
  }
}

function summary(all: readonly Difference[]) {
  const worst = all.reduce((a, b) => (b.rms / b.scale > a.rms / a.scale ? b : a));
  return {
    ...errorsOf(all),
    worst: `${worst.name}, ${worst.place}: ${digits(worst.rms)} of ${digits(worst.scale)} ${worst.unit}`,
  };
}

/** At the end, as a root mean square and at worst; the two as shares of the quantity's own root mean square. */
function figures({ last, rms, worst, scale, unit, worst_s }: Difference) {
  const absolute = { unit, last: digits(last), rms: digits(rms), worst: digits(worst), worst_h: worst_s / 3600 };
  return unit === 'm' ? absolute : { ...absolute, rmsShare: digits(rms / scale), worstShare: digits(worst / scale) };
}
