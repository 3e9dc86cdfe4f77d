/**
 * The Scene: everything the picture and the sound may show, as plain values. `yard` and `sound` draw a Scene and know
 * nothing else. Two makers fill it: `xray` (a unit, everything open) and `known` (what the person on the call knows).
 *
 * Elevations are metres from finished grade, up positive. Depths and thicknesses are metres. Shares run 0 to 1.
 * `null` means "not known" unless it says otherwise: the yard draws pencil there.
 */
import type { Message } from '../service/message.ts';
import { PLACES, type Place } from '../service/person.ts';
import type { CalendarDay } from '../unit/calendar.ts';
import type { JarScene } from './jarTypes.ts';

export type { JarScene } from './jarTypes.ts';

/** The parts one can go to, in the order the water takes, then the dry ones: every place but the phone. */
export type PartId = Exclude<Place, 'phone'>;
export const PART_IDS: readonly PartId[] = PLACES.filter((place) => place !== 'phone');

export type FloatId = 'redundant-off' | 'stop' | 'start-stop' | 'dose' | 'override' | 'high-water';
export type LampId = 'lamp' | 'air' | 'water';
export type BreakerId = 'alarm' | 'compressor' | 'pump';
export type ChamberId = 'trash-tank' | 'aeration' | 'clarifier' | 'disinfection' | 'pump-tank';

/**
 * How a part is drawn. `pencil`: never seen, a generic section. `ink`: as it was when seen, `fresh` falls from 1
 * towards 0 as the sight ages. `live`: seen or heard right now.
 */
export type Ink =
  | { readonly kind: 'pencil' }
  | { readonly kind: 'ink'; readonly seen_s: number; readonly fresh: number }
  | { readonly kind: 'live' };

/** Water by quality; the yard computes its colour from these, it is never switched. */
export interface WaterLook {
  /** Suspended solids, mg/L: mixed liquor is brown, clear effluent has almost none. */
  readonly solids_mgL: number;
  /** Dissolved oxygen, mg/L. */
  readonly oxygen_mgL: number;
  /** Hours the liquor has been without oxygen: grey after half a day, black after a day. */
  readonly hoursWithoutOxygen: number;
  /** Total chlorine residual, mg/L. */
  readonly residual_mgL: number;
  /** Share of raw sewage, 0 to 1. */
  readonly raw: number;
}

export interface ChamberScene {
  readonly id: ChamberId;
  readonly ink: Ink;
  readonly lid: 'closed' | 'open';
  /** Water surface, m from grade. */
  readonly level_m: number | null;
  readonly water: WaterLook | null;
  /** Thickness of floating scum and settled sludge, m. */
  readonly scum_m: number | null;
  readonly sludge_m: number | null;
  /** Air that bubbles up, L/min (aeration chamber only; 0 is a still surface). */
  readonly bubbles_Lmin: number | null;
  /** Sludge cores and probed depths taken: where across the tank (0 to 1) and how thick, m. */
  readonly cores: readonly { readonly across: number; readonly sludge_m: number }[];
}

export interface FloatScene {
  readonly id: FloatId;
  readonly ink: Ink;
  /** Elevation of the point where its tether is tied, m from grade, and where it makes. */
  readonly tether_m: number;
  readonly makes_m: number;
  /** `hanging` points down, `up` points up, `held-down`/`held-up` is caught, `lifted` is in a hand. */
  readonly position: 'hanging' | 'up' | 'held-down' | 'held-up' | 'lifted' | null;
  /** Whether its contact is made; null where nobody has measured or seen it. */
  readonly made: boolean | null;
}

export interface PumpScene {
  readonly ink: Ink;
  readonly running: boolean | null;
  /** Elevation of its intake, m from grade. */
  readonly intake_m: number;
}

export interface BreakerScene {
  readonly id: BreakerId;
  readonly ink: Ink;
  readonly lever: 'on' | 'tripped' | 'off' | null;
  readonly locked: boolean;
}

