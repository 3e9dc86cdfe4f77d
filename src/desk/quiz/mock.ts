import mock from '../../../scenarios/exams/mock.json';
import type { ExamFile } from '../../quiz/exam-schema.ts';

/** The exam that ships. It is taken as it is: a test holds it against its schema. */
export const MOCK = mock as ExamFile;
