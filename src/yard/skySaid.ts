/** The weather in words, as everybody sees it who looks up: of the property it says nothing. */
import type { SkyScene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';

type Air = 'calm' | 'light' | 'breeze' | 'strong';

/** From where on a wind is called so, m/s: forces 1, 3 and 6 of Beaufort (from memory). */
const LIGHT_ms = 0.3;
const BREEZE_ms = 3.4;
const STRONG_ms = 10.8;

export function skySaid({ cloud, rain_mmh, wind_ms }: SkyScene): Message {
  const values = { cloud: { measure: 'share', value: cloud, resolution: 0.1 }, wind: windSaid(wind_ms) } as const;
  if (rain_mmh <= 0) return { id: 'sky.dry', values };
  return {
    id: 'sky.rain',
    values: { ...values, rain: { measure: 'length_m', value: rain_mmh / 1000, resolution: 0.001 } },
  };
}

/** How strong, from where and how fast; above 0 it comes from the east. */
export function windSaid(wind_ms: number): Message {
  const air = airOf(Math.abs(wind_ms));
  if (air === 'calm') return { id: `sky.${air}` };
  const from: Message = { id: wind_ms > 0 ? 'sky.east' : 'sky.west' };
  return { id: `sky.${air}`, values: { from, speed: { measure: 'wind_ms', value: Math.abs(wind_ms) } } };
}

function airOf(speed_ms: number): Air {
  if (speed_ms < LIGHT_ms) return 'calm';
  if (speed_ms < BREEZE_ms) return 'light';
  return speed_ms < STRONG_ms ? 'breeze' : 'strong';
}
