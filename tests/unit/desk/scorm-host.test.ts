/** The page's side of SCORM against a platform that is looked for, refuses, or has the result already. */
import { describe, expect, it } from 'vitest';
import { NotTaken } from '../../../src/desk/platform/host.ts';
import { openScorm } from '../../../src/desk/platform/scorm.ts';
import { learnt } from '../records/taken.ts';

type Values = Record<string, string>;

/** A platform of SCORM 1.2 in a few lines; `refuses` tells what it does not take. */
class Platform {
  readonly calls: string[] = [];
  readonly values: Values;
  private readonly refuses: (name: string) => boolean;

  constructor(values: Values = {}, refuses: (name: string) => boolean = () => false) {
    this.values = { 'cmi.core.lesson_mode': 'normal', 'cmi.core.lesson_status': 'not attempted', ...values };
    this.refuses = refuses;
  }

  readonly api = {
    LMSInitialize: () => this.does('LMSInitialize'),
    LMSGetValue: (name: string) => this.values[name] ?? '',
    LMSSetValue: (name: string, value: string) => {
      if (this.refuses(name)) return 'false';
      this.values[name] = value;
      return 'true';
    },
    LMSCommit: () => this.does('LMSCommit'),
    LMSFinish: () => this.does('LMSFinish'),
  };

  private does(name: string): string {
    this.calls.push(name);
    return String(!this.refuses(name));
  }
}

/** Windows as far as the search goes; one of another host throws at a look. */
function windowOf(parts: { api?: object; parent?: object; opener?: object; foreign?: boolean }): Window {
  const made: Record<string, unknown> = { opener: parts.opener ?? null };
  made.parent = parts.parent ?? made;
  made.top = parts.parent === undefined ? made : (parts.parent as { top: unknown }).top;
  if (parts.foreign) {
    Object.defineProperty(made, 'API', {
      get() {
        throw new Error('another host');
      },
    });
  } else if (parts.api) made.API = parts.api;
  return made as unknown as Window;
}

const opened = (platform: Platform, mode: 'graded' | 'practice' = 'graded') =>
  openScorm('scorm12', 'storm-light', mode, windowOf({ parent: windowOf({ api: platform.api }) }));

describe('the platform’s object', () => {
  const { api } = new Platform();
  const at = (from: Window) => openScorm('scorm12', 'storm-light', 'graded', from) !== undefined;

  it('is found in this window, in one above, in the opener, and in one above the opener', () => {
    expect(at(windowOf({ api }))).toBe(true);
    expect(at(windowOf({ parent: windowOf({ parent: windowOf({ api }) }) }))).toBe(true);
    expect(at(windowOf({ opener: windowOf({ api }) }))).toBe(true);
    expect(at(windowOf({ parent: windowOf({ opener: windowOf({ parent: windowOf({ api }) }) }) }))).toBe(true);
  });

  it('is passed by where a window in between is of another host', () => {
    expect(at(windowOf({ parent: windowOf({ foreign: true, parent: windowOf({ api }) }) }))).toBe(true);
  });

  it('is not there where nobody has it, nor where it does not let us in', () => {
    expect(at(windowOf({ parent: windowOf({}) }))).toBe(false);
    expect(at(windowOf({ foreign: true }))).toBe(false);
    expect(at(windowOf({ api: new Platform({}, (name) => name === 'LMSInitialize').api }))).toBe(false);
  });
});

describe('a session', () => {
  it('begins as incomplete, keeps what is left with each step, and is finished once', async () => {
    const platform = new Platform();
    const host = opened(platform);
    expect(platform.values['cmi.core.lesson_status']).toBe('incomplete');
    await host?.keep('AbC');
    expect(platform.values).toMatchObject({ 'cmi.suspend_data': 'AbC', 'cmi.core.lesson_location': 'storm-light' });
    host?.leave(61.5, true);
    host?.leave(70, true);
    expect(platform.values).toMatchObject({ 'cmi.core.exit': 'suspend', 'cmi.core.session_time': '0000:01:01.50' });
    expect(platform.calls).toEqual(['LMSInitialize', 'LMSCommit', 'LMSCommit', 'LMSFinish']);
  });

  it('has its verdict taken where the platform takes no answers', async () => {
    const platform = new Platform({}, (name) => name.startsWith('cmi.interactions'));
    await opened(platform)?.end(learnt('storm-light', 'graded'));
    expect(platform.values).toMatchObject({ 'cmi.core.lesson_status': 'passed', 'cmi.suspend_data': '' });
    expect(platform.calls.at(-1)).toBe('LMSCommit');
  });

  it.each(['cmi.core.lesson_status', 'cmi.core.score.raw', 'LMSCommit'])(
    'says so where %s is refused',
    async (what) => {
      let refusing = false;
      const host = opened(new Platform({}, (name) => refusing && name === what));
      refusing = true;
      await expect(host?.end(learnt('storm-light', 'graded'))).rejects.toThrow(NotTaken);
    },
  );

  it.each([
    ['passed', 'graded', true],
    ['completed', 'graded', false],
    ['failed', 'graded', false],
    ['completed', 'practice', true],
    ['incomplete', 'practice', false],
  ] as const)('whose status is %s, %s, is settled: %s', (status, mode, settled) => {
    const platform = new Platform({ 'cmi.core.lesson_status': status, 'cmi.suspend_data': 'AbC' });
    const host = opened(platform, mode);
    expect(host?.settled).toBe(settled);
    expect(host?.left).toBe(settled ? '' : 'AbC');
    // A failed one stays so until there is another verdict.
    if (status === 'failed' || settled) expect(platform.values['cmi.core.lesson_status']).toBe(status);
  });

  it.each(['browse', 'review'])('in mode %s is settled', (mode) => {
    expect(opened(new Platform({ 'cmi.core.lesson_mode': mode }))?.settled).toBe(true);
  });
});
