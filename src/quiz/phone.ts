/** Put the steps of a call by phone in order, and those of work on site. */
import { PHONE_STEPS, SITE_STEPS } from '../calls/procedure.ts';
import { say } from '../service/message.ts';
import { Draws } from './draws.ts';
import type { Maker } from './drill.ts';
import { ordering } from './sequence.ts';
import { unitRows } from './sheet.ts';

export const phoneDrill: Maker = (seed, spec) => {
  const draws = new Draws(seed, 'phone');
  const onSite = draws.chance(0.5);
  return {
    skill: 'phone',
    seed,
    prompt: say(onSite ? 'drill.phone.prompt-site' : 'drill.phone.prompt'),
    figure: { kind: 'sheet', rows: unitRows(spec) },
    ask: ordering(draws, 'phone', onSite ? SITE_STEPS : PHONE_STEPS),
  };
};
