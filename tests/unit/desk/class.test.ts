import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { type CallFile, makeRecord, play, prepareCall, shippedCalls } from '../../../src/calls/index.ts';
import { readChosen, whoOf } from '../../../src/desk/class/files.ts';
import { answersIn, type Held, renamed, sheetOf } from '../../../src/desk/class/held.ts';
import { Marker } from '../../../src/desk/class/marker.ts';
import { LONGEST_ms, type MarkPort, markAll, workersFor } from '../../../src/desk/class/pool.ts';
import type { MarkReply, MarkRequest } from '../../../src/desk/class/protocol.ts';
import type { Handed, Marked } from '../../../src/records/marked.ts';
import { fileText } from '../../../src/share/index.ts';
import { sat } from '../quiz/sat.ts';
import { speakAll } from '../spoken.ts';

const storm = shippedCalls().find((c) => c.id === 'storm-light') as CallFile;
const recordOf = (call: CallFile) => JSON.stringify(makeRecord(play(prepareCall(call), 'reset-only')));

const counts = (who: string, call = 'storm-light'): Marked => ({
  state: 'counts',
  who,
  call,
  passed: true,
  score: 80,
  minutes: 30,
  money_usd: 0,
  flags: [],
  short: [],
  mode: 'practice',
  helped: false,
  taught: false,
  deeds: who,
});

/** A worker that answers when it is told to. */
class Port implements MarkPort {
  asked: Handed[] = [];
  brought: ReadonlyMap<string, string> | undefined;
  ended = false;
  private readonly on = new Map<string, (event: MessageEvent) => void>();

  postMessage(request: MarkRequest): void {
    if (request.kind === 'brought') this.brought = request.texts;
    else this.asked.push(request.handed);
  }
  addEventListener(type: string, on: (event: MessageEvent) => void): void {
    this.on.set(type, on);
  }
  terminate(): void {
    this.ended = true;
  }
  answer(): void {
    this.on.get('message')?.({ data: counts(this.asked.at(-1)?.who ?? '') } as MessageEvent);
  }
  break(): void {
    this.on.get('error')?.({} as MessageEvent);
  }
}

function begin(names: readonly string[], workers: number) {
  const ports: Port[] = [];
  const came = new Map<number, MarkReply>();
  const cancel = markAll(
    names.map((who) => ({ who, text: '' })),
    {
      start: () => ports[ports.push(new Port()) - 1] as Port,
      workers,
      brought: new Map([['my-call', 'its file']]),
      heard(at, marked) {
        expect(came.has(at)).toBe(false);
        came.set(at, marked);
      },
    },
  );
  return { ports, came, cancel };
}

