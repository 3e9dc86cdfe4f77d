/** A platform that speaks cmi5, as far as one learner's launches need it: strict, in memory, gone with the test. */
import { broken, type Session, type Told } from '../../unit/records/cmi5/rules.ts';
import type { Answer, Asked } from './serve.ts';

const CORS = {
  'Access-Control-Allow-Origin': '*',
  'Access-Control-Allow-Methods': 'GET, PUT, POST',
  'Access-Control-Allow-Headers': 'authorization, content-type, x-experience-api-version',
};
const ACTOR = { objectType: 'Agent', account: { homePage: 'https://platform.example', name: 'learner-1' } };
const REGISTRATION = '3fa85f64-5717-4562-b3fc-2c963f66afa6';
const ACTIVITY = 'https://platform.example/activities/1';
const SESSION = 'https://w3id.org/xapi/cmi5/context/extensions/sessionid';
/** A launch tells far less. */
const MOST_STATEMENTS = 200;

interface Launched {
  readonly session: Session;
  readonly token: string;
  readonly told: Told[];
  readonly order: string[];
}

export class RecordStore {
  readonly launches: Launched[] = [];
  /** What was refused, and why: nothing, as it should be. */
  readonly refused: string[] = [];
  private readonly documents = new Map<string, string>();
  private readonly preferences: unknown;
  private readonly returnURL: string;

  constructor(preferences: unknown, returnURL: string) {
    this.preferences = preferences;
    this.returnURL = returnURL;
  }

  /** Query of the address that launches the unit once more in the same registration (8.1). */
  launch(base: string, publisherId: string, masteryScore: number): string {
    const n = this.launches.length + 1;
    const session: Session = {
      actor: ACTOR,
      registration: REGISTRATION,
      activityId: ACTIVITY,
      launchMode: 'Normal',
      masteryScore,
      contextTemplate: {
        extensions: { [SESSION]: `session-${n}` },
        contextActivities: { grouping: [{ id: publisherId }] },
      },
      earlier: this.launches.flatMap(({ told }) => told),
    };
    this.launches.push({ session, token: `token-${n}`, told: [], order: [] });
    return new URLSearchParams({
      activityId: ACTIVITY,
      registration: REGISTRATION,
      actor: JSON.stringify(ACTOR),
      fetch: `${base}/token/${n}`,
      endpoint: `${base}/xapi/`,
    }).toString();
  }

  /** A document that the unit has put here. */
  kept(name: string): string | undefined {
    return this.documents.get(name);
  }

  answer({ method, url, headers, body }: Asked): Answer | undefined {
    if (method === 'OPTIONS') return { status: 204, headers: CORS };
    const n = /^\/token\/(\d+)$/.exec(url.pathname)?.[1];
    if (n !== undefined) return this.token(method, this.launches[Number(n) - 1]);
    const launched = this.launches.at(-1);
    const authorized = launched && headers.authorization === `Basic ${launched.token}`;
    if (!authorized || headers['x-experience-api-version'] !== '1.0.3')
      return this.no(401, `${method} ${url.pathname}`);
    switch (`${method} ${url.pathname}`) {
      case 'GET /xapi/activities/state':
        return this.state(launched, url);
      case 'PUT /xapi/activities/state':
        return this.putState(launched, url, body);
      case 'GET /xapi/agents/profile':
        launched.order.push('preferences');
        return this.ownAgent(url, launched) && url.searchParams.get('profileId') === 'cmi5LearnerPreferences'
          ? this.yes(this.preferences)
          : this.no(400, 'profile');
      case 'POST /xapi/statements':
        return this.statements(launched, JSON.parse(body) as readonly Told[]);
      default:
        return this.no(404, `${method} ${url.pathname}`);
    }
  }

  /** Given once (8.2.3). */
  private token(method: string, launched: Launched | undefined): Answer {
    if (method !== 'POST' || !launched) return this.no(405, 'token');
    if (launched.order.includes('token')) return this.yes({ 'error-code': '1', 'error-text': 'already in use' });
    launched.order.push('token');
    return this.yes({ 'auth-token': launched.token });
  }

  private state(launched: Launched, url: URL): Answer {
    if (!this.ownAgent(url, launched)) return this.no(400, 'state');
    const name = url.searchParams.get('stateId') ?? '';
    launched.order.push(name);
    if (name !== 'LMS.LaunchData') {
      const found = this.documents.get(name);
      return found === undefined ? { status: 404, headers: CORS } : { status: 200, body: found, headers: CORS };
    }
    const { contextTemplate, launchMode, masteryScore } = launched.session;
    return this.yes({ contextTemplate, launchMode, masteryScore, moveOn: 'Passed', returnURL: this.returnURL });
  }

  /** The platform's own document is not to be touched (10.2.1). */
  private putState(launched: Launched, url: URL, body: string): Answer {
    const name = url.searchParams.get('stateId') ?? '';
    if (!this.ownAgent(url, launched) || name === 'LMS.LaunchData') return this.no(403, `PUT ${name}`);
    this.documents.set(name, body);
    return { status: 204, headers: CORS };
  }

  private statements(launched: Launched, statements: readonly Told[]): Answer {
    for (const one of statements) {
      const faults = broken(one, launched.session, launched.told);
      if (faults.length > 0 || launched.told.length >= MOST_STATEMENTS)
        return this.no(400, `${one.verb.id}: ${faults}`);
      launched.told.push(one);
    }
    launched.order.push(...statements.map(({ verb }) => verb.id.replace(/^.*\//, '')));
    return this.yes(statements.map(({ id }) => id));
  }

  private ownAgent(url: URL, { session }: Launched): boolean {
    const asked = url.searchParams;
    const registration = asked.get('registration');
    return (
      asked.get('agent') === JSON.stringify(session.actor) &&
      (registration === null || registration === session.registration)
    );
  }

  private yes(value: unknown): Answer {
    return { status: 200, body: JSON.stringify(value), headers: CORS };
  }

  private no(status: number, what: string): Answer {
    this.refused.push(what);
    return { status, body: '{}', headers: CORS };
  }
}
