/** What a person sees and hears from where they stand without doing anything: the only live part of the picture. */
import type { Readout, Unit } from '../unit/index.ts';
import type { LiveFacts } from './facts.ts';
import type { Person } from './person.ts';

/**
 * From anywhere in the yard: lamps, buzzer, spray (not what drips under the lawn), sewage at the clean-out. Near by: the
 * compressor, an open tank, and what was once looked at there.
 */
export function perceive(person: Person, unit: Unit, now: Readout): LiveFacts {
  const out = now.control.outputs;
  const atPanel = person.onSite || person.seesLamp;
  return {
    ...(atPanel ? { ...lampsSeen(unit, now), buzzer: out.buzzer } : {}),
    ...(person.onSite ? { relief_Ls: now.flows.relieved * 1000 } : {}),
    ...(person.onSite && unit.spec.plant.discharge.kind === 'spray' ? { headPressure_kPa: now.headPressure_kPa } : {}),
    ...(near(person, 'compressor') ? compressorHeard(unit, now) : {}),
    ...(near(person, 'compressor') && lookedAt(person, 'note.outlet') ? outletFacts(now) : {}),
    ...(near(person, 'disinfection') && person.lids.has('riser') && lookedAt(person, 'note.ultraviolet')
      ? { ultravioletLit: out.ultravioletLit }
      : {}),
    ...(person.lids.has('aeration') && near(person, 'aeration') ? aerationSeen(now) : {}),
    ...(person.lids.has('pump') && near(person, 'pump-tank')
      ? { pumpTankLevel_m: now.flows.pump_m, pumpRuns: out.pumpRuns, pumpTankColour: now.sensed.effluent }
      : {}),
    ...(person.lids.has('trash') && near(person, 'trash-tank') ? { trashLevel_m: now.flows.trash_m } : {}),
  };
}

function near(person: Person, place: Person['place']): boolean {
  return person.onSite && person.place === place;
}

/** What is not in plain view shows on from there once somebody looked at it and wrote it down. */
function lookedAt(person: Person, note: string): boolean {
  return person.notebook.some((n) => n.what.id === note);
}

/** The lamps of the panel, one or two. */
function lampsSeen(unit: Unit, now: Readout): LiveFacts {
  const { lamp, airLamp, waterLamp } = now.control.outputs;
  const seen = (lit: boolean) => (lit ? 'lit' : 'dark');
  if (unit.spec.panel.lamps === 'one') return { lamp: seen(lamp) };
  return { lamp: seen(lamp), airLamp: seen(airLamp), waterLamp: seen(waterLamp) };
}

/** The compressor's outlet as one looks at it: whether the plug is in it, and whether it has tripped. */
export function outletSeen(now: Readout): { readonly plugged: boolean; readonly tripped: boolean } {
  const { compressorCord, gfci } = now.control.regions;
  return { plugged: compressorCord === 'plugged' || compressorCord === 'chafed', tripped: gfci === 'tripped' };
}

function outletFacts(now: Readout): LiveFacts {
  const { plugged, tripped } = outletSeen(now);
  return { outletPlugged: plugged, outletTripped: tripped };
}

/** Share of its dead-head pressure over which a compressor hums laboured (convention). */
export const HUMS_LABOURED = 0.5;

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
    liquorColour: now.sensed.liquor,
  };
}