describe('the workers of a class', () => {
  beforeEach(() => void vi.useFakeTimers());
  afterEach(() => void vi.useRealTimers());

  it('are one fewer than there are processors, at least one and at most four', () => {
    expect([1, 2, 3, 5, 16].map(workersFor)).toEqual([1, 1, 2, 4, 4]);
  });

  it('get a record each, the next when one is done, and end when there is none left', () => {
    const { ports, came } = begin(['A', 'B', 'C'], 2);
    expect(ports.map(({ asked }) => asked.map(({ who }) => who))).toEqual([['A'], ['B']]);
    expect(ports[0]?.brought?.get('my-call')).toBe('its file');
    ports[1]?.answer();
    expect(ports[1]?.asked.map(({ who }) => who)).toEqual(['B', 'C']);
    ports[1]?.answer();
    expect(ports.map(({ ended }) => ended)).toEqual([false, true]);
    ports[0]?.answer();
    expect(ports.map(({ ended }) => ended)).toEqual([true, true]);
    expect([...came].map(([at, { who }]) => `${at}${who}`).sort()).toEqual(['0A', '1B', '2C']);
  });

  it('are no more than there are records', () => {
    expect(begin(['A'], 4).ports).toHaveLength(1);
  });

  it('say nothing any more once they are stopped', () => {
    const { ports, came, cancel } = begin(['A', 'B'], 1);
    cancel();
    ports[0]?.answer();
    vi.advanceTimersByTime(LONGEST_ms);
    expect(ports.map(({ ended, asked }) => [ended, asked.length])).toEqual([[true, 1]]);
    expect(came.size).toBe(0);
  });

  it('are replaced where one breaks, or does not come to an end, and that record is given up', () => {
    const { ports, came } = begin(['A', 'B', 'C', 'D'], 1);
    ports[0]?.answer();
    ports[0]?.break();
    expect(came.get(1)).toMatchObject({ state: 'refused', who: 'B', why: { id: 'class.stopped' } });
    vi.advanceTimersByTime(LONGEST_ms - 1);
    expect(came.size).toBe(2);
    vi.advanceTimersByTime(1);
    expect(came.get(2)).toMatchObject({ state: 'refused', who: 'C', why: { id: 'class.too-long' } });
    expect([...speakAll([...came.values()])].sort()).toEqual(['class.stopped', 'class.too-long']);
    ports[2]?.answer();
    expect(came.get(3)).toMatchObject({ state: 'counts', who: 'D' });
    expect(ports.map(({ ended }) => ended)).toEqual([true, true, true]);
  });

  it('that never say a word could not be fetched', () => {
    const { ports, came } = begin(['A'], 1);
    ports[0]?.break();
    expect(came.get(0)).toMatchObject({ state: 'refused', why: { id: 'trouble.notLoaded' } });
  });
});

describe('a worker of a class', () => {
  async function markedBy(text: string, brought?: ReadonlyMap<string, string>): Promise<MarkReply> {
    const replies: MarkReply[] = [];
    const marker = new Marker((reply) => replies.push(structuredClone(reply)));
    if (brought) await marker.hear({ kind: 'brought', texts: brought });
    await marker.hear({ kind: 'mark', handed: { who: 'K.', text } });
    return replies[0] as MarkReply;
  }
  const own: CallFile = { ...storm, id: 'my-storm' };

  it('replays a record on the shipped call it names', async () => {
    expect(await markedBy(recordOf(storm))).toMatchObject({ state: 'counts', who: 'K.', call: 'storm-light' });
  });

  it('replays one of a call that was brought', async () => {
    const brought = new Map([['my-storm', fileText(own)]]);
    expect(await markedBy(recordOf(own), brought)).toMatchObject({ state: 'counts', call: 'my-storm' });
  });

  it('says of a call that is not here, or whose kept file is broken, why it cannot', async () => {
    const unknown = await markedBy(recordOf(own));
    expect(unknown).toMatchObject({ state: 'refused', why: { id: 'class.call-unknown' } });
    expect(speakAll(unknown)).toContain('class.call-unknown');
    const broken = new Map([['my-storm', '{']]);
    expect(await markedBy(recordOf(own), broken)).toMatchObject({ why: { id: 'trouble.brought-broken' } });
  });

  it('never takes a brought call for a shipped one of its name', async () => {
    const forged = new Map([['storm-light', fileText({ ...storm, pass: 1 })]]);
    expect(await markedBy(recordOf(storm), forged)).toMatchObject({ state: 'counts' });
    expect(await markedBy(recordOf({ ...storm, pass: 1 }), forged)).toMatchObject({
      state: 'refused',
      why: { id: 'replay.call-changed' },
    });
  });

  it('takes answers of a mock exam for what they are, each worked out again, and no call of the sheet', async () => {
    const answers = sat(5, (place) => place % 2 === 0);
    const found = await markedBy(JSON.stringify(answers));
    expect(found).toEqual({ state: 'answers', who: 'K.', answers });
    const held: Held = { file: 'K.json', who: 'K.', text: '', marked: found };
    expect(answersIn([held])).toEqual([answers]);
    expect(sheetOf([held], [])).toMatchObject({ all: [], rows: [], counted: 0, refused: [] });
    const forged = { ...answers, items: answers.items.map((item) => ({ ...item, right: true })) };
    expect(await markedBy(JSON.stringify(forged))).toMatchObject({
      state: 'refused',
      problems: answers.items.flatMap(({ right }, i) => (right ? [] : { path: `items[${i}].right` })),
    });
  });

  it('says what is wrong with what is no record', async () => {
    const broken = { ...JSON.parse(recordOf(storm)), seed: 'one' };
    expect(await markedBy(JSON.stringify(broken))).toMatchObject({ state: 'refused', problems: [{ path: 'seed' }] });
  });
});

