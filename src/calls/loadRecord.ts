import type { Checked } from './check.ts';
import { parseJson, problemsOf } from './problems.ts';
import { type CallRecord, recordSchema } from './schema.ts';

/** A record from the text of its file. */
export function loadRecord(text: string): Checked<CallRecord> {
  const parsed = parseJson(text);
  if ('problem' in parsed) return { ok: false, problems: [parsed.problem] };
  const result = recordSchema.safeParse(parsed.value, { reportInput: true });
  return result.success ? { ok: true, value: result.data } : { ok: false, problems: problemsOf(result.error) };
}
