/** The parts of `docs/control-model.md` and `docs/control-coverage.md` that are made from the specifications. */
import { readFileSync, writeFileSync } from 'node:fs';
import { extentTable, pageExtents } from '../../browser/walk/extents.ts';
import { type Caught, catching } from './caught.ts';
import { drawings } from './drawings.ts';
import { planOf } from './paths.ts';
import { PROMISES } from './promises.ts';
import { type Promised, SOUND } from './vocabulary.ts';
import type { Row } from './walk.ts';
import { WIRING_ERRORS } from './wiring-errors.ts';

export const MODEL_PAGE = 'docs/control-model.md';
export const COVERAGE_PAGE = 'docs/control-coverage.md';

/** How much one walk has to go through. */
export type Extent = Pick<Row, 'promise' | 'unit' | 'fault' | 'states' | 'transitions' | 'paths' | 'steps'>;

export const faultsOf = ({ faults }: Promised): readonly string[] => [SOUND, ...Object.keys(faults)];

/** What every walk of every promise has to go through, without walking it. */
function extents(): Extent[] {
  return PROMISES.flatMap((promised) =>
    faultsOf(promised).map((fault): Extent => {
      const { edges, transitions, paths } = planOf(promised, fault);
      const steps = paths.reduce((sum, path) => sum + path.length, 0);
      const { name, unit } = promised;
      return { promise: name, unit, fault, states: edges.size, transitions, paths: paths.length, steps };
    }),
  );
}

/** Every walk in a line, and the sums of every promise: for the two pages. */
export function coverageTables(walks: readonly Extent[]): { every: string; sums: string } {
  const groups = new Map<string, Extent[]>();
  for (const walk of walks) {
    const key = `${walk.promise} ${walk.unit}`;
    groups.set(key, [...(groups.get(key) ?? []), walk]);
  }
  const sums = [...groups.values()].map((group) => {
    const faults = group.length - 1;
    return summed(group, { fault: `sound, ${faults} ${faults === 1 ? 'fault' : 'faults'}` });
  });
  const total = summed(walks, { promise: 'all', unit: '', fault: `${walks.length} walks` });
  return { every: table(walks), sums: table([...sums, total]) };
}

function summed(group: readonly Extent[], name: Partial<Extent>): Extent {
  const [first] = group as [Extent, ...Extent[]];
  const sum = (of: 'states' | 'transitions' | 'paths' | 'steps') => group.reduce((s, e) => s + e[of], 0);
  return {
    ...first,
    ...name,
    states: sum('states'),
    transitions: sum('transitions'),
    paths: sum('paths'),
    steps: sum('steps'),
  };
}

function table(lines: readonly Extent[]): string {
  return [
    '| promise | unit | walk | states | transitions | paths | steps | covered |',
    '|---|---|---|--:|--:|--:|--:|--:|',
    ...lines.map(
      (e) =>
        `| ${e.promise} | ${e.unit} | ${e.fault} | ${e.states} | ${e.transitions} | ${e.paths} | ${e.steps} | 100 % |`,
    ),
  ].join('\n');
}

export function errorLine({ error, shortest, seen }: Caught): string {
  const walk = error.fault ? `${error.breaks}, ${error.fault}` : error.breaks;
  return `| ${error.error} | ${error.unit} | ${walk} | ${shortest.join(' > ')} | ${seen} |`;
}

function wiringErrors(): string {
  const head = [
    '| error | unit | walk that catches it | shortest way to it | what is seen there |',
    '|---|---|---|---|---|',
  ];
  return [...head, ...WIRING_ERRORS.map((e) => errorLine(catching(e)))].join('\n');
}

/** A page with what stands between the marks of a section replaced. */
export function withSection(page: string, section: string, text: string): string {
  const open = `<!-- made by npm run diagrams: ${section} -->`;
  const close = `<!-- end of ${section} -->`;
  const [before, rest] = page.split(open);
  const after = rest?.split(close)[1];
  if (before === undefined || after === undefined) throw new Error(`${MODEL_PAGE} has no section "${section}"`);
  return `${before}${open}\n\n${text}\n\n${close}${after}`;
}

export function writePages(): void {
  const { every, sums } = coverageTables(extents());
  let page = readFileSync(MODEL_PAGE, 'utf8');
  page = withSection(page, 'coverage', sums);
  page = withSection(page, 'page walk', extentTable(pageExtents()));
  page = withSection(page, 'wiring errors', wiringErrors());
  page = withSection(page, 'diagrams', drawings());
  writeFileSync(MODEL_PAGE, page);
  writeFileSync(COVERAGE_PAGE, coveragePage(every));
}

export function coveragePage(every: string): string {
  return `# Coverage of the control model

Every walk of every promise, made by \`npm run diagrams\`; what it means stands in [control-model.md](control-model.md).

${every}
`;
}
