import { describe, expect, it } from 'vitest';
import { type CallFile, loadRecord, prepareCall, replay, shippedCalls } from '../../../src/calls/index.ts';
import { Answerer } from '../../../src/desk/answer.ts';
import { Expert } from '../../../src/desk/expert-answer.ts';
import type { ExpertReply } from '../../../src/desk/expert-protocol.ts';
import type { BroughtCalls, Reply, Request, SavedCall } from '../../../src/desk/protocol.ts';
import { fileText, linkOf } from '../../../src/share/index.ts';
import type { Refusal } from '../../../src/share/read.ts';
import { speakAll } from '../spoken.ts';

const shipped = shippedCalls().find((c) => c.id === 'storm-light') as CallFile;
/** A call that does not ship. */
const mine: CallFile = { ...shipped, id: 'my-storm', title: { en: 'My storm', es: 'Mi tormenta' } };
const text = fileText(mine);

async function ask<K extends Reply['kind']>(answerer: Answerer, request: Request, kind: K) {
  const reply = await answerer.answer(request);
  if (reply.kind !== kind) throw new Error(`${JSON.stringify(reply)} instead of ${kind}`);
  return reply as Extract<Reply, { kind: K }>;
}

async function bring(from: 'link' | 'file', text: string): Promise<BroughtCalls & Partial<Refusal>> {
  const { brought } = await ask(new Answerer(), { kind: 'bring', from, text }, 'brought');
  return brought as BroughtCalls & Partial<Refusal>;
}

/** The brought call, taken so many steps along its solution. */
async function takenUpTo(steps: number) {
  const answerer = new Answerer();
  const opened = { kind: 'open', callId: mine.id, mode: 'practice', brought: text } as const;
  let { view } = await ask(answerer, opened, 'view');
  for (const step of mine.solution.slice(0, steps)) {
    const action = { id: step.do, ...(step.fill ? { fill: step.fill } : {}) };
    ({ view } = await ask(answerer, { kind: 'act', action, at_ms: view.now_ms }, 'view'));
  }
  const { saved } = await ask(answerer, { kind: 'save' }, 'saved');
  return { answerer, view, saved: JSON.parse(JSON.stringify(saved)) as SavedCall };
}

describe('what was handed on', () => {
  it('by link or by file comes as a card and the file to keep', async () => {
    const link = await linkOf(mine);
    const card = { id: 'my-storm', title: mine.title, kind: mine.kind, lot: mine.lot };
    for (const brought of [await bring('link', link.ok ? link.fragment : ''), await bring('file', text)]) {
      expect(brought).toMatchObject({ calls: [{ card, text }], own: [] });
      expect(brought.set).toBeUndefined();
    }
  });

  it('and ships anyway is said to be one of Underlawn’s own', async () => {
    const { $schema: _, ...call } = shipped;
    expect(await bring('file', JSON.stringify(call))).toEqual({ calls: [], own: ['storm-light'] });
  });

  it('as a set comes with its title; of those that ship only the ids', async () => {
    const title = { en: 'Week one', es: 'Semana uno' };
    const brought = await bring('file', fileText({ set: 1, title, calls: [shipped, mine] }));
    expect(brought).toMatchObject({ set: title, own: ['storm-light'], calls: [{ text }] });
  });

  it.each([
    ['a shipped call', { ...shipped, seed: 5 }, /such as storm-light-own/],
    ['a door of the round', { ...mine, id: 'round-3-1' }, /such as round-3-1-own/],
  ])('with the id of %s, but another call, is refused as a whole with a mend', async (_name, call, mend) => {
    const alone = await bring('file', JSON.stringify(call));
    expect(alone).toMatchObject({ why: { id: 'share.id-taken' }, problems: [{ path: 'id' }] });
    expect(alone.problems?.[0]?.mend).toMatch(mend);
    const title = { en: 'Week one', es: 'Semana uno' };
    const set = await bring('file', JSON.stringify({ set: 1, title, calls: [mine, call] }));
    expect(set.problems?.[0]?.path).toBe('/calls/1/id');
    expect(set.calls).toBeUndefined();
  });

  it('and is damaged is refused in words of both languages', async () => {
    for (const [from, broken] of [
      ['link', 'x'],
      ['file', '{'],
      ['file', JSON.stringify({ set: 1 })],
      ['file', JSON.stringify({ ...mine, version: 3 })],
      ['file', ' '.repeat(1_000_001)],
      ['file', JSON.stringify({ ...shipped, seed: 5 })],
    ] as const) {
      const { why } = await bring(from, broken);
      expect(speakAll(why).size).toBe(1);
    }
  });
});