describe('chosen files', () => {
  const file = (path: string, text: string) =>
    Object.assign(new File([text], path.split('/').at(-1) ?? ''), { webkitRelativePath: path });

  it.each([
    ['K.M..json', 'K.M.'],
    ['monday/K.json', 'K'],
    ['monday/sunny-line/K.json', 'K'],
    ['monday/K/sunny-line.record.json', 'K'],
    ['monday/K/sunny-line.record (2).json', 'K'],
    ['monday/K/mock-7.answers.json', 'K'],
    ['monday/sunny-line.record.json', 'sunny-line.record'],
    ['7.JSON', '7'],
  ])('%s is a record of %s', (path, who) => {
    expect(whoOf(path)).toBe(who);
  });

  it('are read in the order of their names, without what is no record or there already', async () => {
    const before: Held = { file: 'a/K.json', who: 'Karla', text: 'one', marked: counts('K') };
    const files = [file('a/M.json', 'x'), file('a/K.json', 'one'), file('a/list.txt', ''), file('a/B.json', 'y')];
    const read = await readChosen([...files, file('a/M.json', 'x')], [before]);
    expect(read.map(({ file, who, text }) => [file, who, text])).toEqual([
      ['a/B.json', 'B', 'y'],
      ['a/M.json', 'M', 'x'],
    ]);
    // The same name with another text is another try.
    expect(await readChosen([file('a/K.json', 'two')], [before])).toHaveLength(1);
  });

  it('are refused unread where they are too large, and where they cannot be read', async () => {
    const gone = Object.assign(file('N.json', ''), { text: () => Promise.reject(new Error('gone')) });
    const [large, unread] = await readChosen([file('L.json', 'x'.repeat(1_000_001)), gone], []);
    expect(large).toMatchObject({ text: '', marked: { state: 'refused', who: 'L', problems: [{ path: '' }] } });
    expect(unread).toMatchObject({ marked: { state: 'refused', who: 'N', why: { id: 'class.unread' } } });
    expect(speakAll(unread)).toContain('class.unread');
  });
});

describe('the records on the sheet', () => {
  const records: readonly Held[] = ['A', 'B', 'A'].map((who, at) => ({
    file: `${at}.json`,
    who,
    text: '',
    marked: counts('as it was named'),
  }));

  it('stand under the names they have now, and are found again by their place', () => {
    const sheet = sheetOf(records, []);
    expect(sheet.rows.map(({ who, cells }) => [who, cells.get('storm-light')?.tries])).toEqual([
      ['A', 2],
      ['B', 1],
    ]);
    const best = sheet.rows.flatMap(({ cells }) => cells.get('storm-light')?.best ?? []);
    expect(best.map((one) => sheet.all.indexOf(one))).toEqual([0, 1]);
  });

  it('share a row where they are named alike, and no blank name is taken', () => {
    const alike = renamed(records, ({ who }) => who === 'B', ' A ');
    expect(sheetOf(alike, []).rows.map(({ who }) => who)).toEqual(['A']);
    expect(renamed(records, () => true, '  ')).toEqual(records);
    expect(renamed(records, (_, at) => at === 2, 'C').map(({ who }) => who)).toEqual(['A', 'B', 'C']);
  });
});
