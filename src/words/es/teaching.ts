import type { teaching as en } from '../en/teaching.ts';

export const teaching: Record<keyof typeof en, string> = {
  'why.not-in-round': 'En la ronda no interviene quien instruye: sus lotes siguen viviendo.',
  'why.no-such-moment': 'No hay tal momento al que volver.',
  'why.no-such-fault': 'Esta unidad no puede tener esa avería.',
  'why.no-such-ramp': 'Crece o se apaga en {most} horas como mucho.',
  'why.fault-there': 'Esa avería ya está.',
  'why.fault-not-there': 'Esa avería no está.',
};
