/** What drives the works of a running unit: draws, pump, compressor and the faults of the plant, and the line's pressure. */
import type { ControlState } from '../control/index.ts';
import {
  type DrawSource,
  type Drive,
  infiltration_m3s,
  leastPressure,
  lineState,
  openingPressure,
  operatingPoint,
  runsBack,
  SOUND,
  standingPressure,
  stillAir,
  type Weather,
  type Works,
} from '../plant/index.ts';
import { conditionAt, type FaultState, isGrowing, severityAt } from './fault.ts';
import type { Registers } from './registers.ts';
import type { UnitSpec } from './spec.ts';

export class Driver {
  readonly drive: Drive;
  private readonly spec: UnitSpec;
  private readonly works: Works;
  private readonly source: DrawSource;
  private readonly weather: Weather;
  private readonly faults: readonly FaultState[];
  private readonly registers: Registers;
  private growing = false;
  /** How far each fault had come when the condition was last taken. */
  private readonly severities: number[];
  private readonly air = stillAir();

  constructor(
    unit: { spec: UnitSpec; works: Works; source: DrawSource; faults: readonly FaultState[]; weather: Weather },
    registers: Registers,
  ) {
    this.spec = unit.spec;
    this.works = unit.works;
    this.source = unit.source;
    this.weather = unit.weather;
    this.faults = unit.faults;
    this.registers = registers;
    this.severities = unit.faults.map(() => 0);
    this.drive = {
      inflow_m3s: 0,
      seep_m3s: 0,
      pumpRuns: false,
      compressorRuns: true,
      ultravioletLit: false,
      condition: { ...SOUND },
      line: lineState(unit.works.line, SOUND),
      returned_m3s: 0,
      temperature_C: unit.weather.temperature_C(0),
      humidity: unit.weather.humidity(0),
    };
  }

  /** In line with control, draws and faults at an instant. */
  refresh(t: number, control: ControlState): void {
    const { drive } = this;
    drive.inflow_m3s = this.source.flowAt(t);
    drive.pumpRuns = control.outputs.pumpRuns;
    drive.compressorRuns = control.outputs.compressorRuns;
    drive.ultravioletLit = control.outputs.ultravioletLit;
    drive.temperature_C = this.weather.temperature_C(t);
    drive.humidity = this.weather.humidity(t);
    this.condition(t);
    this.returned(t);
    this.growing = this.faults.some((f) => isGrowing(f, t));
  }

  /** At an instant between events: growing faults move it. */
  at(t: number): Drive {
    if (this.growing) this.condition(t);
    this.returned(t);
    return this.drive;
  }

  /** Line pressure at the air switch, kPa, at an instant and state. */
  airPressure(t: number, y: Float64Array): number {
    const { condition } = this.at(t);
    const { air } = this.spec.plant;
    if (this.drive.compressorRuns) {
      return operatingPoint(air, condition, this.works.diffuserDepth(y), this.air).pressure_kPa;
    }
    const { airStopped_kPa, airStopped_s } = this.registers;
    return standingPressure(air, condition, airStopped_kPa, t - airStopped_s);
  }

  /** What that pressure is not under: quick, and enough to know on which side of the switch it is while all is well. */
  airPressureAtLeast(t: number, y: Float64Array): number {
    if (!this.drive.compressorRuns) return 0;
    return leastPressure(this.spec.plant.air, this.at(t).condition, this.works.diffuserDepth(y));
  }

  /** Notes the line's pressure when the compressor stops: what the closing diffusers leave in it. */
  stopAir(t: number, y: Float64Array): void {
    const running = this.airPressure(t, y);
    const shut = openingPressure(this.spec.plant.air, this.drive.condition, this.works.diffuserDepth(y));
    this.registers.airStopped_s = t;
    this.registers.airStopped_kPa = Math.min(running, shut);
    this.drive.compressorRuns = false;
  }

  private condition(t: number): void {
    if (this.faultsMoved(t)) {
      conditionAt(this.faults, t, this.drive.condition);
      this.drive.line = lineState(this.works.line, this.drive.condition);
    }
    const { clearWater_m3d, roof_m2, seepage_m2 } = this.drive.condition;
    this.drive.seep_m3s = infiltration_m3s(this.weather.rain_mmh(t), seepage_m2 + roof_m2) + clearWater_m3d / 86_400;
  }

  /** Whether a fault has come, gone or grown since this was last asked: nothing else moves the condition. */
  private faultsMoved(t: number): boolean {
    let moved = false;
    this.faults.forEach((fault, i) => {
      const severity = severityAt(fault, t);
      if (severity !== this.severities[i]) moved = true;
      this.severities[i] = severity;
    });
    return moved;
  }

  /** What runs back from the line after the pump has stopped, where its check valve does not hold. */
  private returned(t: number): void {
    const { pumpStopped_s } = this.registers;
    const { checkHolds } = this.drive.condition;
    const back = checkHolds < 1 && !this.drive.pumpRuns && pumpStopped_s >= 0;
    this.drive.returned_m3s = back ? runsBack(this.spec.plant.discharge, checkHolds, t - pumpStopped_s) : 0;
  }
}
