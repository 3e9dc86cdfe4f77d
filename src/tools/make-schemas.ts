/**
 * `npm run schemas`: writes `scenarios/NAME.schema.json` for editors, from the Zod schemas that the loaders use.
 * `--check` writes nothing and fails where a file does not say what its schema says.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { z } from 'zod';
import { schemas } from '../calls/schemas.ts';
import { answersSchema } from '../quiz/answers.ts';
import { examSchema } from '../quiz/exam-schema.ts';
import { setSchema } from '../share/index.ts';

export function main(args: readonly string[]): number {
  const check = args.includes('--check');
  let stale = 0;
  for (const [name, schema] of Object.entries({
    ...schemas,
    set: setSchema,
    exam: examSchema,
    answers: answersSchema,
  })) {
    const file = `scenarios/${name}.schema.json`;
    // Files are written by people, so what counts is what goes in, before defaults are filled.
    const text = `${JSON.stringify(z.toJSONSchema(schema, { io: 'input' }), null, 2)}\n`;
    if (!check) {
      writeFileSync(file, text);
    } else if (readOr(file, '') !== text) {
      console.error(`${file}:1: is not what its schema in src says; run: npm run schemas`);
      stale++;
    }
  }
  return stale > 0 ? 1 : 0;
}

function readOr(file: string, otherwise: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return otherwise;
  }
}
