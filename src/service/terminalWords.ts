import { FLOATS } from '../control/index.ts';
import type { TerminalId } from '../unit/terminals.ts';
import { type Message, say } from './message.ts';

/** A screw by its name; those of a breaker or a contact are told by their side of it. */
export function terminalWords(id: TerminalId): Message {
  const [part = '', side = ''] = id.split('.');
  if (side === 'load') return say('terminal.load', { circuit: say(`circuit.${part}`) });
  if (side !== 'feed' && side !== 'back') return say(`terminal.${id}`);
  const isFloat = (FLOATS as readonly string[]).includes(part);
  return say(`terminal.${side}`, { of: say(isFloat ? `float.${part}` : `terminal.${part}`) });
}
