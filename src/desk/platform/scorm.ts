/** A platform that speaks SCORM, 1.2 or 2004: an object with functions, in a window above this one or in the one that opened it. */
import type { Learnt } from '../../records/learnt/learnt.ts';
import { ended12, left12, type Setting, suspended12 } from '../../records/scorm/scorm12.ts';
import { ended2004, left2004, suspended2004 } from '../../records/scorm/scorm2004.ts';
import { type Host, NotTaken } from './host.ts';

type Api = Readonly<Record<string, (...args: readonly string[]) => unknown>>;

/** What differs between the versions. */
interface Version {
  readonly object: 'API' | 'API_1484_11';
  /** Before each function's name, and how the two have other names. */
  readonly names: Readonly<Record<'initialize' | 'get' | 'set' | 'commit' | 'terminate', string>>;
  readonly mode: string;
  readonly status: readonly string[];
  readonly begun: Setting;
  readonly suspended: (activity: string, kept: string) => readonly Setting[];
  readonly ended: (learnt: Learnt, from: number) => readonly Setting[];
  readonly left: (duration_s: number, halfWay: boolean) => readonly Setting[];
}

const V12: Version = {
  object: 'API',
  names: {
    initialize: 'LMSInitialize',
    get: 'LMSGetValue',
    set: 'LMSSetValue',
    commit: 'LMSCommit',
    terminate: 'LMSFinish',
  },
  mode: 'cmi.core.lesson_mode',
  status: ['cmi.core.lesson_status'],
  begun: ['cmi.core.lesson_status', 'incomplete'],
  suspended: suspended12,
  ended: ended12,
  left: left12,
};

const V2004: Version = {
  object: 'API_1484_11',
  names: { initialize: 'Initialize', get: 'GetValue', set: 'SetValue', commit: 'Commit', terminate: 'Terminate' },
  mode: 'cmi.mode',
  status: ['cmi.completion_status', 'cmi.success_status'],
  begun: ['cmi.completion_status', 'incomplete'],
  suspended: suspended2004,
  ended: ended2004,
  left: left2004,
};

/** Opens the session; undefined where no platform is there or it does not let us in. */
export function openScorm(
  as: 'scorm12' | 'scorm2004',
  activity: string,
  mode: 'graded' | 'practice',
  from: Window = window,
) {
  const version = as === 'scorm12' ? V12 : V2004;
  const api = findApi(version.object, from);
  if (api === undefined) return undefined;
  const session = new ScormSession(version, api, activity, mode);
  return session.opened ? session : undefined;
}

/** Parents up to this many, so that a loop of frames ends. */
const MOST_PARENTS = 500;

/** In a window above, else in the opener's and those above it (SCORM 1.2 RTE 3.3.6*; 2004 4th Ed. RTE 3.3.1*). */
function findApi(name: Version['object'], from: Window): Api | undefined {
  const opener = within<Window | null>(() => from.top?.opener ?? from.opener);
  return searched(name, from) ?? (opener ? searched(name, opener) : undefined);
}

function searched(name: Version['object'], from: Window): Api | undefined {
  let at = from;
  for (let i = 0; i < MOST_PARENTS; i++) {
    const found = within(() => (at as unknown as Readonly<Record<string, Api | null | undefined>>)[name]);
    if (found) return found;
    if (at.parent === at) return undefined;
    at = at.parent;
  }
  return undefined;
}

/** A window of another host lets nobody look in: there is nothing of ours. */
function within<T>(look: () => T): T | undefined {
  try {
    return look();
  } catch {
    return undefined;
  }
}

const DONE = { graded: ['passed'], practice: ['passed', 'completed'] } as const;

class ScormSession implements Host {
  readonly opened: boolean;
  readonly left: string;
  readonly settled: boolean;
  readonly wishes = {};
  private readonly version: Version;
  private readonly api: Api;
  private readonly activity: string;
  private over = false;

  constructor(version: Version, api: Api, activity: string, mode: 'graded' | 'practice') {
    this.version = version;
    this.api = api;
    this.activity = activity;
    this.opened = this.does('initialize', '');
    const status = this.opened ? version.status.map((element) => this.get(element)) : [];
    const looking = ['browse', 'review'].includes(this.opened ? this.get(version.mode) : '');
    this.settled = looking || status.some((one) => DONE[mode].some((done) => done === one));
    this.left = this.opened && !this.settled ? this.get('cmi.suspend_data') : '';
    if (this.opened && !this.settled && !status.includes('failed')) this.set(version.begun);
  }

  async keep(text: string): Promise<void> {
    this.write(this.version.suspended(this.activity, text));
  }

  async end(learnt: Learnt): Promise<void> {
    const from = Number(this.get('cmi.interactions._count')) || 0;
    const all = this.version.ended(learnt, from);
    const asked = (element: string) => element.startsWith('cmi.interactions.');
    // Not every platform takes answers; the verdict does not hang on them.
    for (const setting of all.filter(([element]) => asked(element))) if (!this.set(setting)) break;
    const verdict = all.filter(([element]) => !asked(element));
    this.write([...verdict, ...this.version.suspended(this.activity, '')]);
  }

  leave(duration_s: number, halfWay: boolean): void {
    if (this.over) return;
    this.over = true;
    for (const setting of this.version.left(duration_s, halfWay)) this.set(setting);
    this.does('commit', '');
    this.does('terminate', '');
  }

  /** Sets all, and has it written through. */
  private write(settings: readonly Setting[]): void {
    const refused = settings.find((setting) => !this.set(setting));
    const committed = this.does('commit', '');
    if (refused) throw new NotTaken(refused[0]);
    if (!committed) throw new NotTaken('commit');
  }

  private set([element, value]: Setting): boolean {
    return this.does('set', element, value);
  }

  private get(element: string): string {
    const { [this.version.names.get]: get } = this.api;
    return String(within(() => get?.call(this.api, element)) ?? '');
  }

  private does(name: keyof Version['names'], ...args: readonly string[]): boolean {
    const { [this.version.names[name]]: call } = this.api;
    return String(within(() => call?.apply(this.api, [...args])) ?? '') === 'true';
  }
}
