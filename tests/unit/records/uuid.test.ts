import { expect, it } from 'vitest';
import { uuid5 } from '../../../src/records/uuid.ts';

it('names are made into the identifiers that RFC 9562 works out, appendix A.4', () => {
  expect(uuid5('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe('2ed6657d-e927-568b-95e1-2665a8aea6a2');
  expect(() => uuid5('no uuid', 'x')).toThrow();
});
