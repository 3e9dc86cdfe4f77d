/** How a fault of the catalogue is called. */
import type { PlacedFault } from '../faults/index.ts';
import { type Message, say } from '../service/message.ts';

export function nameOf({ id, part }: PlacedFault): Message {
  return part === undefined ? say(`fault.${id}`) : say(`fault.${id}`, { part: say(`part.${part}`) });
}
