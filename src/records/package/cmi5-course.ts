/** `cmi5.xml`, the course structure: one assignable unit for each call. */
import type { LocalText } from '../../service/message.ts';
import { BeyondLimit, decimal, NUMBER, number } from '../limits.ts';
import { documentOf, type Element, element, writable } from '../xml.ts';
import { type Course, courseUuid, type PackedActivity } from './course.ts';

export function courseStructure(course: Course): string {
  const { title, activities } = course;
  return documentOf(
    element(
      'courseStructure',
      { xmlns: 'https://w3id.org/xapi/profiles/cmi5/v1/CourseStructure.xsd' },
      element('course', { id: `urn:uuid:${courseUuid(course)}` }, local('title', title), local('description', title)),
      ...activities.map((activity) => unit(activity, course.mode === 'graded')),
    ),
  );
}

/** What is graded is passed; what is practised is completed, and nothing masters it. */
function unit({ uuid, title, summary, pass, entry }: PackedActivity, graded: boolean): Element {
  const mastery = decimal(number(NUMBER.mastery, pass / 100));
  return element(
    'au',
    {
      id: `urn:uuid:${uuid}`,
      moveOn: graded ? 'Passed' : 'Completed',
      ...(graded ? { masteryScore: mastery } : {}),
      launchMethod: 'AnyWindow',
      activityType: 'http://adlnet.gov/expapi/activities/simulation',
    },
    local('title', title),
    local('description', summary),
    element('url', {}, entry),
  );
}

/** A platform trims every text that it takes in, and a title or a description is to be there: a blank one is refused. */
function local(name: string, { en, es }: LocalText): Element {
  for (const text of [en, es])
    if (writable(text).trim() === '') throw new BeyondLimit(name, 'a text of blanks', 'cmi5 13.1');
  return element(name, {}, element('langstring', { lang: 'en' }, en), element('langstring', { lang: 'es' }, es));
}
