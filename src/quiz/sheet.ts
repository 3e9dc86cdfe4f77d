/** What is known of a unit without looking at it, for a question's sheet. */
import { type Message, quantity, say } from '../service/message.ts';
import type { UnitSpec } from '../unit/spec.ts';

export function unitRows({ rated_m3d, plant, panel }: UnitSpec): readonly Message[] {
  return [
    say('drill.works.rated', { v: quantity('volume_m3', rated_m3d) }),
    say(`drill.works.dosing.${panel.dosing.kind}`),
    say(`drill.works.kills.${plant.disinfection.kind}`),
    say(`drill.works.alarm.${panel.alarm}`),
  ];
}
