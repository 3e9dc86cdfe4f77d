/** What a page says that was launched by a course platform: fetched with what launches it, in both languages. */
export const course = {
  'course.note': 'Course',
  'course.recorded.graded': 'Recorded with your course: {score} of 100, {verdict}.',
  'course.recorded.practice': 'Recorded with your course: completed, {score} of 100.',
  'course.passed': 'passed',
  'course.failed': 'not passed',
  'course.silent':
    'The course platform does not answer, so nothing is recorded there. The call works and is kept in this browser: keep its record from the debrief and hand that in.',
  'course.not-recorded':
    'The course platform did not take the result. The call is kept in this browser: keep its record from the debrief and hand that in.',
  'course.not-kept':
    'The course platform did not take the latest step. The next step tries again; in this browser all is kept.',
  'course.cut':
    'This is more than the course platform can hold of a call left half way: in this browser it goes on from the last step, on another device from step {n}.',
  'course.review': 'Your course has its result of this call already: what is done now is practice, and not recorded.',
  'course.unread': 'What the course platform kept of this call could not be read, so it begins anew.',
  'course.other-version':
    'What the course platform kept of this call is from another version of Underlawn and cannot go on here. The call begins anew.',
  'course.over': 'The session with your course has ended. To go on recording, open the call from the course again.',
  'course.again': 'Try again',
  'course.back': 'Back to the course',
};
