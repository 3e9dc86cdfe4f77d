/**
 * The call file. A file is data: nothing in it is run, and its texts are shown as plain text. What a schema cannot say
 * (that an id exists, that an instant is possible) is checked in `check.ts`.
 */
import * as z from 'zod/mini';
import { TOLD_FACTS } from '../diagnosis/told.ts';
import { SYMPTOM_IDS } from '../service/index.ts';
import { identifier, localText } from '../unit/schema.ts';
import { LED } from './rungs.ts';

const instant = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/));
const share = z.number().check(z.gte(0), z.lte(1));
const hours = z.number().check(z.positive(), z.lte(24 * 60));

/** What somebody who knows a fault would tell of it: the questions of a cognitive task analysis (Clark et al. 2008). */
const account = z.strictObject({
  /** What an expert notices first. */
  cue: localText,
  /** What points the wrong way. */
  misleads: localText,
  /** The check to make next, and what it costs. */
  check: localText,
  /** What is often got wrong by beginners. */
  error: localText,
  /** How it is shown that the mend holds. */
  proof: localText,
  /** Why the part failed. */
  root: localText,
});

const fault = z.strictObject({
  fault: identifier,
  part: z.optional(z.string().check(z.minLength(1), z.maxLength(40))),
  onset: instant,
  severity: z.optional(share),
  ramp_h: z.optional(z.number().check(z.gte(0), z.lte(24 * 60))),
  present: z.optional(
    z.union([z.literal('always'), z.strictObject({ for_h: hours }), z.strictObject({ on_h: hours, off_h: hours })]),
  ),
  account: z.optional(account),
});

/** Rain that falls evenly for so many hours. The heaviest day on record is some 1,800 mm; most storms bring under 100. */
const storm = z.strictObject({
  start: instant,
  hours: z.number().check(z.positive(), z.lte(72)),
  depth_mm: z.number().check(z.positive(), z.lte(1800)),
});

const fill = z.record(z.string(), z.union([z.string(), z.array(z.string())]));

const step = z.strictObject({
  do: z.string().check(z.minLength(1), z.maxLength(80)),
  fill: z.optional(fill),
});

export const callSchema = z.strictObject({
  $schema: z.optional(z.string()),
  version: z.literal(1),
  id: identifier,
  kind: z.enum(['alarm', 'complaint', 'visit']),
  /** Of a routine visit: when the last one was signed for on the label, and a lid that the lawn has grown over. */
  visit: z.optional(
    z.strictObject({
      last: z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/)),
      buried: z.optional(z.enum(['trash', 'aeration', 'riser', 'pump'])),
    }),
  ),
  title: localText,
  summary: localText,
  lot: localText,
  story: localText,
  unit: identifier,
  /** Numbers of the unit that are not as its file has them here, by their paths in it. */
  changed: z.optional(z.record(z.string().check(z.maxLength(80)), z.number())),
  household: identifier,
  start: instant,
  history_days: z.int().check(z.gte(1), z.lte(60)),
  temperature_C: z.number().check(z.gte(2), z.lte(30)),
  weather: z.strictObject({
    cloud: share,
    rain: share,
    /** For the picture alone, m/s: above 0 from the east, below from the west; without it, by day, hour and rain. */
    wind_ms: z.optional(z.number().check(z.gte(-20), z.lte(20))),
  }),
  storms: z.optional(z.array(storm).check(z.maxLength(20))),
  seed: z.int().check(z.gte(0), z.lte(4294967295)),
  /** On a routine visit there need be none. */
  faults: z.array(fault).check(z.maxLength(8)),
  report: z.strictObject({
    said: z.array(localText).check(z.minLength(1), z.maxLength(6)),
    silenced: z.boolean(),
    /** What had been noticed by then, so that it can be checked that it arises. */
    noticed: z.optional(z.array(z.enum(SYMPTOM_IDS))),
    /** Alarms that were reset and closed in the thirty days before. */
    earlier_trips: z.optional(z.int().check(z.gte(0), z.lte(30))),
    history: localText,
    /** Facts of that history which make some faults likelier: for who reckons, since a text cannot be reckoned with. */
    told: z.optional(z.array(z.enum(TOLD_FACTS))),
    use: localText,
  }),
  /** Checks and mends, by id, that cannot be made in this call. */
  withheld: z.optional(z.array(step.shape.do).check(z.maxLength(200))),
  limits: z.strictObject({ minutes: z.number().check(z.positive()), money_usd: z.number().check(z.gte(0)) }),
  pass: z.int().check(z.gte(1), z.lte(100)),
  expected: z.strictObject({
    decision: z.enum(['close', 'visit']),
    urgency: z.array(z.enum(['now', 'before-dosing', 'next-visit'])),
  }),
  solution: z.array(step).check(z.minLength(1), z.maxLength(200)),
});

export type CallFile = z.infer<typeof callSchema>;
export type Account = z.infer<typeof account>;
export type SolutionStep = z.infer<typeof step>;

export const recordedAction = z.strictObject({
  at_ms: z.int().check(z.gte(0)),
  do: z.string().check(z.minLength(1), z.maxLength(80)),
  fill: z.optional(fill),
  /** First twelve digits of the state's digest after it: a replay names the first action that differs. */
  state: z.string().check(z.regex(/^[0-9a-f]{12}$/)),
});

export const recordSchema = z.strictObject({
  kind: z.literal('underlawn-record'),
  version: z.literal(1),
  engine: z.string().check(z.minLength(1), z.maxLength(40)),
  call: identifier,
  callHash: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  mode: z.enum(['coached', 'practice', 'graded']),
  seed: z.int(),
  actions: z.array(recordedAction).check(z.maxLength(2000)),
  end_ms: z.int().check(z.gte(0)),
  /** Help that was taken in a coached call, as the page counted it; a replay cannot tell. */
  assistance: z.optional(
    z.strictObject({ hints: z.literal([0, 1, 2, 3, 4]), likely: z.boolean(), led: z.optional(z.enum(LED)) }),
  ),
  claims: z.strictObject({
    passed: z.boolean(),
    score: z.number(),
    cause: z.array(z.string()),
    minutes: z.number(),
    money_usd: z.number(),
    flags: z.array(z.string()),
    state: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  }),
});

/** A call in progress as a browser keeps it: what was done so far, to be done again to the same bits. */
export const progressSchema = z.strictObject({
  engine: z.string().check(z.minLength(1), z.maxLength(40)),
  callHash: z.string().check(z.regex(/^[0-9a-f]{64}$/)),
  actions: z.array(recordedAction).check(z.maxLength(2000)),
  now_ms: z.int().check(z.gte(0)),
});

export type Progress = z.infer<typeof progressSchema>;
export type CallRecord = z.infer<typeof recordSchema>;
