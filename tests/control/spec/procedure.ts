/**
 * The service procedure as a person on the call sees it: the steps by phone, and those on site. A step done in its turn
 * is done; one that a later step was taken before is skipped, until it is caught up with. Nothing else is forbidden but
 * what costs a life.
 */
import { and, not, or, setup, stateIn } from 'xstate';

export type PhoneStep = 'danger' | 'ask' | 'silence' | 'breakers' | 'reset' | 'watch' | 'decide';
export type SiteStep = 'safe' | 'find' | 'cause' | 'mend' | 'prove' | 'record' | 'household';
export type Step = PhoneStep | SiteStep;
export type Shown = 'open' | 'done' | 'skipped';

/** What a state of the procedure asserts: how a step is shown, or where the call has come to. */
export interface ProcedureSays {
  readonly says: string;
  readonly step?: Step;
  readonly shown?: Shown;
  readonly ended?: boolean;
  readonly onSite?: boolean;
  readonly breach?: string;
}

const PHONE = ['danger', 'ask', 'silence', 'breakers', 'reset', 'watch', 'decide'] as const;
const SITE = ['safe', 'find', 'cause', 'mend', 'prove', 'record', 'household'] as const;

export type PhoneEvent =
  | 'danger asked about'
  | 'questions asked'
  | 'silence guided'
  | 'breakers read out'
  | 'reset guided'
  | 'five minutes watched'
  | 'closed by phone'
  | 'visit decided'
  | 'householder told to open the panel'
  | 'householder told to open the tank';

export type SiteEvent =
  | 'site made safe'
  | 'compressor listened to'
  | 'gauge read'
  | 'cause named'
  | 'line spliced'
  | 'record written'
  | 'household told'
  | 'diaphragms renewed on a live circuit'
  | 'left';

const at = (region: string, ...states: string[]) => or(states.map((state) => stateIn({ [region]: state })));

const words = setup({
  types: {
    context: {} as Record<string, never>,
    events: {} as { type: PhoneEvent | SiteEvent },
    meta: {} as ProcedureSays,
  },
  guards: {
    'danger was asked about': at('danger', 'done'),
    'danger was not asked about': not(at('danger', 'done')),
    'on the phone': at('call', 'by phone'),
    'on the phone, danger asked about': and([at('call', 'by phone'), at('danger', 'done')]),
    'on site': at('call', 'on site'),
    'on site and safe': and([at('call', 'on site'), at('safe', 'done')]),
    'on site, not made safe': and([at('call', 'on site'), not(at('safe', 'done'))]),
    'on site, safe and mended': and([at('call', 'on site'), at('safe', 'done'), at('mend', 'done')]),
  },
});
type Guard = NonNullable<Parameters<typeof words.createStateConfig>[0]['always']>;

/** Each event is one step, or several at once, and may take a guard. */
interface Does {
  readonly event: PhoneEvent | SiteEvent;
  readonly steps: readonly Step[];
  readonly guard: string;
}

const BY_PHONE: readonly Does[] = [
  { event: 'danger asked about', steps: ['danger'], guard: 'on the phone' },
  { event: 'questions asked', steps: ['ask'], guard: 'on the phone' },
  { event: 'silence guided', steps: ['silence'], guard: 'on the phone, danger asked about' },
  { event: 'breakers read out', steps: ['breakers'], guard: 'on the phone' },
  { event: 'reset guided', steps: ['reset'], guard: 'on the phone, danger asked about' },
  { event: 'five minutes watched', steps: ['watch'], guard: 'on the phone' },
  { event: 'closed by phone', steps: ['decide'], guard: 'on the phone' },
  { event: 'visit decided', steps: ['decide'], guard: 'on the phone' },
];