describe('a brought call', () => {
  it('is taken, kept with its file, and goes on where it was left without being asked for again', async () => {
    const { view, saved } = await takenUpTo(4);
    expect(saved).toMatchObject({ callId: 'my-storm', brought: text });
    const again = await ask(new Answerer(), { kind: 'resume', saved }, 'view');
    expect(again.view).toMatchObject({ callId: 'my-storm', title: mine.title, now_ms: view.now_ms });
    expect(again.view.scene).toEqual(view.scene);
  });

  it('leaves a record that replays on its file', async () => {
    const { answerer } = await takenUpTo(mine.solution.length);
    const { record, fileName } = await ask(answerer, { kind: 'record' }, 'record');
    expect(fileName).toBe('my-storm.record.json');
    const loaded = loadRecord(JSON.stringify(record));
    if (!loaded.ok) throw new Error('no record');
    expect(replay(prepareCall(mine), loaded.value)).toMatchObject({ ok: true, claimed: loaded.value.claims.score });
  });

  it('is found by the expert in what was kept, and nowhere else', async () => {
    const { saved } = await takenUpTo(1);
    const { brought: _, ...lost } = saved;
    const told = async (kept: SavedCall) => {
      const replies: ExpertReply[] = [];
      await new Expert((reply) => replies.push(reply)).answer({ kind: 'review', saved: { ...kept, record: {} } });
      return replies;
    };
    expect(await told(saved)).toEqual([{ kind: 'error', message: { id: 'trouble.progress-broken' } }]);
    expect(await told(lost)).toEqual([{ kind: 'error', message: { id: 'trouble.call-unknown' } }]);
  });

  it('whose kept file somebody changed is refused with a word, or does not fit what was done', async () => {
    const { saved } = await takenUpTo(1);
    const broken = new Answerer().answer({ kind: 'open', callId: mine.id, mode: 'practice', brought: '{"id": 7}' });
    await expect(broken).rejects.toMatchObject({ told: { id: 'trouble.brought-broken' } });
    const other = fileText({ ...mine, seed: 9 });
    const resumed = await new Answerer().answer({ kind: 'resume', saved: { ...saved, brought: other } });
    expect(resumed).toMatchObject({ kind: 'error', message: { id: 'trouble.progress-other-version' } });
  });

  it('gives way to a shipped one of its id', async () => {
    const brought = fileText({ ...mine, id: shipped.id });
    const asked = { kind: 'open', callId: shipped.id, mode: 'practice', brought } as const;
    const answerer = new Answerer();
    expect((await ask(answerer, asked, 'view')).view.title).toEqual(shipped.title);
    expect((await ask(answerer, { kind: 'save' }, 'saved')).saved.brought).toBeUndefined();
  });
});

describe('a sheet', () => {
  const asked = { kind: 'sheet', callId: mine.id, brought: text } as const;

  it('for the trainee tells what is known when the phone rings, and nothing of the cause', async () => {
    const { sheet } = await ask(new Answerer(), { ...asked, who: 'trainee' }, 'sheet');
    expect(sheet).toEqual({
      kind: mine.kind,
      title: mine.title,
      summary: mine.summary,
      lot: mine.lot,
      said: mine.report.said,
      rings: expect.objectContaining({ month: Number(mine.start.slice(5, 7)), day: Number(mine.start.slice(8, 10)) }),
    });
  });

  it('for the trainer tells the cause and the whole way, in words of both languages', async () => {
    const { sheet } = await ask(new Answerer(), { ...asked, who: 'trainer' }, 'sheet');
    if (!('causes' in sheet)) throw new Error('no trainer’s sheet');
    expect(sheet.causes).toMatchObject([{ fault: { id: 'fault.surge-latch' } }]);
    expect(sheet.path.map(({ what }) => what.id)).toEqual(mine.solution.map((step) => `act.${step.do}`));
    expect(sheet.stopped).toBeUndefined();
    expect(sheet.cautions.length).toBeGreaterThan(0);
    expect(speakAll(sheet).size).toBeGreaterThan(mine.solution.length);
  });

  it('says where a solution does not go on', async () => {
    const solution = [{ do: 'ask-danger' }, { do: 'write-record' }, { do: 'decide-close' }];
    const brought = fileText({ ...mine, solution });
    const { sheet } = await ask(new Answerer(), { ...asked, brought, who: 'trainer' }, 'sheet');
    expect(sheet).toMatchObject({ path: [{ what: { id: 'act.ask-danger' } }], stopped: { id: expect.any(String) } });
  });

  it('of no call is refused with a word', async () => {
    const nobody = new Answerer().answer({ kind: 'sheet', callId: 'no-such-call', who: 'trainee' });
    await expect(nobody).rejects.toMatchObject({ told: { id: 'trouble.call-unknown' } });
  });
});
