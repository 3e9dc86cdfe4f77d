/** What a platform hands over at a launch by cmi5: parameters of the address, and a document of launch data. */
import * as z from 'zod/mini';
import { isUuid } from '../uuid.ts';

/** The learner as the platform names it: handed back as it came, and read by nobody here. */
export type Agent = Readonly<Record<string, unknown>>;

export interface Launch {
  /** Ends in a stroke. */
  readonly endpoint: string;
  /** Gives the token, once. */
  readonly tokenUrl: string;
  readonly actor: Agent;
  readonly registration: string;
  readonly activityId: string;
}

/** Launch parameters may stand in any order, among others (cmi5 8.1). Undefined where one is missing or is none. */
export function readLaunch(parameters: ReadonlyMap<string, string>): Launch | undefined {
  const get = (name: string) => parameters.get(name) ?? '';
  const [endpoint, tokenUrl, activityId] = [get('endpoint'), get('fetch'), get('activityId')];
  const actor = agentIn(get('actor'));
  const registration = get('registration');
  const whole = [endpoint, tokenUrl].every((url) => /^https?:\/\/./.test(url)) && isIri(activityId);
  if (!whole || !actor || !isUuid(registration)) return undefined;
  return { endpoint: endpoint.replace(/\/*$/, '/'), tokenUrl, actor, registration, activityId };
}

/** Cmi5 9.2: an agent with an account. */
function agentIn(json: string): Agent | undefined {
  try {
    const value: unknown = JSON.parse(json);
    return agent.safeParse(value).success ? (value as Agent) : undefined;
  } catch {
    return undefined;
  }
}

const agent = z.looseObject({
  objectType: z.literal('Agent'),
  account: z.looseObject({ homePage: z.string(), name: z.string() }),
});

/** Whether it is absolute, with a scheme (cmi5 3.0: no references). */
export function isIri(text: string): boolean {
  return /^[a-z][a-z0-9+.-]*:\S+$/i.test(text);
}

const activities = z.array(z.looseObject({ id: z.string() }));

const launchData = z.looseObject({
  contextTemplate: z.looseObject({
    contextActivities: z.optional(
      z.looseObject({
        grouping: z.optional(activities),
        category: z.optional(activities),
        parent: z.optional(activities),
        other: z.optional(activities),
      }),
    ),
    extensions: z.looseObject({}),
  }),
  launchMode: z.enum(['Normal', 'Browse', 'Review']),
  masteryScore: z.optional(z.number().check(z.gte(0), z.lte(1))),
  moveOn: z.string(),
  returnURL: z.optional(z.string()),
});

/** The document `LMS.LaunchData` of the State API (cmi5 10). */
export type LaunchData = z.infer<typeof launchData>;

/** Undefined where it is not what the platform must give. */
export function readLaunchData(given: unknown): LaunchData | undefined {
  const checked = launchData.safeParse(given);
  return checked.success && typeof checked.data.contextTemplate.extensions[SESSION] === 'string'
    ? checked.data
    : undefined;
}

export const LAUNCH_DATA = 'LMS.LaunchData';
export const PREFERENCES = 'cmi5LearnerPreferences';
/** Extension of the context: the platform's name for this session. */
export const SESSION = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid';

export interface Preferences {
  readonly language: 'en' | 'es' | undefined;
  readonly sound: boolean | undefined;
}

/** What the learner prefers, as far as it is said and spoken here (cmi5 11). Anything else is left alone. */
export function readPreferences(given: unknown): Preferences {
  const { languagePreference, audioPreference } = (given ?? {}) as Readonly<Record<string, unknown>>;
  const tags = typeof languagePreference === 'string' ? languagePreference.split(',') : [];
  const spoken = tags.map((tag) => tag.trim().slice(0, 2).toLowerCase());
  return {
    language: spoken.find((one): one is 'en' | 'es' => one === 'en' || one === 'es'),
    sound: audioPreference === 'on' ? true : audioPreference === 'off' ? false : undefined,
  };
}
