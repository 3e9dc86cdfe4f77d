import type { sky as english } from '../en/sky.ts';

export const sky: Record<keyof typeof english, string> = {
  'sky.dry': 'Cielo: {cloud} con nubes, sin lluvia; {wind}.',
  'sky.rain': 'Cielo: {cloud} con nubes, {rain} de lluvia por hora; {wind}.',
  'sky.calm': 'sin viento',
  'sky.light': 'brisa ligera del {from}, {speed}',
  'sky.breeze': 'brisa del {from}, {speed}',
  'sky.strong': 'viento fuerte del {from}, {speed}',
  'sky.east': 'este',
  'sky.west': 'oeste',
};
