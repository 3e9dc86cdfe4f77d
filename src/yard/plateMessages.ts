/** What the close-ups and the glass say: message ids, and figures as fine as they are read. */
import type { ControlId } from '../calls/view.ts';
import type { FloatId, JarScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';

export const floatName = (id: FloatId): Message => ({ id: `yard.float.${id}` });

/** What stands on the close-ups. */
export type CloseupLabel =
  | 'yard.panel.alarm'
  | 'yard.panel.compressor'
  | 'yard.panel.pump'
  | 'yard.panel.on'
  | 'yard.panel.air'
  | 'yard.panel.airUv'
  | 'yard.panel.water'
  | 'yard.panel.every'
  | 'yard.panel.dose'
  | 'yard.panel.follow1'
  | 'yard.panel.follow2'
  | 'yard.panel.follow3'
  | 'yard.panel.follow4'
  | 'yard.panel.trip'
  | 'yard.panel.off'
  | 'yard.panel.timer'
  | 'yard.panel.airSwitch'
  | 'yard.panel.relay'
  | 'yard.panel.selector'
  | 'yard.panel.selectorOff'
  | 'yard.panel.hand'
  | 'yard.panel.auto'
  | 'yard.panel.hours'
  | 'yard.panel.cycles'
  | 'yard.panel.silence'
  | 'yard.panel.test'
  | 'yard.panel.buzzer'
  | 'yard.panel.reset'
  | 'yard.panel.reset1'
  | 'yard.panel.reset2'
  | 'yard.panel.reset3'
  | 'yard.panel.reset4'
  | 'yard.floats.tree'
  | 'yard.floats.pump'
  | 'yard.floats.intake'
  | 'yard.floats.discharge'
  | 'yard.floats.checkValve'
  | 'yard.floats.inlet'
  | 'yard.floats.made'
  | 'yard.floats.open'
  | 'yard.floats.unknown'
  | 'plate.compressor.filter'
  | 'plate.compressor.coil'
  | 'plate.compressor.valves'
  | 'plate.compressor.diaphragm'
  | 'plate.compressor.torn'
  | 'plate.compressor.armature'
  | 'plate.compressor.outlet'
  | 'plate.compressor.tee'
  | 'plate.compressor.closed'
  | 'plate.compressor.state'
  | 'plate.compressor.runs'
  | 'plate.compressor.rests'
  | 'plate.compressor.pressure'
  | 'plate.compressor.air'
  | 'plate.compressor.stroke'
  | 'plate.compressor.dirt'
  | 'plate.jar.card'
  | 'plate.jar.unseen'
  | 'plate.jar.unread'
  | 'plate.jar.meniscus'
  | 'plate.jar.above'
  | 'plate.jar.specks'
  | 'plate.jar.line'
  | 'plate.jar.sludge'
  | 'plate.jar.lifted'
  | 'plate.core.tube'
  | 'plate.core.unseen'
  | 'plate.core.inlet'
  | 'plate.core.outlet'
  | 'plate.core.scum'
  | 'plate.core.clear'
  | 'plate.core.sludge'
  | 'plate.core.together'
  | 'plate.core.share'
  | 'plate.core.limit'
  | 'plate.core.state'
  | 'plate.core.below'
  | 'plate.core.reached'
  | 'plate.core.mean'
  | 'plate.core.cores'
  | 'plate.discs.lid'
  | 'plate.discs.inlet'
  | 'plate.discs.outlet'
  | 'plate.discs.body'
  | 'plate.discs.stack'
  | 'plate.discs.core'
  | 'plate.discs.nut'
  | 'plate.discs.clamp'
  | 'plate.discs.one'
  | 'plate.discs.groove'
  | 'plate.discs.dirt'
  | 'plate.discs.share'
  | 'plate.discs.pressure'
  | 'plate.discs.flow'
  | 'plate.clarifier.inlet'
  | 'plate.clarifier.air'
  | 'plate.clarifier.liquor'
  | 'plate.clarifier.diffuser'
  | 'plate.clarifier.hopper'
  | 'plate.clarifier.blanket'
  | 'plate.clarifier.slot'
  | 'plate.clarifier.tee'
  | 'plate.clarifier.outlet'
  | 'plate.clarifier.scum'
  | 'plate.clarifier.rises'
  | 'plate.clarifier.faster'
  | 'plate.clarifier.level'
  | 'plate.clarifier.height'
  | 'plate.clarifier.solids'
  | 'plate.clarifier.rate';

export const controlName = (id: ControlId): Message => ({ id: `control.${id}` });

export const label = (id: CloseupLabel): Message => ({ id });

/** A name with its value; null where nobody knows it. */
export type Reading = readonly [name: CloseupLabel, value: Message | null];
/** How often and how long the timer runs: "5 × 9 min". */
export const runs = (starts: number, run_min: number): Message => ({
  id: 'yard.panel.runs',
  values: { n: starts, run: { measure: 'duration_min', value: run_min, resolution: 1 } },
});

/** Minutes as a timer's front gives them. */
export const minutes = (min: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'duration_min', value: min, resolution: Number.isInteger(min) ? 1 : 0.1 } },
});

/** Time of day. */
export const clock = (s: number): Message => ({
  id: 'word.clock',
  values: { clock: { measure: 'clock_s', value: s } },
});

/** A height or a thickness, as fine as a tape is read. */
export const length = (m: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'length_m', value: m, resolution: 0.005 } },
});

/** A pressure as fine as the dial is read. */
export const pressure = (kPa: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'pressure_kPa', value: kPa, resolution: 0.5 } },
});

/** Water as fine as a timed draw-down tells its flow. */
export const waterFlow = (Ls: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'waterFlow_Ls', value: Ls, resolution: 0.01 } },
});

/** How fast water rises through a surface. */
export const riseRate = (mh: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'rise_mh', value: mh, resolution: 0.01 } },
});

/** Solids in water. */
export const solids = (mgL: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'concentration_mgL', value: mgL, resolution: 1 } },
});

/** Thinner than this, m, a whole inch says nothing. */
const THIN_m = 0.025;

/** A thickness as a core tube is read: to the centimetre. */
export const thickness = (m: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'length_m', value: m, resolution: m < THIN_m ? 0.005 : 0.01 } },
});

/** Parts of the jar's litre, as fine as its marks. */
export const milliLitres = (mLL: number): Message => ({
  id: 'plate.jar.mLL',
  values: { n: { measure: 'count', value: mLL, resolution: 10 } },
});

export const verdictName = (verdict: NonNullable<JarScene['verdict']>): Message => ({ id: `plate.jar.${verdict}` });

/** Air as fine as a flow of it is told. */
export const airFlow = (Lmin: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'airFlow_Lmin', value: Lmin, resolution: 1 } },
});

/** A share as whole percents. */
export const percent = (share: number): Message => ({
  id: 'word.quantity',
  values: { q: { measure: 'share', value: share, resolution: 0.01 } },
});
