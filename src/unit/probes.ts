/** What a meter reads at a circuit: volts and ohms between two screws, amps round a conductor. */
import type { Circuit, PieceName } from './circuit.ts';
import { type Branch, currentIn, type Potentials, potentials } from './nodal.ts';
import type { ConductorId, TerminalId } from './terminals.ts';

/** Input of an ordinary digital meter, ohm (common practice, no source). */
const METER_ohm = 10e6;
/** What a wire that hangs free picks up from the live one beside it and loses to ground: some volts at the meter (convention). */
const STRAY_ohm = 2e9;
/** From here on a meter set to ohms warns of voltage and shows nothing, V (common practice, no source). */
const REFUSES_V = 10;

const BUS: ReadonlySet<string> = new Set(['line', 'neutral', 'ground']);

/** A circuit as the solver takes it, with what strays: potentials and every current follow. */
export interface Solved {
  readonly branches: readonly Branch[];
  readonly volts: Potentials;
}

/** The circuit as it is fed, with a meter between two screws or none. */
export function solve({ pieces, supply_V }: Circuit, ...meter: readonly Branch[]): Solved {
  const branches = withStrays([...pieces, ...meter]);
  const held = new Map([['neutral', 0]]);
  if (supply_V !== undefined) held.set('line', supply_V);
  return { branches, volts: potentials(branches, held) };
}

/** Volts between two screws as the meter shows them, without its scatter. */
export function voltsBetween(circuit: Circuit, red: TerminalId, black: TerminalId): number {
  if (red === black) return 0;
  const { volts } = solve(circuit, { from: red, to: black, ohm: METER_ohm });
  return Math.abs(potential(volts, red) - potential(volts, black));
}

/** Whether a screw has voltage to ground: a meter set to ohms refuses there. */
export function isLive(circuit: Circuit, at: TerminalId): boolean {
  return voltsBetween(circuit, at, 'ground') > REFUSES_V;
}

/** Ohms between two screws of a dead circuit as the meter finds them: by every way there is, not only the wanted one. */
export function ohmsBetween({ pieces }: Circuit, red: TerminalId, black: TerminalId): number {
  if (red === black) return 0;
  const cold = pieces.map(({ from, to, dead_ohm }) => ({ from, to, ohm: dead_ohm }));
  const open = { from: red, to: black, ohm: STRAY_ohm };
  // An ampere in at one, out at the other: the volts between them are the ohms.
  const volts = potentials(withStrays([...cold, open]), new Map([[black, 0]]), new Map([[red, 1]]));
  return potential(volts, red);
}

/** Pieces that a clamp has round it together; what goes there and what comes back cancel. */
const ROUND: Readonly<Record<ConductorId, readonly PieceName[]>> = {
  supply: ['alarmBreaker', 'compressorBreaker', 'pumpBreaker'],
  alarm: ['alarmBreaker'],
  compressor: ['compressorLead'],
  pump: ['pumpLead'],
  pumpCord: ['pumpLead', 'pumpReturn'],
  control: ['controlFuse'],
};

/** Amps that a clamp shows round a conductor, without its scatter. */
export function ampsIn(circuit: Circuit, conductor: ConductorId): number {
  const { volts } = solve(circuit);
  const round = circuit.pieces.filter(({ name }) => name !== undefined && ROUND[conductor].includes(name));
  return Math.abs(round.reduce((sum, piece) => sum + currentIn(piece, volts), 0));
}

/** With strays of every node but the supply's own three: a screw nothing is joined to hangs on these alone. */
function withStrays(branches: readonly Branch[]): Branch[] {
  const nodes = new Set(branches.flatMap(({ from, to }) => [from, to]));
  const strays = [...nodes]
    .filter((node) => !BUS.has(node))
    .flatMap((node) => ['line', 'ground'].map((bus) => ({ from: bus, to: node, ohm: STRAY_ohm })));
  return [...branches, ...strays];
}

function potential(volts: Potentials, at: TerminalId): number {
  return volts.get(at) ?? 0;
}
