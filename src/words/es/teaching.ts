import type { teaching as en } from '../en/teaching.ts';

export const teaching: Record<keyof typeof en, string> = {
  'why.not-in-round': 'En la ronda no interviene quien instruye: sus lotes siguen viviendo.',
  'why.no-such-moment': 'No hay tal momento al que volver.',
  'why.no-such-fault': 'Esta unidad no puede tener esa avería.',
  'why.no-such-ramp': 'Crece o se apaga en {most} horas como mucho.',
  'why.fault-there': 'Esa avería ya está.',
  'why.fault-not-there': 'Esa avería no está.',
  'hood.ticked': 'Marcado: {fault}',
  'hood.unticked': 'Tachado: {fault}',
  'hood.air-flow': 'Aire a los difusores',
  'hood.liquor': 'Sólidos del licor mezclado',
  'hood.cbod5': 'DBO₅ carbonosa, tanque de bombeo',
  'hood.solids': 'Sólidos, tanque de bombeo',
  'hood.ammonia': 'Amonio, tanque de bombeo',
  'hood.inflow': 'De la casa',
  'hood.discharge': 'Al campo',
  'series.residual_mgL': 'Cloro residual',
  'series.blanket_m': 'Manto del clarificador',
  'series.trashSludge_m': 'Lodo, tanque de sólidos',
  'series.trashScum_m': 'Nata, tanque de sólidos',
};
