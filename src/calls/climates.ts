/** Climates that ship, under `scenarios/weather/`: for lives of months in the command line; no call is that long. */
import ridge from '../../scenarios/weather/ridge.json';
import valleyFloor from '../../scenarios/weather/valley-floor.json';
import type { WeatherSpec } from '../plant/weather.ts';
import { weatherSchema } from '../unit/schema.ts';

let climates: ReadonlyMap<string, WeatherSpec> | undefined;

/** Shipped climates by id, checked when first asked for. */
export function shippedClimates(): ReadonlyMap<string, WeatherSpec> {
  climates ??= new Map([valleyFloor, ridge].map((file) => [file.id, weatherSchema.parse(file)]));
  return climates;
}
