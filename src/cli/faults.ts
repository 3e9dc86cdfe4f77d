/** `faults`: what each fault shows, by simulation: which lamps and which checks tell it, on which unit. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { shippedLibrary } from '../calls/index.ts';
import type { Reading, Signature } from '../diagnosis/index.ts';
import { faultsOf } from '../faults/index.ts';
import { faultTable } from './fault-table.ts';
import type { SignatureJob } from './faults-worker.ts';
import { GOOD, print, printJson, UsageError } from './output.ts';

const HERE = dirname(fileURLToPath(import.meta.url));

/** Signatures of a unit with a household. */
export interface SignatureSet {
  readonly unit: string;
  readonly household: string;
  readonly signatures: readonly Signature[];
}

export async function faults(args: readonly string[]): Promise<number> {
  const { values } = parseArgs({
    args: [...args],
    options: {
      unit: { type: 'string', default: 'u1,u2,u3' },
      household: { type: 'string', default: 'family-2,family-3,family-5' },
      json: { type: 'boolean', default: false },
    },
  });
  const library = shippedLibrary();
  const units = named(values.unit, library.units, 'unit');
  const households = named(values.household, library.households, 'household');
  const sets: SignatureSet[] = [];
  for (const unit of units) for (const household of households) sets.push(await signatureSet(unit, household));
  if (values.json) {
    const rows = sets.flatMap((set) =>
      set.signatures.map((s) => ({ unit: set.unit, household: set.household, ...rowOf(s) })),
    );
    printJson(rows);
  } else for (const line of await faultTable(sets)) print(line);
  return GOOD;
}

function named(list: string, known: ReadonlyMap<string, unknown>, what: string): readonly string[] {
  const ids = list.split(',');
  const unknown = ids.find((id) => !known.has(id));
  if (unknown !== undefined)
    throw new UsageError(`no ${what} "${unknown}"; take some of ${[...known.keys()].join(',')}`);
  return ids;
}

function rowOf({ fault, severity, checks, alarms, alarm_h }: Signature) {
  return {
    fault,
    severity,
    alarms,
    ...(alarm_h === undefined ? {} : { onset_h: Math.round(alarm_h * 100) / 100 }),
    checks: checks.map((c) => ({
      check: c.check,
      healthy: textOf(c.healthy),
      faulty: textOf(c.faulty),
      tells: c.tells,
    })),
  };
}

function textOf({ words, numbers }: Reading): string {
  return [...words, ...numbers.map((n) => `${n.measure}=${Math.round(n.value * 1000) / 1000}`)].join(' ');
}

/** From the cache, where this very program made it before, else worked out by as many threads as there are cores. */
async function signatureSet(unit: string, household: string): Promise<SignatureSet> {
  const folder = join(HERE, '../signatures');
  const file = join(folder, `${unit}-${household}-${programHash().slice(0, 16)}.json`);
  if (existsSync(file)) {
    const text = readFileSync(file, 'utf8');
    return { unit, household, signatures: JSON.parse(text) as Signature[] };
  }
  const spec = shippedLibrary().units.get(unit);
  const keys = spec
    ? faultsOf(spec)
        .filter((f) => f.effect.uses === undefined)
        .map((f) => f.key)
    : [];
  const threads = Math.max(1, availableParallelism());
  const shares = Array.from({ length: threads }, (_, i) => keys.filter((_key, k) => k % threads === i));
  const made = await Promise.all(shares.map((faults) => inThread({ unit, household, faults })));
  const order = new Map(keys.map((key, i) => [key, i]));
  const signatures = made.flat().sort((a, b) => (order.get(a.fault) ?? 0) - (order.get(b.fault) ?? 0));
  const text = JSON.stringify(signatures);
  mkdirSync(folder, { recursive: true });
  writeFileSync(file, text);
  return { unit, household, signatures };
}

function inThread(job: SignatureJob): Promise<readonly Signature[]> {
  return new Promise((done, fail) => {
    const worker = new Worker(join(HERE, 'faults-worker.js'), { workerData: job });
    worker.once('message', done);
    worker.once('error', fail);
  });
}

/** The program and all data in it: whatever could change a signature. */
function programHash(): string {
  const hash = createHash('sha256');
  for (const file of readdirSync(HERE)
    .filter((f) => f.endsWith('.js'))
    .sort())
    hash.update(readFileSync(join(HERE, file)));
  for (const file of assets()) hash.update(readFileSync(file));
  return hash.digest('hex');
}

function assets(): readonly string[] {
  const folder = join(HERE, 'assets');
  if (!existsSync(folder)) return [];
  return readdirSync(folder)
    .sort()
    .map((file) => join(folder, file));
}
