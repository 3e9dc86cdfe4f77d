/** What a rate of rain says of its drops and of lightning. */

/**
 * How fast the middling drop of a rain falls, m/s: its width by the drop sizes of Marshall and Palmer 1948, its speed
 * after Atlas 1973 (both from memory).
 */
export function fallSpeed(rain_mmh: number): number {
  const width_mm = 3.67 / (4.1 * rain_mmh ** -0.21);
  return 9.65 - 10.3 * Math.exp(-0.6 * width_mm);
}

/** Rain from which a storm thunders, mm/h: heavy rain begins there (glossary of meteorology, from memory). */
const HEAVY_mmh = 7.6;
/** Rain that a flash goes with, kg: about 1e8 in storms over land (Petersen and Rutledge 1998, from memory). */
const PER_FLASH_kg = 1e8;
/** Ground whose storms are seen from a lawn, m2: ten kilometres round. */
const IN_SIGHT_m2 = 3.14e8;
/** Never more often than this, s; three flashes in a second are what harms (WCAG 2.3.1). */
const LEAST_s = 8;

/** Seconds from flash to flash; none in lesser rain. */
export function flashEvery_s(rain_mmh: number): number {
  if (rain_mmh < HEAVY_mmh) return Number.POSITIVE_INFINITY;
  return Math.max(LEAST_s, (3600 * PER_FLASH_kg) / (rain_mmh * IN_SIGHT_m2));
}