const ON_SITE: readonly Does[] = [
  { event: 'site made safe', steps: ['safe'], guard: 'on site' },
  { event: 'compressor listened to', steps: ['find'], guard: 'on site' },
  { event: 'gauge read', steps: ['find'], guard: 'on site and safe' },
  { event: 'gauge read', steps: ['prove'], guard: 'on site, safe and mended' },
  { event: 'cause named', steps: ['cause'], guard: 'on site' },
  { event: 'line spliced', steps: ['mend'], guard: 'on site and safe' },
  { event: 'record written', steps: ['record'], guard: 'on site' },
  { event: 'household told', steps: ['household'], guard: 'on site' },
];

function stepRegion(step: Step, order: readonly Step[], does: readonly Does[]) {
  const later = order.slice(order.indexOf(step) + 1);
  const to = (target: string, steps: readonly Step[]): [string, object][] =>
    does.filter((d) => d.steps.some((s) => steps.includes(s))).map((d) => [d.event, { guard: d.guard, target }]);
  const joined = (entries: readonly [string, object][]) => {
    const on: Record<string, object[]> = {};
    for (const [event, transition] of entries) on[event] = [...(on[event] ?? []), transition];
    return on as unknown as { [event: string]: Guard };
  };
  return words.createStateConfig({
    initial: 'open',
    states: {
      open: {
        meta: { says: `${step} is still to do`, step, shown: 'open' },
        on: joined([...to('done', [step]), ...to('skipped', later)]),
      },
      done: { meta: { says: `${step} is done`, step, shown: 'done' } },
      skipped: {
        meta: { says: `something that comes after ${step} was done first`, step, shown: 'skipped' },
        on: joined(to('done', [step])),
      },
    },
  });
}

const stopped = (breach: string) =>
  words.createStateConfig({
    meta: { says: 'a life-safety step was skipped: the call stops there', ended: true, breach },
  });

const byPhone = { says: 'the phone is at the ear', ended: false, onSite: false } satisfies ProcedureSays;
const onSite = { says: 'the technician is there', ended: false, onSite: true } satisfies ProcedureSays;

export const phoneMachine = words.createMachine({
  id: 'procedure by phone',
  type: 'parallel',
  context: {},
  states: {
    call: {
      initial: 'by phone',
      states: {
        'by phone': {
          meta: byPhone,
          on: {
            'silence guided': { guard: 'danger was not asked about', target: 'stopped: danger' },
            'reset guided': { guard: 'danger was not asked about', target: 'stopped: danger' },
            'householder told to open the panel': 'stopped: panel opened',
            'householder told to open the tank': 'stopped: tank opened',
            'closed by phone': 'closed by phone',
            'visit decided': 'on site',
          },
        },
        'stopped: danger': stopped('breach.danger-not-asked'),
        'stopped: panel opened': stopped('breach.householder-opens-panel'),
        'stopped: tank opened': stopped('breach.householder-opens-tank'),
        'closed by phone': { meta: { says: 'the call was closed by phone', ended: true, onSite: false } },
        'on site': { meta: { says: 'the technician drove there', onSite: true } },
      },
    },
    ...Object.fromEntries(PHONE.map((step) => [step, stepRegion(step, PHONE, BY_PHONE)])),
  },
});

export const siteMachine = words.createMachine({
  id: 'procedure on site',
  type: 'parallel',
  context: {},
  states: {
    call: {
      initial: 'on site',
      states: {
        'on site': {
          meta: onSite,
          on: {
            'gauge read': { guard: 'on site, not made safe', target: 'stopped: not safe' },
            'line spliced': { guard: 'on site, not made safe', target: 'stopped: not safe' },
            'diaphragms renewed on a live circuit': [
              { guard: 'on site, not made safe', target: 'stopped: not safe' },
              { target: 'stopped: live' },
            ],
            left: 'closed',
          },
        },
        'stopped: not safe': stopped('breach.site-not-made-safe'),
        'stopped: live': stopped('breach.not-locked-out'),
        closed: { meta: { says: 'the record is closed', ended: true } },
      },
    },
    ...Object.fromEntries(SITE.map((step) => [step, stepRegion(step, SITE, ON_SITE)])),
  },
});

export const PHONE_ORDER: readonly PhoneStep[] = PHONE;
export const SITE_ORDER: readonly SiteStep[] = SITE;
