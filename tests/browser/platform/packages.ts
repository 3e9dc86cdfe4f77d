/** Packages as a platform unpacks them: made by the command line's own code from the built page, zipped, and read back. */
import { unzipSync } from 'fflate';
import { type CallFile, shippedCalls } from '../../../src/calls/index.ts';
import { packageOf } from '../../../src/cli/pack.ts';
import { zipOf } from '../../../src/cli/zip.ts';
import { unpackLeft } from '../../../src/records/learnt/left.ts';
import type { PackedMode, Platform } from '../../../src/records/package/platforms.ts';
import { PAGE } from '../../../src/tools/build-page.ts';

/** How many actions a kept call holds, as a platform has it. */
export async function stepsIn(left: string | undefined): Promise<number | undefined> {
  return (await unpackLeft(left ?? ''))?.progress.actions.length;
}

export type Unpacked = Readonly<Record<string, Uint8Array>>;

export function shipped(id: string): CallFile {
  const call = shippedCalls().find((one) => one.id === id);
  if (call === undefined) throw new Error(`${id} does not ship`);
  return call;
}

export function unpacked(calls: readonly CallFile[], platform: Platform, mode: PackedMode = 'graded'): Unpacked {
  return unzipSync(zipOf(packageOf(calls, { platform, mode, language: 'en', page: PAGE })));
}
