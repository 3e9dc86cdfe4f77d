/** What a generator gives in the end; `each` hears what it gives on the way. */
export function drained<Step, End>(steps: Generator<Step, End>, each: (step: Step) => void = () => {}): End {
  let next = steps.next();
  for (; next.done !== true; next = steps.next()) each(next.value);
  return next.value;
}
