/**
 * The requirements of cmi5 by their numbers in `@cmi5/requirements`: which of them are a unit's or a course structure's, and
 * what shows that they are kept. All others are the platform's.
 */
import requirements from '@cmi5/requirements/requirements.json' with { type: 'json' };
import { RULES } from './rules.ts';

const TEXTS = requirements as Readonly<Record<string, { readonly txt: string }>>;

/** Tests that show it, by name; rules are held against every statement of every session that a test tells. */
const TESTED: Readonly<Record<string, string>> = {
  '4.4.0.0-1': 'packages: "the course structure of cmi5"; schema: "is valid, of all calls that ship"',
  '4.4.0.0-2': 'packages: "the course structure of cmi5"',
  '7.0.0.0-1': 'browser: "tells its platform of a call in two sessions"',
  '7.0.0.0-3': 'browser: "tells its platform of a call in two sessions"',
  '7.0.0.0-4': 'browser: "tells its platform of a call in two sessions"',
  '8.1.0.0-6': 'packages: "the course structure of cmi5": addresses have no query of their own',
  '8.1.0.0-7': 'statements: "is read from its parameters in any order"',
  '8.1.1.0-2': 'statements: "is read from its parameters in any order"',
  '8.1.1.0-3': 'browser: the record store is at no other address',
  '8.1.2.0-3': 'statements: "is read from its parameters in any order"',
  '8.1.2.0-4': 'browser: the store gives its token to a POST only',
  '8.1.2.0-5': 'browser: the store refuses what comes without the token',
  '8.1.3.0-2': 'statements: "is read from its parameters in any order"',
  '8.1.4.0-2': 'statements: "is read from its parameters in any order"',
  '8.1.5.0-5': 'statements: "is read from its parameters in any order"',
  '8.2.1.0-2': 'browser: the store gives its token to a POST only, once',
  '8.2.1.0-5': 'browser: the store refuses what comes without "Basic" and the token',
  '8.2.2.0-4': 'browser: the store gives its token to a POST only, once',
  '8.2.2.0-5': 'browser: the store refuses what comes without the token',
  '9.3.3.0-1': 'statements: "with a passed call keeps every rule"',
  '9.3.4.0-1': 'statements: "with a passed call keeps every rule"',
  '9.3.5.0-1': 'statements: "with a call that is not passed keeps every rule"',
  '9.3.8.0-1': 'browser: terminated is told when the page goes',
  '10.2.1.0-5': 'browser: the store refuses a write to the platform’s own document',
  '10.2.2.0-1': 'statements: "with a passed call keeps every rule"',
  '10.2.2.0-6': 'statements: "with a passed call keeps every rule"',
  '10.2.2.0-7': 'statements: "with a passed call keeps every rule"',
  '10.2.2.0-8': 'statements: "in mode Browse tells nothing but its two ends"',
  '10.2.2.0-10': 'statements: "in mode Review tells nothing but its two ends"',
  '10.2.6.0-1': 'browser: back to the course goes to the returnURL (a page that is closed by hand goes nowhere)',
  '11.0.0.0-1': 'browser: the store refuses preferences of another agent',
  '11.0.0.0-3': 'browser: preferences are fetched before the first statement',
  '11.0.0.0-4': 'browser: the store knows preferences by that name only',
  '11.2.0.0-1': 'statements: "has preferences"; the page sets its sound by it before the first screen',
  '13.1.4.0-1': 'packages: "the course structure of cmi5": each id once; schema: "the same unit twice" is refused',
  '13.1.4.0-2': 'packages: "the course structure of cmi5": addresses',
  '13.2.0.0-1':
    'packages: "is named cmi5.xml at the root, in its namespace"; schema: "is valid, of all calls that ship"',
  '14.1.0.0-1': 'packages: "are zipped as the format has it"',
  '14.1.0.0-2': 'packages: "the course structure of cmi5"',
  '14.1.0.0-3': 'packages: "the course structure of cmi5": addresses are relative and in the package',
};

