import type { round as en } from '../en/round.ts';

/** La ronda: doce lotes a lo largo de un año. */
export const round: Record<keyof typeof en, string> = {
  'round.title': 'Una ronda a lo largo del año',
  'round.lead':
    'Lotes que siguen viviendo. Lo reparado termina; lo que solo se tapa, se omite o no se dice vuelve a la misma puerta.',
  'round.living': 'Pasa el tiempo: {lived} de {all} lotes…',
  'round.weeks': 'El año, semana a semana',
  'round.week': 'Semana del {day} de {month}: {n} {n:puerta|puertas}',
  'round.lots': 'Los lotes',
  'round.lot': 'Lote {lot}',
  'round.rings': 'Suena el teléfono: {why}',
  'round.passing': 'Aquí falta que pase el tiempo',
  'round.quiet': 'Tranquilo por ahora',
  'round.take': 'Atender el aviso',
  'round.next': 'Sigue: lote {lot}, {why}',
  'round.back': 'De vuelta a la ronda',
  'round.over': 'El año terminó.',
  'round.again': 'Empezar el año de nuevo',
  'round.sheet': 'La hoja del año',
  'round.sheet.row':
    '{doors} {doors:puerta|puertas}, {rung} por llamada; {again} por una causa que ya estaba, {lost} {lost:perdida|perdidas} a otra empresa; {ground} al suelo, {hours} sin tratamiento; {money} en piezas, {minutes} de trabajo',
  'round.sheet.all': 'Todos los lotes: {row}.',
  'round.sheet.lot': 'Lote {lot}: {row}.',
  'round.book': 'Libro del lote {lot}',
  'round.book.empty': 'Todavía no hay nada escrito.',
  'round.book.found': 'Hallado: {list}.',
  'round.book.mended': 'Reparado: {list}.',
  'round.book.cleaned': 'Limpiado o vaciado: {list}.',
  'round.book.advised': 'Dicho: {list}.',
  'round.book.proved': 'Comprobado: {list}.',
  'round.book.by-phone': 'Cerrado por teléfono.',
  'round.book.unsafe': 'Detenido en un paso de seguridad vital.',
  'round.book.lost': 'La familia lo hizo reparar después por otra empresa.',
  'trouble.round-anew':
    'La ronda guardada viene de una versión más antigua o está dañada. Se apartó, y una copia la contiene; el año empieza de nuevo.',
  'replay.round-quiet': 'Lote {lot}: nadie llamó para la visita {n} del registro.',
  'replay.round-state': 'Lote {lot}: tras la visita {n} queda en otro estado que el registrado.',
  'replay.round-more': 'Lote {lot}: el teléfono suena otra vez después de la última visita del registro.',
};
