/** A round as a browser keeps it between two doors. Whoever kept it may have changed it, so it is checked first. */
import * as z from 'zod/mini';
import { STATE_SIZE } from '../../plant/index.ts';
import { SYMPTOM_IDS } from '../../service/index.ts';
import { SNAPSHOT_VERSION } from '../../unit/index.ts';
import { ENGINE_VERSION } from '../progress.ts';
import { recordedAction } from '../schema.ts';
import { roundHash } from './hash.ts';
import type { Lot, LotState } from './lot.ts';

const id = z.string().check(z.maxLength(80));
const ids = z.array(id).check(z.maxLength(80));
const open = {
  since_s: z.array(z.nullable(z.number())).check(z.maxLength(8)),
  over: z.array(z.boolean()).check(z.maxLength(12)),
};

const snapshot = z.strictObject({
  version: z.literal(SNAPSHOT_VERSION),
  t: z.number(),
  h: z.number(),
  y: z.array(z.number()).check(z.length(STATE_SIZE)),
  control: z.string().check(z.maxLength(4000)),
  due: z.array(z.tuple([id, z.number()])),
  above: z.array(z.boolean()),
  registers: z.record(z.string(), z.number()),
  mended: z.array(z.nullable(z.number())),
});

const door = {
  ...open,
  ring: z.strictObject({
    at_s: z.number(),
    kind: z.enum(['alarm', 'complaint', 'routine']),
    symptoms: z.array(z.enum(SYMPTOM_IDS)),
  }),
  from: snapshot,
  looked_s: z.number(),
  left: z.optional(snapshot),
};

const entry = z.strictObject({
  from_s: z.number(),
  to_ms: z.int(),
  onSite: z.boolean(),
  unsafe: z.boolean(),
  found: ids,
  mended: ids,
  cleaned: ids,
  advised: ids,
  proved: ids,
  minutes: z.number(),
  money_usd: z.number(),
  stood: z.array(z.strictObject({ key: id, since_s: z.number() })),
  lost: z.boolean(),
  actions: z.array(recordedAction).check(z.maxLength(2000)),
  state: z.string().check(z.maxLength(64)),
});

const lotState = z.strictObject({
  ...open,
  t_s: z.number(),
  snapshot,
  harm: z.strictObject({ ground_m3: z.number(), untreated_h: z.number() }),
  left: z.optional(snapshot),
  visits: z.array(z.strictObject({ ...door, entry })).check(z.maxLength(400)),
  door: z.optional(z.strictObject(door)),
});

const keptSchema = z.strictObject({
  version: z.literal(1),
  engine: z.literal(ENGINE_VERSION),
  roundHash: z.string(),
  lots: z.array(lotState).check(z.maxLength(24)),
});

export interface KeptRound {
  readonly version: 1;
  readonly engine: typeof ENGINE_VERSION;
  readonly roundHash: string;
  readonly lots: readonly LotState[];
}

export function keepRound(lots: readonly Lot[], states: readonly LotState[]): KeptRound {
  return { version: 1, engine: ENGINE_VERSION, roundHash: hashOf(lots), lots: states };
}

/** The states that were kept of these lots; undefined where they are of another round or engine, or broken. */
export function keptStates(lots: readonly Lot[], kept: unknown): readonly LotState[] | undefined {
  const checked = keptSchema.safeParse(kept);
  if (!checked.success || checked.data.roundHash !== hashOf(lots)) return undefined;
  const fits = checked.data.lots.every(
    ({ since_s, over }, i) =>
      since_s.length === lots[i]?.file.wears.length && over.length === lots[i]?.file.happens.length,
  );
  // What the schema leaves open are names, of delays and registers: the engine asks for its own and finds no others.
  return fits && checked.data.lots.length === lots.length ? (checked.data.lots as unknown as LotState[]) : undefined;
}

function hashOf([first]: readonly Lot[]): string {
  return first ? roundHash(first.round) : '';
}
