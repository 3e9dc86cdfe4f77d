/** `items`: drills as questions for a course platform. */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { shippedLibrary } from '../calls/index.ts';
import { SKILLS } from '../quiz/drill.ts';
import { drill } from '../quiz/index.ts';
import { QTI } from '../records/qti/item.ts';
import { itemPackage } from '../records/qti/package.ts';
import { questionOf } from '../records/qti/question.ts';
import { speak } from '../words/speak.ts';
import { loadWords } from '../words/words.ts';
import { oneOf, whole } from './args.ts';
import { GOOD, print, printJson, UsageError } from './output.ts';
import { zipOf } from './zip.ts';

const MOST = 1000;

export async function items(args: readonly string[]): Promise<number> {
  const { values } = parseArgs({
    args: [...args],
    options: {
      as: { type: 'string' },
      out: { type: 'string', short: 'o' },
      seed: { type: 'string', default: '0' },
      count: { type: 'string', default: '50' },
      skill: { type: 'string', multiple: true, default: [...SKILLS] },
      language: { type: 'string', default: 'en' },
      units: { type: 'string', default: 'us' },
      json: { type: 'boolean', default: false },
    },
  });
  const { out } = values;
  if (!out) throw new UsageError('items needs -o FILE.zip');
  const version = oneOf('as', values.as ?? '', QTI);
  const language = oneOf('language', values.language, ['en', 'es']);
  const units = oneOf('units', values.units, ['us', 'si']);
  const skills = values.skill.map((one) => oneOf('skill', one, SKILLS));
  const first = whole('seed', values.seed, 0);
  const count = whole('count', values.count, 1);
  if (count > MOST) throw new UsageError(`--count ${count}: write a number of at most ${MOST}`);
  const say = speak(await loadWords(language, 'drills'), units, true);
  const specs = [...shippedLibrary().units.values()];
  // Skills take turns, and each seed has its unit: the same seed gives the same question, however many are asked for.
  const questions = Array.from({ length: count }, (_, i) => {
    const [skill, seed] = [skills[i % skills.length], first + i];
    const spec = specs[seed % specs.length];
    if (!skill || !spec) throw new UsageError('items needs a --skill');
    return questionOf(drill(skill, seed, spec, units), language, say);
  });
  writeFileSync(out, zipOf(itemPackage(questions, version)));
  if (values.json) printJson({ out, as: version, items: questions.map(({ id }) => id) });
  else print(`${out}: ${version}, ${count} questions`);
  return GOOD;
}
