/** Takes shipped calls on the real page by the procedure, and compares what the call sheet, the strip and the end show. */
import type { Page } from 'playwright-core';
import { type Action, type CallFile, shippedCalls } from '../../../src/calls/index.ts';
import { doStep, withPointer } from '../../../src/tools/people.ts';
import { speak } from '../../../src/words/speak.ts';
import { loadWords } from '../../../src/words/words.ts';
import type { Screen } from '../../control/spec/call-walk.ts';
import type { Step } from '../../control/spec/procedure.ts';
import type { Failure } from '../../control/spec/walk.ts';
import { procedureExtent, wholeExtent } from './extents.ts';
import { Person } from './person.ts';
import {
  chooseProcedure,
  chooseWholeCalls,
  type ProcedureWalk,
  WHOLE_CALL,
  WHOLE_STEPS,
  type WholeCall,
} from './procedure-walks.ts';
import { look, type Seen } from './seen.ts';
import type { OpenPage, Walked } from './walk-panel.ts';

const words = await loadWords('en', 'debrief');
const say = speak(words, 'us', true);

export async function walkProcedureOnPage(walk: ProcedureWalk, open: OpenPage): Promise<Walked> {
  const { procedure, call, before } = walk;
  const { start, paths } = chooseProcedure(walk);
  const { page, errors, close } = await open();
  const failures: Failure[] = [];
  for (const path of paths) {
    await taken(page, callOf(call), before);
    let problems = wrong(await look(page), start, procedure.order);
    const events: string[] = [];
    for (const edge of path) {
      if (problems.length > 0) break;
      events.push(edge.event);
      await does(page, procedure.does[edge.event] ?? []);
      problems = wrong(await look(page), edge.to, procedure.order);
    }
    if (problems.length > 0) failures.push({ path: events, problems });
  }
  if (errors.length > 0) failures.push({ path: [], problems: errors });
  await close();
  return { extent: procedureExtent(walk), failures };
}

export async function walkWholeCalls(open: OpenPage): Promise<Walked> {
  const { ways } = chooseWholeCalls();
  const { page, errors, close } = await open();
  const failures: Failure[] = [];
  for (const way of ways) {
    const problems = await takeWhole(page, way);
    if (problems.length > 0) failures.push({ path: way.events, problems });
  }
  if (errors.length > 0) failures.push({ path: [], problems: errors });
  await close();
  return { extent: wholeExtent(), failures };
}

/** From the first ring to the debrief: the stage after every step, and the flags of the debrief, those and no others. */
async function takeWhole(page: Page, { events, stages, flags }: WholeCall): Promise<string[]> {
  await taken(page, callOf(WHOLE_CALL), []);
  const found: string[] = [];
  for (const [i, event] of events.entries()) {
    await does(page, WHOLE_STEPS[event]);
    const seen = await look(page);
    const want = stages[i] ?? '';
    const is = want === 'closed' ? seen.end : stageNow(seen);
    if (!is.startsWith(say({ id: want === 'closed' ? 'end.closed' : `stage.${want}` }))) {
      found.push(`after ${event} the page shows "${is}", want ${want}`);
    }
  }
  await new Person(page, { by: 'pointer' }).toTheDebrief();
  const flagged = page.getByRole('region', { name: 'Look again' }).getByRole('listitem').locator('p');
  const texts = await flagged.allTextContents();
  const given = new Set(texts.map((text) => flagOf(text)));
  if ([...given].sort().join() !== flags.join()) found.push(`flags ${[...given].join(', ')}; want ${flags.join(', ')}`);
  return found;
}

function flagOf(text: string): string {
  const id = Object.keys(words.texts).find((key) => key.startsWith('flag.') && words.texts[key] === text.trim());
  return id?.slice('flag.'.length) ?? text;
}

function callOf(id: string): CallFile {
  const call = shippedCalls().find((c) => c.id === id);
  if (!call) throw new Error(`no call "${id}"`);
  return call;
}

async function taken(page: Page, call: CallFile, before: readonly Action[]): Promise<void> {
  await new Person(page, { by: 'pointer' }).takes(call.title.en);
  await does(page, before);
}

async function does(page: Page, actions: readonly Action[]): Promise<void> {
  for (const { id, fill } of actions) await doStep(page, withPointer(page), id, fill ?? {});
}

function stageNow({ stages }: Seen): string {
  return stages.find((line) => line.endsWith('(now)')) ?? 'no stage';
}

/** Differences between the page and what the procedure wants of it. */
function wrong(seen: Seen, { says }: Screen, order: readonly Step[]): string[] {
  const found: string[] = [];
  const stateOf = (step: Step): string =>
    /\((.*)\)$/.exec(seen.stages.find((line) => line.startsWith(say({ id: `stage.${step}` }))) ?? '')?.[1] ?? 'missing';
  for (const s of says) {
    if (s.ended !== undefined && s.ended !== (seen.end !== '')) found.push(`the end says "${seen.end}": ${s.says}`);
    if (s.onSite !== undefined && s.onSite !== seen.here.every((part) => !part.startsWith('Phone'))) {
      found.push(`the strip says one is at ${seen.here.join(', ')}: ${s.says}`);
    }
    if (s.breach && !seen.end.includes(say({ id: s.breach }))) found.push(`the end says "${seen.end}": ${s.says}`);
    if (s.step && s.shown) {
      const state = stateOf(s.step);
      const is = state === 'done' || state === 'skipped' ? state : 'open';
      // The last step stays the present one while the call waits to be closed.
      const lastNow = state === 'now' && s.step === order.at(-1);
      if (is !== s.shown && !lastNow) found.push(`${s.step} is shown ${state}, want ${s.shown}: ${s.says}`);
    }
  }
  const first = order.find((step) => says.some((s) => s.step === step && s.shown === 'open'));
  const here = says.some((s) => s.onSite === order.includes('safe') && s.ended === false);
  if (here && first && stateOf(first) !== 'now')
    found.push(`${first} is shown ${stateOf(first)}, and is the next step`);
  return found;
}
