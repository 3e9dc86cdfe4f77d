/** A draft as text, and a text as a draft. */
import { type Problem, parseJson } from '../calls/problems.ts';
import { callSchema } from '../calls/schema.ts';
import { fileText } from '../share/text.ts';
import { type Draft, isDraft } from './draft.ts';

/** A whole call is written as every call is; one that is not, as it stands. Read and written again it is the same bytes. */
export function draftText(draft: Draft): string {
  const whole = callSchema.safeParse(draft);
  return whole.success ? fileText(whole.data) : `${JSON.stringify(draft, null, 2)}\n`;
}

/** Any JSON object can be taken up: what is wrong in it is told beside its field. */
export function readDraft(text: string): { readonly draft: Draft } | { readonly problem: Problem } {
  const parsed = parseJson(text);
  if ('problem' in parsed) return parsed;
  if (isDraft(parsed.value)) return { draft: parsed.value };
  return { problem: { path: '', message: 'not a call', mend: 'choose the file of one call' } };
}
