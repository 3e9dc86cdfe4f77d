import { course } from './en/course.ts';

/** What only a page says that a course platform launched, in English. */
export const ofCourse = course;
