import type { families as en } from '../en/families.ts';

export const families: Record<keyof typeof en, string> = {
  'family.air': 'Aire',
  'family.power': 'Corriente y tablero',
  'family.floats': 'Flotadores',
  'family.pump': 'Bomba',
  'family.field': 'Campo',
  'family.solids': 'Sólidos',
  'family.disinfection': 'Desinfección',
  'family.house': 'Desagües de la casa',
  'family.ground': 'Terreno y tanques',
  'family.use': 'Uso de la casa',
  'family.kit': 'Instrumentos',
};