export interface LampScene {
  /** `lamp` stands for every alarm; `air` and `water` are the two of a panel that tells them apart. */
  readonly id: LampId;
  readonly ink: Ink;
  readonly state: 'lit' | 'dark' | null;
}

/** The timer a panel has; what its dial shows is null until somebody reads it. */
export type TimerScene =
  | {
      readonly kind: 'night';
      /** Panel clock, seconds of the day; starts and minutes of its doses. */
      readonly dial: {
        readonly clock_s: number;
        readonly starts_s: readonly number[];
        readonly run_min: number;
      } | null;
    }
  | {
      readonly kind: 'timed';
      /** Minutes from start to start, and of one dose. */
      readonly dial: { readonly every_min: number; readonly run_min: number } | null;
    };

export interface PanelScene {
  readonly ink: Ink;
  readonly door: 'closed' | 'open' | null;
  /** Whether an alarm stays until the panel is reset, or goes with its cause. */
  readonly alarm: 'latching' | 'following';
  /** From left to right. */
  readonly lamps: readonly LampScene[];
  readonly buzzer: boolean | null;
  readonly testHeld: boolean;
  readonly breakers: readonly BreakerScene[];
  readonly selector: 'hand' | 'off' | 'auto' | null;
  /** null on a panel that has none. */
  readonly timer: TimerScene | null;
  readonly counters: { readonly pumpHours: number; readonly pumpCycles: number } | null;
  readonly gauge: GaugeScene;
}

/** Gauge of the air switch, kPa: what it shows, what the label calls healthy, where the switch closes as it falls. */
export interface GaugeScene {
  readonly kPa: number | null;
  readonly low_kPa: number;
  readonly high_kPa: number;
  readonly falls_kPa: number;
}

/** The outlet the compressor is plugged into. */
export interface OutletScene {
  readonly ink: Ink;
  /** It trips on a leak to ground, and has a test and a reset button. */
  readonly gfci: boolean;
  readonly plugged: boolean | null;
  readonly tripped: boolean | null;
}

export interface CompressorScene {
  readonly ink: Ink;
  readonly housing: 'closed' | 'open';
  /** Heard or felt. */
  readonly running: boolean | null;
  readonly outlet: OutletScene;
  /** Hum pitch and roughness for the sound: load 0 (open line) to 1 (dead-headed); torn rattles. */
  readonly load: number | null;
  readonly rattle: boolean;
  /** How far its armature swings, as a share of the open line's stroke. */
  readonly stroke: number | null;
  /** Air that reaches the diffusers, L/min. */
  readonly flow_Lmin: number | null;
  readonly pressure_kPa: number | null;
  /** A leak that was seen, heard or soaped out; size as hole diameter, m. */
  readonly leak: { readonly where: 'line' | 'joint'; readonly hole_m: number } | null;
  readonly foam: boolean;
  /** Dirt on the intake filter, 0 clean to 1 blocked. */
  readonly intakeDirt: number | null;
}

export interface DiscFilterScene {
  readonly ink: Ink;
  readonly open: boolean;
  /** Share of its flow area left, 1 clean. */
  readonly flowShare: number | null;
}

export interface FieldScene {
  readonly ink: Ink;
  /** Sprayed over the lawn from heads, or dripped under it from lines. */
  readonly kind: 'spray' | 'drip';
  /** Pressure at the heads or in the lines, kPa; 0 when the pump rests. */
  readonly headPressure_kPa: number | null;
  /** The pressure the field is made for, kPa. */
  readonly designPressure_kPa: number;
  /** None in a drip field. */
  readonly heads: number;
  /** Radius a head throws at its design pressure, m. */
  readonly throw_m: number;
  /** Share of the water it is made for that it now gets. */
  readonly wet: number | null;
}

/** The ultraviolet lamp in the disinfection riser. */
export interface UltravioletScene {
  readonly ink: Ink;
  readonly present: boolean;
  readonly lit: boolean | null;
}

export interface HouseScene {
  readonly ink: Ink;
  /** Water now drawn in the house, L/s; null when nobody told. */
  readonly draw_Ls: number | null;
  readonly backingUp: boolean | null;
}

