/** Four findings: which one cannot wait, or which one can, by what the catalogue says each does to people and ground. */
import type { Urgency } from '../faults/entry.ts';
import { faultsOf, type PlacedFault } from '../faults/index.ts';
import { say } from '../service/message.ts';
import { Draws } from './draws.ts';
import type { Maker, Option } from './drill.ts';
import { nameOf } from './faultNames.ts';
import { unitRows } from './sheet.ts';

/** What a household only does, and what only confuses a check, is no finding to be sent for. */
const NO_FINDING = ['use', 'kit', 'house'];
/** Nearly the same in other words, or a power cut that nobody mends: no fair finding. */
const UNFAIR =
  /^(outage|low-voltage|surge-latch|soil-saturated|panel-wet|alarm-float|float-on-scum|lamp-dead|buzzer|air-switch|sensing|insects|softener|tablets-drowned|overfeed)/;
const OTHERS = 3;

const VARIANTS: readonly {
  readonly id: 'now' | 'waits';
  readonly right: Urgency;
  readonly wrong: readonly Urgency[];
}[] = [
  { id: 'now', right: 'now', wrong: ['before-dosing', 'next-visit'] },
  { id: 'waits', right: 'next-visit', wrong: ['before-dosing', 'now'] },
];

export const urgentDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'urgent');
  const { id: variant, right, wrong } = draws.one(VARIANTS);
  const findings = faultsOf(spec).filter(({ id, family }) => !NO_FINDING.includes(family) && !UNFAIR.test(id));
  const chosen = draws.one(findings.filter(({ urgency }) => urgency === right));
  const others = draws.some(
    findings.filter(({ urgency }) => wrong.includes(urgency)),
    OTHERS,
  );
  const next = say(`drill.urgent.next.${variant}`);
  const option = (fault: PlacedFault): Option => ({
    id: fault.key,
    label: nameOf(fault),
    why: say('drill.two', { a: say(`drill.urgent.is.${fault.urgency}`, { fault: nameOf(fault) }), b: next }),
  });
  return {
    skill: 'urgent',
    seed,
    prompt: say(`drill.urgent.ask.${variant}`),
    figure: { kind: 'sheet', rows: unitRows(spec) },
    ask: { kind: 'choice', right: chosen.key, options: draws.some([chosen, ...others]).map(option) },
  };
};
