/** Which parts of which specification are drawn in `docs/control-model.md`. */
import type { AnyStateMachine, AnyStateNode } from 'xstate';
import { isToggle, mermaidOf, regionsOf, toggleLine } from './mermaid.ts';
import { phoneMachine, siteMachine } from './procedure.ts';
import { PROMISES } from './promises.ts';
import { callMachine } from './whole-call.ts';

interface Drawing {
  readonly title: string;
  readonly machine: AnyStateMachine;
  /** Regions that stand elsewhere already, or repeat for each float, breaker or step. */
  readonly without?: readonly string[];
  readonly only?: readonly string[];
}

function of(name: string, unit: string): AnyStateMachine {
  const promised = PROMISES.find((p) => p.name === name && p.unit === unit);
  if (!promised) throw new Error(`${unit} has no promise "${name}"`);
  return promised.machine;
}

const DRAWINGS: readonly Drawing[] = [
  { title: 'The alarm circuit, latching, one lamp (U1)', machine: of('reset', 'u1') },
  {
    title: 'The alarm circuit, following (U2): what differs',
    machine: of('reset', 'u2'),
    only: ['alarm lamp', 'alarm sound'],
  },
  {
    title: 'The alarm circuit with two lamps (U3): what differs',
    machine: of('reset', 'u3'),
    only: ['lamp-out contact', 'air alarm', 'water alarm', 'compressor breaker', 'ultraviolet lamp'],
  },
  {
    title: 'Breakers and supply, one circuit of three',
    machine: of('breakers and supply', 'u1'),
    only: ['power supply', 'pump breaker', 'pump wire', 'pump circuit'],
  },
  {
    title: 'Dosing by night (U1, digital clock)',
    machine: of('dosing (night)', 'u1'),
    without: ['power supply', 'pump wire', 'dose float', 'override float'],
  },
  { title: 'Dosing by night: a mechanical clock', machine: of('dosing (night)', 'mechanical'), only: ['timer'] },
  {
    title: 'Dosing on demand (U2): what differs',
    machine: of('dosing (demand)', 'u2'),
    only: ['pump-tank water', 'float leads'],
  },
  {
    title: 'Timed dosing (U3): what differs',
    machine: of('dosing (timed)', 'u3'),
    only: ['pump-tank water', 'timer', 'dose'],
  },
  {
    title: 'Motor and protector (U1)',
    machine: of('motor and protector', 'u1'),
    without: ['power supply', 'selector', 'pump wire'],
  },
  {
    title: 'Compressor, outlet and cut-out (U2)',
    machine: of('compressor and cut-out', 'u2'),
    without: ['power supply'],
  },
  { title: 'The procedure by phone', machine: phoneMachine, only: ['call', 'danger', 'breakers', 'reset'] },
  { title: 'The procedure on site', machine: siteMachine, only: ['call', 'find', 'prove'] },
  { title: 'A whole call', machine: callMachine },
];

export function drawings(): string {
  return DRAWINGS.map(drawn).join('\n\n');
}

function drawn({ title, machine, without = [], only }: Drawing): string {
  const regions = regionsOf(machine).filter((r) => !without.includes(r.key) && (only?.includes(r.key) ?? true));
  const toggles = regions.filter(isToggle);
  const table = ['| part | first | until | then | until |', '|---|---|---|---|---|', ...toggles.map(toggleLine)].join(
    '\n',
  );
  return [
    `### ${title}`,
    ...(toggles.length > 0 ? [table] : []),
    ...regions
      .filter((r) => !isToggle(r))
      .map((region) =>
        [`**${region.key}**`, `\`\`\`mermaid\n${mermaidOf(region)}\n\`\`\``, sayings(region)].join('\n\n').trimEnd(),
      ),
  ].join('\n\n');
}

/** What a region's states assert, in words. */
function sayings(region: AnyStateNode): string {
  return Object.values(region.states)
    .flatMap((state) => (state.meta ? [`- *${state.key}*: ${(state.meta as { says: string }).says}`] : []))
    .join('\n');
}
