/** Signatures as a page of Markdown: per unit a table of faults, and the pairs that no check tells apart. */

import { faultName } from '../calls/index.ts';
import { alikePairs, type Signature, tellingAct } from '../diagnosis/index.ts';
import { PLACED_FAULTS } from '../faults/index.ts';
import { english } from './english.ts';
import type { SignatureSet } from './faults.ts';

/** Checks named in a row; the rest are counted. */
const NAMED = 6;

export async function faultTable(sets: readonly SignatureSet[]): Promise<readonly string[]> {
  const say = await english();
  const name = (key: string) => say(faultName(key));
  const checkName = (id: string) => {
    const last = tellingAct(id);
    return last ? say(last.label).toLowerCase() : id;
  };
  const lines: string[] = [
    '# What each fault shows',
    '',
    'Made by simulation (`npm run -s underlawn -- faults`): each fault at its usual severity on a property that was sound for',
    'three days, looked at by every check 26 hours after it began (one that grows or shows late: when it has), beside the same',
    'property without it. A check tells a fault where its reading would differ for every household named.',
  ];
  for (const unit of new Set(sets.map((s) => s.unit))) {
    const own = sets.filter((s) => s.unit === unit);
    const [first] = own;
    if (!first) continue;
    lines.push('', `## ${unit.toUpperCase()}`, '', `Households: ${own.map((s) => s.household).join(', ')}.`, '');
    lines.push('| Fault | Severity | Lamp | Told by |', '|---|---|---|---|');
    for (const key of new Set(first.signatures.map((s) => s.fault))) {
      const severity = PLACED_FAULTS.get(key)?.severity ?? 1;
      const same = own.flatMap((s) => s.signatures.filter((g) => g.fault === key && g.severity === severity));
      lines.push(`| ${name(key)} | ${severity} | ${lampOf(same)} | ${toldBy(same, checkName)} |`);
    }
    const usual = first.signatures.filter((s) => s.severity === PLACED_FAULTS.get(s.fault)?.severity);
    const pairs = alikePairs(usual);
    lines.push('', pairs.length > 0 ? 'No check tells these apart:' : 'Some check tells every fault from every other.');
    if (pairs.length > 0) lines.push('', ...pairs.map(([a, b]) => `- ${name(a)} and ${name(b)}`));
  }
  return lines;
}

function lampOf(signatures: readonly Signature[]): string {
  const hours = signatures.flatMap((s) => (s.alarm_h === undefined ? [] : [s.alarm_h]));
  if (hours.length === 0) return 'stays dark';
  const [least, most] = [Math.min(...hours), Math.max(...hours)];
  const span = text(least) === text(most) ? text(least) : `${text(least)} to ${text(most)}`;
  return hours.length < signatures.length ? `${span} h, not for all` : `${span} h`;
}

function text(hours: number): string {
  return hours < 10 ? hours.toFixed(1) : hours.toFixed(0);
}

function toldBy(signatures: readonly Signature[], checkName: (id: string) => string): string {
  const [first] = signatures;
  const telling = first?.checks.filter((_check, i) => signatures.every((s) => s.checks[i]?.tells)) ?? [];
  const names = telling.slice(0, NAMED).map((c) => checkName(c.check));
  const more = telling.length - names.length;
  return names.length === 0 ? 'none' : `${names.join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}
