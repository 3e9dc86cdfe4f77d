/** Every action there is, by id. */
import type { UnitSpec } from '../unit/index.ts';
import type { ActionDef } from './action.ts';
import { AIR_ACTIONS } from './actions/air.ts';
import { CLARIFIER_ACTIONS } from './actions/clarifier.ts';
import { DIFFUSER_ACTIONS } from './actions/diffusers.ts';
import { DISINFECTION_ACTIONS } from './actions/disinfection.ts';
import { DRAIN_ACTIONS } from './actions/drains.ts';
import { FIELD_ACTIONS } from './actions/field.ts';
import { FLOAT_WIRE_ACTIONS } from './actions/floatWires.ts';
import { METER_ACTIONS } from './actions/meter.ts';
import { OUTLET_ACTIONS } from './actions/outlet.ts';
import { PANEL_ACTIONS } from './actions/panel.ts';
import { PHONE_ACTIONS } from './actions/phone.ts';
import { PROBE_ACTIONS } from './actions/probes.ts';
import { PUMP_ACTIONS } from './actions/pump.ts';
import { PUMP_TANK_ACTIONS } from './actions/pumpTank.ts';
import { SAMPLE_ACTIONS } from './actions/samples.ts';
import { TANK_ACTIONS } from './actions/tanks.ts';
import { TRASH_TANK_ACTIONS } from './actions/trashTank.ts';
import { TRUCK_ACTIONS } from './actions/truck.ts';
import { VISIT_ACTIONS } from './actions/visits.ts';
import { WIRING_ACTIONS } from './actions/wiring.ts';
import { YARD_ACTIONS } from './actions/yard.ts';

export const ACTIONS: readonly ActionDef[] = [
  ...PHONE_ACTIONS,
  ...YARD_ACTIONS,
  ...DRAIN_ACTIONS,
  ...FIELD_ACTIONS,
  ...PANEL_ACTIONS,
  ...METER_ACTIONS,
  ...PROBE_ACTIONS,
  ...WIRING_ACTIONS,
  ...AIR_ACTIONS,
  ...OUTLET_ACTIONS,
  ...TANK_ACTIONS,
  ...TRASH_TANK_ACTIONS,
  ...CLARIFIER_ACTIONS,
  ...TRUCK_ACTIONS,
  ...DIFFUSER_ACTIONS,
  ...DISINFECTION_ACTIONS,
  ...PUMP_TANK_ACTIONS,
  ...PUMP_ACTIONS,
  ...SAMPLE_ACTIONS,
  ...FLOAT_WIRE_ACTIONS,
  ...VISIT_ACTIONS,
];

export const ACTION_BY_ID: ReadonlyMap<string, ActionDef> = new Map(ACTIONS.map((a) => [a.id, a]));

/** The action with an id, where a unit has what it works on. */
export function actionOn(spec: UnitSpec, id: string): ActionDef | undefined {
  const def = ACTION_BY_ID.get(id);
  return def && fits(def, spec) ? asOn(spec, def) : undefined;
}

/** An action as it is on a unit: with the questions that depend on it. */
export function asOn(spec: UnitSpec, def: ActionDef): ActionDef {
  return def.formOn ? { ...def, form: def.formOn(spec) } : def;
}

export function fits(def: ActionDef, spec: UnitSpec): boolean {
  return def.fits?.(spec) ?? true;
}
