/** A platform that speaks cmi5: it hands over at the launch where its record store is, and is told in statements of xAPI. */
import { config } from 'zod/mini';
import {
  LAUNCH_DATA,
  type Launch,
  type LaunchData,
  PREFERENCES,
  readLaunch,
  readLaunchData,
  readPreferences,
} from '../../records/cmi5/launch.ts';
import { type Before, ended, initialized, type Statement, terminated } from '../../records/cmi5/statements.ts';
import type { Learnt } from '../../records/learnt/learnt.ts';
import { TEXT, text } from '../../records/limits.ts';
import { fields, flag, text as isText, type ShapeOf } from '../shape.ts';
import { type Host, NotTaken } from './host.ts';

// The page's policy forbids building code from text, which the validator would otherwise try.
config({ jitless: true });

/** A platform that has not answered by then is taken to be silent. */
const PATIENCE_ms = 15_000;
/** Name of our own document beside the platform's. */
const OURS = 'underlawn';

const Ours = fields({ left: isText, completed: flag, passed: flag });

/** Opens the session as the standard has it: token, launch data, preferences, then the first statement (cmi5 8.2, 10, 11, 7.1.1). */
export async function openCmi5(
  search: string,
  activity: string,
  mode: 'graded' | 'practice',
  now: () => number,
): Promise<Host | undefined> {
  const launch = readLaunch(new Map(new URLSearchParams(search)));
  if (launch === undefined) return undefined;
  try {
    const store = new RecordStore(launch, await tokenFrom(launch.tokenUrl));
    const data = readLaunchData(await store.state(LAUNCH_DATA));
    if (data === undefined) return undefined;
    const preferences = readPreferences(await store.preferences());
    const kept = await store.state(OURS);
    const before = Ours(kept) ? kept : { left: '', completed: false, passed: false };
    const host = new Cmi5Session({ store, launch, data, activity, now }, before, mode, preferences);
    await host.begin();
    return host;
  } catch (error) {
    console.warn(error);
    return undefined;
  }
}

/** Asked for once, by POST (8.2.1). */
async function tokenFrom(url: string): Promise<string> {
  const reply = await fetch(url, { method: 'POST', signal: AbortSignal.timeout(PATIENCE_ms) });
  const { 'auth-token': token } = (await reply.json()) as Readonly<Record<string, unknown>>;
  if (typeof token !== 'string') throw new NotTaken('token');
  return token;
}

interface Parts {
  readonly store: RecordStore;
  readonly launch: Launch;
  readonly data: LaunchData;
  readonly activity: string;
  readonly now: () => number;
}

class Cmi5Session implements Host {
  readonly left: string;
  readonly settled: boolean;
  readonly wishes: Host['wishes'];
  readonly returnTo?: string;
  private readonly parts: Parts;
  private kept: ShapeOf<typeof Ours>;
  private over = false;

  constructor(
    parts: Parts,
    kept: ShapeOf<typeof Ours>,
    mode: 'graded' | 'practice',
    { language, sound }: ReturnType<typeof readPreferences>,
  ) {
    this.parts = parts;
    this.kept = kept;
    const { launchMode, returnURL } = parts.data;
    this.settled = launchMode !== 'Normal' || kept.passed || (mode === 'practice' && kept.completed);
    this.left = this.settled ? '' : kept.left;
    this.wishes = { ...(language ? { language } : {}), ...(sound === undefined ? {} : { sound }) };
    // Nothing but a place to go to: an address that would be run as a script is none.
    if (returnURL !== undefined && /^https?:\/\//.test(returnURL)) this.returnTo = returnURL;
  }

  begin(): Promise<void> {
    const { store, now } = this.parts;
    return store.tell([initialized(this.parts, now())]);
  }

  async keep(left: string): Promise<void> {
    this.kept = { ...this.kept, left: text(TEXT.suspendedState, left) };
    await this.parts.store.putState(OURS, this.kept);
  }

  async end(learnt: Learnt): Promise<void> {
    const { store } = this.parts;
    const before: Before = this.kept;
    const { answers, defined } = ended(this.parts, learnt, before);
    await store.tell(defined);
    const passed = before.passed || defined.some(({ result }) => result?.success === true);
    this.kept = { left: '', completed: true, passed };
    await store.putState(OURS, this.kept);
    // The verdict does not hang on whether the store takes what was answered.
    await store.tell(answers).catch(console.warn);
  }

  leave(duration_s: number): void {
    if (this.over) return;
    this.over = true;
    const { store, now } = this.parts;
    store.tell([terminated(this.parts, now(), duration_s)], true).catch(console.warn);
  }
}

/** The record store behind the endpoint, with the token in every request. */
class RecordStore {
  private readonly launch: Launch;
  private readonly token: string;

  constructor(launch: Launch, token: string) {
    this.launch = launch;
    this.token = token;
  }

  /** A document of this activity, learner and registration; undefined where there is none. */
  state(name: string): Promise<unknown> {
    return this.read(`activities/state?${this.stateOf(name)}`);
  }

  async putState(name: string, value: unknown): Promise<void> {
    await this.send('PUT', `activities/state?${this.stateOf(name)}`, value);
  }

  preferences(): Promise<unknown> {
    const query = new URLSearchParams({ profileId: PREFERENCES, agent: JSON.stringify(this.launch.actor) });
    return this.read(`agents/profile?${query}`);
  }

  /** `going`: the page may be gone before the answer comes. */
  async tell(statements: readonly Statement[], going = false): Promise<void> {
    if (statements.length > 0) await this.send('POST', 'statements', statements, going);
  }

  private stateOf(stateId: string): URLSearchParams {
    const { activityId, actor, registration } = this.launch;
    return new URLSearchParams({ stateId, activityId, agent: JSON.stringify(actor), registration });
  }

  private async read(path: string): Promise<unknown> {
    const reply = await this.ask(path, { method: 'GET' });
    // What a platform does not have or does not give is as if it were not there.
    if (reply.status === 404 || reply.status === 403) return undefined;
    if (!reply.ok) throw new NotTaken(`${reply.status}`);
    return reply.json();
  }

  private async send(method: 'PUT' | 'POST', path: string, value: unknown, going = false): Promise<void> {
    const body = JSON.stringify(value);
    const reply = await this.ask(path, { method, body, keepalive: going });
    if (!reply.ok) throw new NotTaken(`${reply.status}`);
  }

  private async ask(path: string, init: RequestInit): Promise<Response> {
    const headers = {
      Authorization: `Basic ${this.token}`,
      'Content-Type': 'application/json',
      'X-Experience-API-Version': '1.0.3',
    };
    try {
      const signal = init.keepalive ? null : AbortSignal.timeout(PATIENCE_ms);
      return await fetch(`${this.launch.endpoint}${path}`, { ...init, headers, signal });
    } catch (error) {
      throw new NotTaken(String(error));
    }
  }
}
