/** What a drill shows, as plain data: the page draws it and tells it in words. */
import type { BreakerName, FloatName, LampName } from '../control/index.ts';
import type { FaultPlace } from '../faults/entry.ts';
import type { EffluentColour, FoamKind, LiquorColour } from '../plant/index.ts';
import type { Message } from '../service/message.ts';

export interface FloatShown {
  readonly id: FloatName;
  /** Heights over the tank's floor at which it makes and breaks, m. */
  readonly makes_m: number;
  readonly breaks_m: number;
  readonly position: 'up' | 'hanging';
  /** What a meter finds at its wires. */
  readonly made: boolean;
}

export interface FloatsFigure {
  readonly kind: 'floats';
  /** Heights over the tank's floor, m. */
  readonly ceiling_m: number;
  readonly inlet_m: number;
  readonly level_m: number;
  readonly rising: boolean;
  /** Lowest first. */
  readonly floats: readonly FloatShown[];
  readonly timer: 'none' | 'rests' | 'doses';
}

export interface LinePart {
  readonly id: string;
  /** How often such a part leaks, beside the others. */
  readonly weight: number;
  /** Whether the readings still allow it. */
  readonly left: boolean;
}

/** The line squeezed shut behind a part: the gauge at the compressor tells on which side the leak is. */
export interface LineReading {
  readonly point: number;
  readonly pressure_kPa: number;
  readonly leak: 'before' | 'beyond';
}

export interface LineFigure {
  readonly kind: 'line';
  /** From the compressor to the diffusers; point n lies behind the n-th of them. */
  readonly parts: readonly LinePart[];
  readonly readings: readonly LineReading[];
}

export interface JarFigure {
  readonly kind: 'jar';
  readonly minutes: number;
  /** Sludge line, mL in the litre. */
  readonly settled_mLL: number;
  readonly solids_mgL: number;
  readonly floats: boolean;
  readonly colour: LiquorColour;
  readonly above: EffluentColour;
  readonly foam: FoamKind;
}

export type LeverStand = 'on' | 'off' | 'tripped';

export interface PanelFigure {
  readonly kind: 'panel';
  readonly levers: Readonly<Record<BreakerName, LeverStand>>;
  readonly lamps: readonly { readonly id: LampName; readonly lit: boolean }[];
  readonly buzzer: boolean;
  readonly testHeld: boolean;
  readonly selector: 'hand' | 'off' | 'auto';
  /** None on a panel that starts by its float. */
  readonly timer: { readonly clock_s: number; readonly keeps: boolean } | null;
  readonly hours: number;
  readonly cycles: number;
  readonly gauge_kPa: number;
  /** What is known from elsewhere. */
  readonly notes: readonly Message[];
}

/** Screws one after the other, and what lies between each and the next. */
export interface Chain {
  readonly nodes: readonly { readonly id: string; readonly name: Message }[];
  readonly parts: readonly Message[];
}

export interface MeterFigure {
  readonly kind: 'meter';
  readonly mode: 'volts' | 'ohms';
  readonly chain: Chain;
  /** Places of the two probes in the chain. */
  readonly red: number;
  readonly black: number;
  /** What it shows; null over its range; not there where it is asked for. */
  readonly reading?: number | null;
  readonly notes: readonly Message[];
}

/** A sheet with what is known, line by line. */
export interface SheetFigure {
  readonly kind: 'sheet';
  readonly rows: readonly Message[];
}

/** The works from the house to the field, with the parts that may be pointed at, in the order of their marks. */
export interface PlanFigure {
  readonly kind: 'plan';
  readonly parts: readonly FaultPlace[];
}

export type Figure = FloatsFigure | LineFigure | JarFigure | PanelFigure | MeterFigure | SheetFigure | PlanFigure;
