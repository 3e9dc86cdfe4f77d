/** The instructor's desk. */
export const instructor = {
  'instructor.title': 'Instructor’s desk',
};
