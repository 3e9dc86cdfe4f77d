/** Files that are spoiled in one place each, and that libxml2 has to refuse for what is wrong with them. */
import { beforeAll, describe, expect, it } from 'vitest';
import { type Fault, faultsBy } from './restated.ts';

export interface Spoiled {
  readonly what: string;
  readonly find: RegExp;
  readonly instead: string;
  readonly says: RegExp;
}

export const outside = (value: string): RegExp => new RegExp(`'${value}' is not an element of the set`);
export const lacks = (attribute: string): RegExp => new RegExp(`attribute '${attribute}' is required`);
export const unmatched = (value: string): RegExp => new RegExp(`No match found for key-sequence \\['${value}'\\]`);

/** All by one schema are looked at in one go: libxml2 takes longer to start than to read. */
export function refuses<Of extends Spoiled>(
  schema: string,
  what: string,
  table: readonly Of[],
  good: (one: Of) => string,
): void {
  describe(`${what}, is refused:`, () => {
    const name = (one: Of) => `${table.indexOf(one)}.xml`;
    let faults: readonly Fault[] = [];
    beforeAll(async () => {
      const bad = table.map((one) => [name(one), good(one).replace(one.find, one.instead)] as const);
      faults = await faultsBy(schema, new Map(bad));
    });

    it.each(table.map((one) => [one.what, one] as const))('%s', (_what, one) => {
      const before = good(one);
      expect(before.replace(one.find, one.instead)).not.toBe(before);
      const said = faults.filter(({ file }) => file === name(one)).map(({ says }) => says);
      expect(said.join('\n')).toMatch(one.says);
    });
  });
}
