/** `solve-calls ID...`: lets the scripted expert take calls under `scenarios/calls` and writes what it did as their solution. */
import { readFileSync, writeFileSync } from 'node:fs';
import { type CallFile, judged, loadCall, play, prepareCall, shippedLibrary } from '../calls/index.ts';
import type { Done } from '../calls/session.ts';

for (const id of process.argv.slice(2)) solve(id);

function solve(id: string): void {
  const file = `scenarios/calls/${id}.json`;
  const loaded = loadCall(readFileSync(file, 'utf8'), shippedLibrary());
  if (!loaded.ok) throw new Error(`${file}: ${loaded.problems.map((p) => `${p.path} ${p.message}`).join('; ')}`);
  const session = play(prepareCall(loaded.value), 'expert');
  const solution = session.done.map((done) => stepOf(done, session.service.person.notebook));
  const solved: CallFile = { ...loaded.value, solution };
  writeFileSync(file, `${JSON.stringify(solved, null, 2)}\n`);
  const { passed, spent } = judged(play(prepareCall(solved), 'solution'));
  process.stdout.write(`${id}: ${passed ? 'solved' : 'NOT solved'}, ${solution.length} steps, ${spent.minutes} min\n`);
}

/** Evidence is named by the check that gave it: notes have other numbers in another run. */
function stepOf(
  { action, def }: Done,
  notebook: readonly { readonly id: string; readonly by?: string }[],
): CallFile['solution'][number] {
  if (!action.fill) return { do: def.id };
  const by = (noteId: string) => {
    const check = notebook.find((n) => n.id === noteId)?.by;
    return check === undefined ? noteId : `by:${check}`;
  };
  const fill = Object.fromEntries(
    Object.entries(action.fill).map(([field, value]) => [
      field,
      typeof value === 'string' ? value : field === 'evidence' ? [...new Set(value.map(by))] : [...value],
    ]),
  );
  return { do: def.id, fill };
}
