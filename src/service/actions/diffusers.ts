/** Drop line and diffusers: they are lifted out of the open aeration chamber by the line itself. */
import type { ActionDef } from '../action.ts';
import { say } from '../message.ts';
import { actionsAt, mendsAt, off } from './shared.ts';

const needs = { lid: 'aeration' } as const;
const mend = mendsAt('aeration', { needs });

export const DIFFUSER_ACTIONS: readonly ActionDef[] = [
  actionsAt('aeration')(
    'lift-diffusers',
    'look',
    8,
    (d) => {
      const broken = d.unit.has('drop-line-broken');
      const fouled = d.unit.has('diffuser-fouled');
      d.note(
        say('note.drop-line'),
        say(broken ? 'reading.drop-line-off' : 'reading.drop-line-whole'),
        broken ? off('remark.coarse-bubbles') : undefined,
      );
      d.note(
        say('note.diffusers'),
        say(fouled ? 'reading.diffusers-slimed' : 'reading.diffusers-clean'),
        fouled ? off('remark.filter') : undefined,
      );
    },
    { needs },
  ),
  mend('clean-diffusers', 30),
  mend('renew-drop-line', 35, { cost_usd: 18, load: 'tubing' }),
];
