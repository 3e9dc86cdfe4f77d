import type { Checked } from '../calls/check.ts';
import { parseJson, problemsOf } from '../calls/problems.ts';
import { type ExamFile, examSchema } from './exam-schema.ts';
import { skillsOf, TOPICS } from './topics.ts';

/** An exam from the text of its file. */
export function loadExam(text: string): Checked<ExamFile> {
  const parsed = parseJson(text);
  return 'problem' in parsed ? { ok: false, problems: [parsed.problem] } : checkExam(parsed.value);
}

export function checkExam(value: unknown): Checked<ExamFile> {
  const result = examSchema.safeParse(value, { reportInput: true });
  if (!result.success) return { ok: false, problems: problemsOf(result.error) };
  const exam = result.data;
  const unasked = TOPICS.filter((topic) => exam.topics[topic] !== undefined && skillsOf(topic).length === 0);
  const problems = unasked.map((topic) => ({
    path: `topics.${topic}`,
    message: 'no question asks about this topic',
    mend: 'take it out, or name another',
  }));
  if (Object.keys(exam.topics).length === 0) {
    problems.push({ path: 'topics', message: 'an exam without questions', mend: 'name a topic and how many' });
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: exam };
}
