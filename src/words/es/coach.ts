import type { coach as en } from '../en/coach.ts';

export const coach: Record<keyof typeof en, string> = {
  'coach.title': 'Guía',
  'coach.thinking': 'Pensando …',
  'coach.ready': 'Repasando qué podría ser …',
  'coach.hint': 'Una pista',
  'coach.plainer': 'Una pista más clara',
  'coach.actFirst': 'Pruebe algo antes; luego viene una más clara.',
  'coach.wait': 'En unos segundos.',
  'coach.earlier': 'Pistas anteriores',
  'coach.likely': 'Causas probables',
  'coach.likely.note': 'De lo visto y dicho hasta ahora, y de nada más.',
  'coach.failed': 'Ahora no hay guía.',
  'coach.retry': 'Intentar de nuevo',
  'coach.before': 'Una palabra antes',
  'coach.back': 'Todavía no',
  'coach.sure': 'Hacerlo de todos modos',
  'coach.breach.text': 'El paso no se dio. El aviso sigue, para aprender, y cuenta como suspendido.',
  'coach.goOn': 'Seguir',
  'coach.calls': 'tiene algo que decir',
  'trouble.expert': 'El cálculo se detuvo por un error.',
};
