/** What a person sees and hears from where they stand without doing anything: the only live part of the picture. */
import type { Readout, Unit } from '../unit/index.ts';
import type { LiveFacts } from './facts.ts';
import type { Person } from './person.ts';

/** From anywhere in the yard: lamp, buzzer, spray, sewage at the clean-out. Near by: the compressor, an open tank. */
export function perceive(person: Person, unit: Unit, now: Readout): LiveFacts {
  const out = now.control.outputs;
  const atPanel = person.onSite || person.seesLamp;
  return {
    ...(atPanel ? { lamp: out.lamp ? 'lit' : 'dark', buzzer: out.buzzer } : {}),
    ...(person.onSite ? { headPressure_kPa: now.headPressure_kPa, relief_Ls: now.flows.relieved * 1000 } : {}),
    ...(person.onSite && person.place === 'compressor' ? compressorHeard(unit, now) : {}),
    ...(person.lids.has('aeration') && near(person, 'aeration') ? aerationSeen(now) : {}),
    ...(person.lids.has('pump') && near(person, 'pump-tank')
      ? { pumpTankLevel_m: now.flows.pump_m, pumpRuns: out.pumpRuns }
      : {}),
    ...(person.lids.has('trash') && near(person, 'trash-tank') ? { trashLevel_m: now.flows.trash_m } : {}),
  };
}

function near(person: Person, place: Person['place']): boolean {
  return person.onSite && person.place === place;
}

/** The hum tells load by its pitch; a torn diaphragm rattles. */
export function compressorHeard(unit: Unit, now: Readout): LiveFacts {
  const runs = now.control.outputs.compressorRuns;
  if (!runs) return { compressorRuns: false };
  return {
    compressorRuns: true,
    rattle: rattles(unit, now),
    compressorLoad: now.airPressure_kPa / unit.spec.plant.air.deadHead_kPa,
  };
}

export function rattles(unit: Unit, now: Readout): boolean {
  return unit.driveAt(now.t).condition.compressorPressure < 0.6;
}

function aerationSeen(now: Readout): LiveFacts {
  return {
    bubbles_Lmin: now.flows.air.diffuser_Lmin,
    aerationLevel_m: now.flows.aeration_m,
    hoursWithoutOxygen: now.hoursWithoutOxygen,
  };
}