/** Water on its way along the works, L/s, in flow order; null = not known. */
export interface FlowScene {
  readonly sewer_Ls: number | null;
  readonly trashOut_Ls: number | null;
  readonly clarifierOut_Ls: number | null;
  readonly riserOut_Ls: number | null;
  readonly discharge_Ls: number | null;
  /** Sewage lifting the clean-out lid onto the ground, L/s. */
  readonly relief_Ls: number | null;
}

/** A pencil or ink note pinned to a part: what was said by phone, when something was seen. */
export interface NoteScene {
  readonly part: PartId;
  readonly ink: Ink;
  readonly text: Message;
}

/** Elevations of the property, m from grade, so that the yard draws true heights. */
export interface GeometryScene {
  readonly fixtureRim_m: number;
  readonly cleanOut_m: number;
  readonly lid_m: number;
  readonly trash: BasinScene;
  readonly aeration: BasinScene & {
    readonly diffuser_m: number;
    readonly clarifier: HopperScene;
  };
  readonly riser: BasinScene;
  readonly pump: BasinScene;
  /** Thickness that calls for pumping out, m: of sludge and scum together, and of sludge on the average of the cores. */
  readonly fullAt: { readonly trash_m: number; readonly pump_m: number };
}

/** Straight walls over a hopper that narrows to its slot: heights, m, and plan areas, m2. */
export interface HopperScene {
  readonly straight_m: number;
  readonly hopper_m: number;
  readonly area_m2: number;
  readonly slot_m2: number;
}

export interface BasinScene {
  readonly inlet_m: number;
  readonly outlet_m: number;
  readonly floor_m: number;
  readonly ceiling_m: number;
  /** Plan area, m2: the yard makes wide tanks wider. */
  readonly area_m2: number;
}

/** The sun or the moon. */
export interface BodyScene {
  /** Sine of its height over the horizon. */
  readonly up: number;
  /** From where it rises, -1, through the south, 0, to where it sets, 1: hours from noon, eight to each side. */
  readonly across: number;
}

/** Day, season and weather: what everybody sees who steps outside. */
export interface SkyScene {
  /** Light, 0 night to 1 day. */
  readonly daylight: number;
  /** Share of the sky that clouds cover. */
  readonly cloud: number;
  /** Rain that falls now, mm/h. */
  readonly rain_mmh: number;
  /**
   * Wind along the plate, m/s, a few metres over the lawn: above 0 it blows to the right. The plate looks south with east on
   * its left, so such a wind comes from the east and one below 0 from the west.
   */
  readonly wind_ms: number;
  /** How wet the ground lies, 0 dry to 1 standing in puddles. */
  readonly wet: number;
  /** Day of the calendar, and of the year, 1 to 366: trees and lawn follow it. */
  readonly date: CalendarDay;
  readonly yearDay: number;
  /** Hoar frost on lawn and twigs, 0 to 1. */
  readonly frost: number;
  readonly sun: BodyScene;
  /** `age` is the share of its month since new moon. */
  readonly moon: BodyScene & { readonly age: number };
}

export interface Scene {
  readonly kind: 'known' | 'xray';
  /** Seconds of the local day, for light. */
  readonly clock_s: number;
  readonly sky: SkyScene;
  readonly geometry: GeometryScene;
  /** Where the person stands; `phone` before the visit. */
  readonly standsAt: PartId | 'phone' | 'yard';
  readonly house: HouseScene;
  readonly chambers: Readonly<Record<ChamberId, ChamberScene>>;
  readonly jar: JarScene;
  readonly floats: readonly FloatScene[];
  readonly pump: PumpScene;
  readonly panel: PanelScene;
  readonly compressor: CompressorScene;
  readonly ultraviolet: UltravioletScene;
  readonly discFilter: DiscFilterScene;
  readonly field: FieldScene;
  readonly flows: FlowScene;
  readonly notes: readonly NoteScene[];
}
