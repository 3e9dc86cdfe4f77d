import type { instructor as en } from '../en/instructor.ts';

export const instructor: Record<keyof typeof en, string> = {
  'instructor.title': 'Mesa de quien instruye',
};
