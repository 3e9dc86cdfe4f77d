import { type FieldsShape, finite, flag, type Shape, text } from '../shape.ts';

/** The place of the first fault in a value, and what should stand there. */
export interface Wrong {
  readonly path: string;
  readonly wants: 'text' | 'number' | 'flag' | 'fields' | 'list' | 'other';
}

const PLAIN = new Map<Shape<unknown>, Wrong['wants']>([
  [text, 'text'],
  [finite, 'number'],
  [flag, 'flag'],
]);

/** Undefined where the value has the shape. */
export function whereWrong(shape: Shape<unknown>, value: unknown, path: string): Wrong | undefined {
  if (shape(value)) return undefined;
  if (!hasFields(shape)) return { path, wants: PLAIN.get(shape) ?? 'other' };
  if (typeof value !== 'object' || value === null) return { path, wants: 'fields' };
  for (const [key, inner] of [...shape.needed, ...shape.free]) {
    const there = (value as Record<string, unknown>)[key];
    const at = `${path}.${key}`;
    const free = shape.free.some(([name]) => name === key);
    if (free && there === undefined) continue;
    // Whatever it may be, it must be there.
    const wrong = whereWrong(inner, there, at) ?? (key in value ? undefined : { path: at, wants: 'other' as const });
    if (wrong !== undefined) return wrong;
  }
  return { path, wants: 'other' };
}

function hasFields(shape: Shape<unknown>): shape is FieldsShape<object> {
  return 'needed' in shape;
}
