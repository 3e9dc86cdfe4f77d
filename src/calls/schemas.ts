/** Every file kind with a schema: what `npm run schemas` writes as JSON Schema for editors. */
import { householdSchema, unitSchema, weatherSchema } from '../unit/schema.ts';
import { roundSchema, yearSchema } from './round/schema.ts';
import { callSchema, recordSchema } from './schema.ts';

export const schemas = {
  unit: unitSchema,
  household: householdSchema,
  weather: weatherSchema,
  call: callSchema,
  record: recordSchema,
  round: roundSchema,
  year: yearSchema,
} as const;
