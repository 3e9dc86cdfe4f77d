/** Numbers that belong to the engine, not to the control. */
export interface Registers {
  /** Seconds the panel clock is ahead of true time, beyond what faults shift it by. */
  clock_s: number;
  /** Since when the clock stands still (-1: it goes). */
  clockStopped_s: number;
  /** Seconds the timer has dosed since the night's first start, and since when a dose runs (-1: none does). */
  dosed_s: number;
  doseSince_s: number;
  /** When the compressor last stopped, and at what line pressure. */
  airStopped_s: number;
  airStopped_kPa: number;
  /** When the effluent pump last stopped (-1: it has not run). */
  pumpStopped_s: number;
  pumpCycles: number;
  dialled: number;
}

export function registersAtRest(): Registers {
  return {
    clock_s: 0,
    clockStopped_s: -1,
    dosed_s: 0,
    doseSince_s: -1,
    airStopped_s: 0,
    airStopped_kPa: 0,
    pumpStopped_s: -1,
    pumpCycles: 0,
    dialled: 0,
  };
}
