/** `share` and `pack-set`: calls handed on, as the end of an address or as one file. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { allShipped, type CallFile, type Problem, problemLine, shippedLibrary } from '../calls/index.ts';
import type { Message } from '../service/index.ts';
import { callsIn, fileText, LONGEST_LINK, linkOf, readShared, type SharedFile, SURE_LINK } from '../share/index.ts';
import { english } from './english.ts';
import { readText } from './files.ts';
import { BAD, GOOD, print, printJson, UsageError } from './output.ts';

export async function share(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false } },
  });
  const [name] = positionals;
  if (!name) throw new UsageError('share needs a CALL; name a shipped call, or the file of a call or a set');
  const file = await sharedBy(name);
  if (!file) return BAD;
  const link = await linkOf(file);
  if (!link.ok) {
    const much = `${link.length} characters, the most is ${LONGEST_LINK}`;
    process.stderr.write(`${name}: too long for a link (${much}); hand on the file itself\n`);
    return BAD;
  }
  const { fragment } = link;
  if (values.json) printJson({ name, fragment, length: fragment.length });
  else {
    print(fragment);
    const long = fragment.length > SURE_LINK ? `; some programs cut links over ${SURE_LINK}` : '';
    print(`${fragment.length} characters${long}`);
  }
  return GOOD;
}

export async function packSet(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      title: { type: 'string' },
      'title-es': { type: 'string' },
      out: { type: 'string' },
      json: { type: 'boolean', default: false },
    },
  });
  const { title, 'title-es': titleEs, out } = values;
  if (positionals.length === 0) throw new UsageError('pack-set needs CALLS; name files or ids of shipped calls');
  if (!title || !titleEs) throw new UsageError('pack-set needs --title in English and --title-es in Spanish');
  if (!out) throw new UsageError('pack-set needs --out FILE');
  const calls: CallFile[] = [];
  for (const name of positionals) {
    const file = await sharedBy(name);
    if (!file) return BAD;
    calls.push(...callsIn(file));
  }
  const set = { set: 1 as const, title: { en: title, es: titleEs }, calls };
  const checked = readShared(JSON.stringify(set), shippedLibrary());
  if (!checked.ok) {
    await tell(out, checked.problems);
    return BAD;
  }
  writeFileSync(out, fileText(set));
  if (values.json) printJson({ out, calls: calls.map(({ id }) => id) });
  else print(`${out}: ${calls.map(({ id }) => id).join(', ')}`);
  return GOOD;
}

/** A shipped call by its id, or what a file holds. Says what is wrong with it where something is. */
async function sharedBy(name: string): Promise<SharedFile | undefined> {
  const shipped = allShipped().find((call) => call.id === name);
  if (shipped) return shipped;
  const text = readText(name);
  if (!text.ok) {
    await tell(name, text.problems);
    return undefined;
  }
  const received = readShared(text.value, shippedLibrary());
  if (received.ok) return received.file;
  await tell(name, received.problems, received.why);
  return undefined;
}

/** One line for each problem; where there is none to mend, why. */
async function tell(file: string, problems: readonly Problem[], why?: Message): Promise<void> {
  const say = await english();
  if (why && problems.length === 0) process.stderr.write(`${file}: ${say(why)}\n`);
  for (const problem of problems) process.stderr.write(`${problemLine(file, problem)}\n`);
}
