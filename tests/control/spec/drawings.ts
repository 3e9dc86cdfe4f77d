/** Which parts of which specification are drawn in `docs/control-model.md`. */
import type { AnyStateMachine } from 'xstate';
import { mermaidOf } from './mermaid.ts';
import { phoneMachine, siteMachine } from './procedure.ts';
import { PROMISES } from './promises.ts';
import { callMachine } from './whole-call.ts';

interface Drawing {
  readonly title: string;
  readonly machine: AnyStateMachine;
  readonly only?: readonly string[];
}

function of(name: string, unit: string): AnyStateMachine {
  const promised = PROMISES.find((p) => p.name === name && p.unit === unit);
  if (!promised) throw new Error(`${unit} has no promise "${name}"`);
  return promised.machine;
}

const POWER = ['power supply', 'pump breaker', 'pump wire'];

const DRAWINGS: readonly Drawing[] = [
  { title: 'The alarm circuit, latching, one lamp (U1)', machine: of('reset', 'u1'), only: ['alarm circuit'] },
  { title: 'The alarm circuit, following (U2)', machine: of('reset', 'u2'), only: ['alarm circuit'] },
  {
    title: 'The alarm circuit with two lamps and the ultraviolet contact (U3)',
    machine: of('reset', 'u3'),
    only: ['alarm circuit', 'ultraviolet lamp', 'compressor breaker'],
  },
  {
    title: 'What the alarm circuit watches, and what may fail in it',
    machine: of('reset', 'u1'),
    only: [
      'air pressure',
      'air switch',
      'pump-tank water',
      'alarm float',
      'float leads',
      'terminals',
      'power supply',
      'alarm breaker',
      'alarm wire',
      'test button',
      'lamp',
      'buzzer',
      'telephone line',
    ],
  },
  {
    title: 'Breakers and supply (one circuit of three)',
    machine: of('breakers and supply', 'u1'),
    only: ['power supply', 'pump breaker', 'pump wire', 'pump circuit'],
  },
  {
    title: 'Dosing by night, with its clock (U1, digital)',
    machine: of('dosing (night)', 'u1'),
    only: [...POWER, 'pump-tank water', 'stop float', 'float leads', 'selector', 'timer', 'dose', 'pump'],
  },
  {
    title: 'Dosing on demand (U2)',
    machine: of('dosing (demand)', 'u2'),
    only: ['pump-tank water', 'start/stop float', 'float leads', 'selector', 'pump'],
  },
  {
    title: 'Timed dosing (U3)',
    machine: of('dosing (timed)', 'u3'),
    only: ['pump-tank water', 'redundant-off float', 'selector', 'timer', 'dose', 'pump'],
  },
  { title: 'Motor and protector (U1)', machine: of('motor and protector', 'u1') },
  { title: 'Compressor, outlet and cut-out (U2)', machine: of('compressor and cut-out', 'u2') },
  { title: 'The procedure by phone', machine: phoneMachine, only: ['call', 'danger', 'breakers', 'reset'] },
  { title: 'The procedure on site', machine: siteMachine, only: ['call', 'safe', 'mend', 'prove'] },
  { title: 'A whole call', machine: callMachine },
];

export function drawings(): string {
  return DRAWINGS.map(
    ({ title, machine, only }) => `### ${title}\n\n\`\`\`mermaid\n${mermaidOf(machine, only)}\n\`\`\``,
  ).join('\n\n');
}
