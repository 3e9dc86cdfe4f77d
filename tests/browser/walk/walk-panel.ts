/** Takes a call on the real page along chosen paths and compares what is seen there with what is specified. */
import type { Page } from 'playwright-core';
import { shippedCalls } from '../../../src/calls/index.ts';
import { doStep, withPointer } from '../../../src/tools/people.ts';
import type { Edge } from '../../control/spec/paths.ts';
import type { Sight } from '../../control/spec/vocabulary.ts';
import type { Failure } from '../../control/spec/walk.ts';
import type { Wanted } from '../../control/spec/wanted.ts';
import { type Choice, choose } from './chosen.ts';
import { type Extent, panelExtent } from './extents.ts';
import type { PanelWalk } from './panel-walks.ts';
import { Person } from './person.ts';
import { alarmSeen, type Seen, type Sights, sightsIn, told } from './seen.ts';

export type OpenPage = () => Promise<{
  readonly page: Page;
  readonly errors: readonly string[];
  readonly close: () => Promise<void>;
}>;

export interface Walked {
  readonly extent: Extent;
  readonly failures: readonly Failure[];
}

export async function walkPanel(walk: PanelWalk, open: OpenPage): Promise<Walked> {
  const choice = choose(walk);
  const failures: Failure[] = [];
  const done: Edge[] = [];
  const compared = new Set<Sight>();
  const { page, errors, close } = await open();
  for (const take of choice.takes) {
    const visitor = new Visitor(walk, choice, page);
    let problems = await visitor.arrives();
    const path: Edge[] = [];
    for (const edge of take) {
      if (problems.length > 0) break;
      path.push(edge);
      problems = await visitor.takes(edge);
    }
    done.push(...path);
    for (const sight of visitor.compared) compared.add(sight);
    if (problems.length > 0) failures.push({ path: path.map((e) => e.event), problems });
  }
  if (errors.length > 0) failures.push({ path: [], problems: errors });
  await close();
  const unseen = walk.promised.sights.filter((sight) => !compared.has(sight));
  if (unseen.length > 0) failures.push({ path: [], problems: [`the page never told of ${unseen.join(', ')}`] });
  return { extent: panelExtent(walk, choice, done), failures };
}

/** One taking of the call. */
class Visitor {
  private readonly walk: PanelWalk;
  private readonly choice: Choice;
  private readonly page: Page;
  private readonly person: Person;
  /** Lines of the notebook that were compared already. */
  private read = 0;
  /** States in which everything was looked at. */
  private readonly known = new Set<string>();
  /** Sights that the page gave an answer to. */
  readonly compared = new Set<Sight>();

  constructor(walk: PanelWalk, choice: Choice, page: Page) {
    this.walk = walk;
    this.choice = choice;
    this.page = page;
    this.person = new Person(page, walk.manner);
  }

  async arrives(): Promise<string[]> {
    const call = shippedCalls().find((c) => c.id === this.walk.call);
    if (!call) throw new Error(`no call "${this.walk.call}"`);
    await this.person.takes(call.title.en);
    for (const step of this.walk.before) await doStep(this.page, withPointer(this.page), step.do, step.fill ?? {});
    this.read = (await this.person.looks()).notes.length;
    return this.looksRound(this.choice.start);
  }

  async takes(edge: Edge): Promise<string[]> {
    const { handed, start } = this.choice;
    const { action, notedAfter } = handed.hand(edge.event);
    const way = handed.within(edge).flatMap((one) => (one ? [one.to] : []));
    const from = this.choice.wanted.get(edge.from) ?? start;
    if (action !== undefined) await this.person.does(action);
    else if (changes(from, edge.to)) await this.person.waits();
    else await this.person.idles();
    const seen = await this.person.looks();
    const news = seen.notes.slice(this.read);
    this.read = seen.notes.length;
    return [
      ...this.alarm(seen, edge.to),
      ...this.lines(news, notedAfter === undefined ? edge.to : (way[notedAfter - 1] ?? edge.to)),
      ...(this.walk.live ? telling(news, [from, ...way]) : []),
      ...(edge.to.key === edge.from ? [] : await this.looksRound(edge.to)),
    ];
  }

  /** Looks at what the page does not show by itself, where no delay runs that would end meanwhile. */
  private async looksRound(wanted: Wanted): Promise<string[]> {
    if (this.choice.running(wanted.key).length > 0) return [];
    const looks = this.known.has(wanted.key) ? this.walk.looks.slice(0, 1) : this.walk.looks;
    this.known.add(wanted.key);
    for (const action of looks) await this.person.does(action);
    const seen = await this.person.looks();
    const news = seen.notes.slice(this.read);
    this.read = seen.notes.length;
    return [...this.alarm(seen, wanted), ...this.lines(news, wanted)];
  }

  private alarm(seen: Seen, wanted: Wanted): string[] {
    if (!this.walk.live) return [];
    const heard = seen.heard.includes('Buzzer sounding');
    return [
      ...this.wrong(alarmSeen(seen), wanted, `the alarm on the page says "${seen.alarm}"`),
      ...this.wrong({ buzzer: heard }, wanted, `the captions say "${seen.heard.join(', ')}"`),
    ];
  }

  private lines(notes: Seen['notes'], wanted: Wanted): string[] {
    return notes.flatMap((note) =>
      this.wrong(sightsIn(note), wanted, `the notebook says "${note.what}: ${note.reading}"`),
    );
  }

  private wrong(sights: Sights, wanted: Wanted, shown: string): string[] {
    return (Object.entries(sights) as [Sight, boolean][]).flatMap(([sight, is]) => {
      const claim = wanted.sees.get(sight);
      if (!claim || !this.walk.promised.sights.includes(sight)) return [];
      this.compared.add(sight);
      return claim.want === is ? [] : [`${shown}, want ${sight} ${claim.want ? 'on' : 'off'}: ${claim.says}`];
    });
  }
}

const on = (wanted: Wanted, sight: Sight): boolean => wanted.sees.get(sight)?.want === true;

function changes(from: Wanted, to: Wanted): boolean {
  return on(from, 'lamp') !== on(to, 'lamp') || (on(to, 'buzzer') && !on(from, 'buzzer'));
}

/** Whatever changes within a step must be told as often as it changes. */
function telling(notes: Seen['notes'], way: readonly Wanted[]): string[] {
  const times = (sight: Sight, rises: boolean): number =>
    way.filter((here, i) => {
      const before = way[i - 1];
      return before && on(here, sight) === rises && on(before, sight) !== rises;
    }).length;
  const want = [times('lamp', true), times('lamp', false), times('buzzer', true)];
  const is = told(notes);
  if (want.join() === is.join()) return [];
  return [`told "comes on", "goes out", "starts" ${is.join(', ')} times, want ${want.join(', ')}`];
}
