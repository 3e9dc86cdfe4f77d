/** What a unit file, a household file and a climate file must hold. */
import * as z from 'zod/mini';

const positive = z.number().check(z.positive());
const share = z.number().check(z.gte(0), z.lte(1));
const elevation = z.number().check(z.gte(-10), z.lte(5));
const whole = z.int().check(z.gte(0));

/** Plain text: no angle brackets, so that nothing in a file can ever be taken for markup. */
export const plainText = z.string().check(z.minLength(1), z.maxLength(2000), z.regex(/^[^<>]*$/));
export const localText = z.strictObject({ en: plainText, es: plainText });
export const identifier = z.string().check(z.regex(/^[a-z][a-z0-9-]*$/), z.maxLength(60));

const basin = z.strictObject({
  inlet_m: elevation,
  outlet_m: elevation,
  floor_m: elevation,
  ceiling_m: elevation,
  area_m2: positive,
  riserArea_m2: positive,
});

const plant = z.strictObject({
  fixtureRim_m: elevation,
  cleanOut_m: elevation,
  cleanOutRim_m: elevation,
  lid_m: elevation,
  pipeBore_m: positive,
  trash: basin,
  aeration: basin,
  clarifier: z.strictObject({ area_m2: positive, straight_m: positive, hopper_m: positive, slot_m2: positive }),
  riser: z.strictObject({ floor_m: elevation, area_m2: positive }),
  pump: basin,
  effluentPump: z.strictObject({
    shutoff_m: positive,
    curve_m_per_Ls2: positive,
    intake_m: positive,
    ratedCurrent_A: positive,
  }),
  discharge: z.strictObject({
    pipeLength_m: positive,
    pipeBore_m: positive,
    hazenWilliamsC: positive,
    nozzle_elevation_m: elevation,
    nozzles: z.int().check(z.gte(1), z.lte(2000)),
    nozzleBore_m: positive,
    nozzleCd: share,
    filterLoss_m_per_Ls2: positive,
    kind: z.enum(['spray', 'drip']),
    throw_m: z.number().check(z.gte(0)),
    designPressure_kPa: positive,
  }),
  air: z.strictObject({
    free_Lmin: positive,
    deadHead_kPa: positive,
    exponent: positive,
    diffuser_elevation_m: elevation,
    cracking_kPa: positive,
    loss_kPa_per_Lmin2: positive,
    line_L: positive,
    standingHole_m: positive,
    transferPerMetre: share,
    transferReference_Lmin: positive,
    alpha: share,
    beta: share,
  }),
  process: z.strictObject({
    volumeIndex_mLg: positive,
    exchange_m3d: positive,
    mostCaptured: share,
  }),
  disinfection: z.discriminatedUnion('kind', [
    z.strictObject({
      kind: z.literal('liquid'),
      dose_mgL: positive,
      strength_gL: positive,
      reservoir_L: positive,
      restocked_d: positive,
    }),
    z.strictObject({
      kind: z.literal('tablets'),
      dose_mgL: positive,
      flow_m3d: positive,
      tube_g: positive,
      restocked_d: positive,
    }),
    z.strictObject({ kind: z.literal('ultraviolet'), dose_mJcm2: positive, flow_m3d: positive }),
  ]),
});

const float = z.strictObject({ makes_m: positive, breaks_m: positive });

const dosing = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('night'),
    clock: z.enum(['digital', 'mechanical']),
    starts_h: z.array(z.number().check(z.gte(0), z.lt(24))).check(z.minLength(1)),
    run_min: positive,
    nightLimit_min: positive,
  }),
  z.strictObject({ kind: z.literal('demand') }),
  z.strictObject({ kind: z.literal('timed'), every_min: positive, run_min: positive }),
]);

const optional = z.optional(positive);

const panel = z.strictObject({
  alarm: z.enum(['latching', 'following']),
  lamps: z.enum(['one', 'air-and-water']),
  gfci: z.boolean(),
  ultraviolet: z.boolean(),
  dosing,
  floats: z.strictObject({
    redundantOffFloat: z.optional(float),
    stopFloat: z.optional(float),
    startStopFloat: z.optional(float),
    doseFloat: z.optional(float),
    overrideFloat: z.optional(float),
    highWaterFloat: float,
  }),
  airSwitch: z.strictObject({ falls_kPa: positive, rises_kPa: positive }),
  delays_s: z.strictObject({
    lowAir: positive,
    highWater: positive,
    lampOut: optional,
    dial: positive,
    dialAgain: positive,
    timerReserve: optional,
    protectorHeat: positive,
    protectorWarm: positive,
    protectorCool: positive,
    cutoutHeat: positive,
    cutoutCool: positive,
  }),
  resetOrder: z.array(z.enum(['alarm', 'compressor', 'pump'])).check(z.length(3)),
  label: z.strictObject({ pressureLow_kPa: positive, pressureHigh_kPa: positive }),
});

export const unitSchema = z.strictObject({
  $schema: z.optional(z.string()),
  id: identifier,
  name: localText,
  rated_m3d: positive,
  plant,
  panel,
});

const fixture = z.strictObject({
  id: identifier,
  usesPerPersonDay: positive,
  volume_L: positive,
  flow_Ls: positive,
  parts: z.int().check(z.gte(1), z.lte(20)),
  pause_s: whole,
  spread: share,
  hours: z.array(z.number().check(z.gte(0))).check(z.length(24)),
});

export const householdSchema = z.strictObject({
  $schema: z.optional(z.string()),
  id: identifier,
  name: localText,
  /** Where the numbers are from, in plain words. */
  source: z.optional(plainText),
  persons: z.int().check(z.gte(1), z.lte(20)),
  leak_LPersonDay: z.number().check(z.gte(0)),
  strength: z.strictObject({
    bod5_gPersonDay: positive,
    solids_gPersonDay: positive,
    nitrogen_gPersonDay: positive,
    alkalinity_molm3: positive,
    coliform_per100mL: positive,
  }),
  fixtures: z.array(fixture).check(z.minLength(1)),
});

const stormMonth = z.strictObject({
  storms: z.number().check(z.gte(0), z.lte(60)),
  depth_mm: positive,
  hours: z.number().check(z.positive(), z.lte(24)),
});

/** Soil at the depth of the tanks, between freezing and the hottest ground (35 degC: common practice, no source). */
const soil = z
  .strictObject({
    mean_C: z.number().check(z.gte(0), z.lte(35)),
    swing_C: z.number().check(z.gte(0), z.lte(17.5)),
    coldestDay: z.int().check(z.gte(1), z.lte(366)),
  })
  .check(
    z.refine((s) => s.mean_C - s.swing_C >= 0 && s.mean_C + s.swing_C <= 35, {
      path: ['swing_C'],
      error: 'takes the soil beyond 0 to 35 degC, so lower it',
    }),
  );

export const weatherSchema = z.strictObject({
  $schema: z.optional(z.string()),
  id: identifier,
  name: localText,
  source: z.optional(plainText),
  soil,
  humidity: z.strictObject({ winter: share, summer: share }),
  months: z.array(stormMonth).check(z.length(12)),
});
