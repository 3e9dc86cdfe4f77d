import type { ofCourse as en } from './en-course.ts';
import { course } from './es/course.ts';

/** What only a page says that a course platform launched, in Spanish. */
export const ofCourse: Record<keyof typeof en, string> = course;
