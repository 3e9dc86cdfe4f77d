/** Message ids the yard asks texts for. It holds no sentence of its own. */
import type { FieldScene, PartId } from '../scene/types.ts';
import type { Message } from '../service/message.ts';

export const partName = (part: PartId): Message => ({ id: `part.${part}` });
/** The field is one part of the works, by whichever name it goes. */
export const fieldName = (kind: FieldScene['kind']): Message => ({ id: `part.${kind}-field` });