/** What a unit could do and this one does not, so that nothing is asked of it. */
const NOT_OURS: Readonly<Record<string, string>> = {
  '11.0.0.0-2': 'preferences are never written',
  '11.0.0.0-5': 'preferences are never written',
  '11.1.0.0-1': 'preferences are never written',
  '11.1.0.0-2': 'preferences are never written',
  '13.1.2.0-1': 'no blocks',
  '13.1.3.0-1': 'no objectives',
  '13.1.5.0-1': 'no elements of our own',
  '13.1.5.0-2': 'no elements of our own',
  '14.1.0.0-4': 'all media are in the package',
  '14.2.0.0-1': 'always a zip',
};

/** Requirements that speak of the platform, though they do not begin with its name. */
const PLATFORMS_OWN: readonly string[] = [
  ...['8.1.0.0-1', '8.1.0.0-2', '8.1.0.0-3', '8.1.0.0-4', '8.1.0.0-5', '8.1.0.0-8', '8.1.2.0-2', '8.1.5.0-3'],
  ...['8.2.1.0-3', '8.2.1.0-4', '8.2.1.0-6', '8.2.2.0-2', '8.2.2.0-3', '8.2.3.0-1', '8.2.3.2-1', '9.2.0.0-1'],
  ...['9.3.0.0-10', '9.3.0.0-11', '9.3.2.0-1', '9.3.7.0-2', '9.3.8.0-4', '9.3.9.0-2', '9.3.9.0-4', '9.3.9.0-6'],
  ...['9.3.9.0-8', '9.3.9.0-9', '9.5.4.2-1', '9.5.4.2-2', '9.6.3.1-1', '10.1.0.0-1', '10.1.0.0-2', '10.1.0.0-3'],
  ...['10.1.0.0-4', '10.1.0.0-5', '10.2.1.0-2', '10.2.1.0-3', '13.1.0.0-1', '13.1.4.0-3', '14.0.0.0-1'],
];

export interface Covered {
  readonly id: string;
  readonly text: string;
  readonly by: string;
}

const RULE_OF = new Map(RULES.flatMap(({ ids, rule }) => ids.map((id) => [id, `rule: ${rule}`] as const)));

function byOf(id: string): string | undefined {
  return [RULE_OF.get(id), TESTED[id]].filter((one) => one !== undefined).join('; ') || undefined;
}

const all = Object.entries(TEXTS).map(([id, { txt }]) => ({ id, text: txt.replaceAll(/\s+/g, ' ') }));

/** A number with `(d…)` says what the platform makes of the one without. */
const isPlatforms = ({ id, text }: { id: string; text: string }) =>
  / \(d\d*\)$/.test(id) || PLATFORMS_OWN.includes(id) || (/^(?:The )?LMS /.test(text) && !(id in TESTED));

export const MET: readonly Covered[] = all.flatMap((one) => {
  const by = isPlatforms(one) ? undefined : byOf(one.id);
  return by === undefined ? [] : [{ ...one, by }];
});
export const DO_NOT_APPLY: readonly Covered[] = all.flatMap((one) => {
  const { [one.id]: by } = NOT_OURS;
  return by === undefined ? [] : [{ ...one, by }];
});
export const PLATFORMS = all.filter(isPlatforms);
export const OPEN = all.filter(({ id }) => ![...MET, ...DO_NOT_APPLY, ...PLATFORMS].some((one) => one.id === id));
/** Numbers that are named here and that there are not. */
export const UNKNOWN = [...RULE_OF.keys(), ...Object.keys(TESTED), ...Object.keys(NOT_OURS), ...PLATFORMS_OWN].filter(
  (id) => !(id in TEXTS),
);

/** The table as the documentation has it. */
export function coverageTable(): string {
  const row = ({ id, text, by }: Covered) => `| ${id} | ${text.replaceAll('|', '\\|')} | ${by} |`;
  return [
    '| Number | Requirement | Shown by |',
    '|---|---|---|',
    ...MET.map(row),
    ...DO_NOT_APPLY.map((one) => row({ ...one, by: `does not apply: ${one.by}` })),
    '',
    `${MET.length} of the ${all.length} requirements are a unit's or a course structure's and are met, ${DO_NOT_APPLY.length} do not apply, ${PLATFORMS.length} are the platform's.`,
  ].join('\n');
}
