import type { share as en } from '../en/share.ts';

/** Avisos que llegaron por enlace o archivo, y hojas de avisos. */
export const share: Record<keyof typeof en, string> = {
  'brought.lead':
    'Alguien escribió un aviso y se lo envió. Queda en este navegador, y nada de él va a ninguna otra parte.',
  'brought.file': 'Abrir un archivo de aviso',
  'brought.file.note': 'Un aviso o una serie de avisos, en un archivo que termina en .json.',
  'brought.reading': 'Leyendo …',
  'brought.taken': '{n} {n:aviso listo|avisos listos} para atender.',
  'brought.taken.set': '{n} {n:aviso|avisos} de la serie «{set}» para atender.',
  'brought.own': 'Ya están entre los avisos propios de Underlawn:',
  'brought.other': 'Usted tiene otra edición de «{title}»',
  'brought.other.text':
    'Tomar esta la reemplaza y abandona el aviso donde usted lo dejó. Lo que terminó queda como estaba.',
  'brought.replace': 'Tomar esta',
  'brought.keep': 'Quedarme con la que tengo',
  'brought.problems': 'Qué hay que corregir',
  'brought.more': 'Y {n} más.',
  'brought.list': 'De un enlace o un archivo',
  'brought.from.link': 'De un enlace',
  'brought.from.file': 'De un archivo',
  'brought.sheet.trainee': 'Hoja del aprendiz',
  'brought.sheet.trainer': 'Hoja del instructor',
  'brought.drop': 'Quitar de la lista',
  'brought.drop.sure': 'Quitar del todo',
  'brought.back': 'A todos los avisos',
  'share.damaged':
    'Este enlace está dañado: se cortó en el camino o le cambiaron un carácter. Pídalo otra vez, o pida el archivo.',
  'share.too-large': 'Esto es mucho más grande que cualquier aviso y no se abrió. ¿Es el enlace o archivo correcto?',
  'share.newer':
    'Esto se hizo con un Underlawn más nuevo que este. Recargue la página para tener el último y ábralo otra vez.',
  'share.not-a-call':
    'Esto no es un aviso que se pueda atender. Quien lo escribió puede corregirlo con lo que sigue, en inglés.',
  'share.not-a-set':
    'Esta serie de avisos no se puede tomar así. Quien la escribió puede corregirla con lo que sigue, en inglés.',
  'share.id-taken':
    'Un aviso de aquí lleva el id de uno propio de Underlawn y es otro aviso. No se tomó nada. Lo que sigue está en inglés.',
  'sheet.trainee': 'Hoja del aprendiz',
  'sheet.trainer': 'Hoja del instructor',
  'sheet.print': 'Imprimir',
  'sheet.warning': 'Esto muestra la causa',
  'sheet.warning.text':
    'La hoja del instructor dice qué está mal y cómo se encuentra. Déjela cerrada si usted va a atender el aviso.',
  'sheet.reveal': 'Mostrarla',
  'sheet.rings': 'Suena el teléfono: {when}',
  'sheet.said': 'Lo que dice quien llama',
  'sheet.phone': 'Por teléfono',
  'sheet.site': 'En el sitio',
  'sheet.decision': 'Decisión, y con qué prisa',
  'sheet.cause': 'Causa, y qué la muestra',
  'sheet.mended': 'Reparado, y qué lo comprueba',
  'sheet.told': 'Dejado en el registro, dicho a la familia',
  'sheet.name': 'Nombre',
  'sheet.wrong': 'Qué está mal',
  'sheet.since': '{fault}, desde {when}',
  'sheet.story': 'Qué hay detrás',
  'sheet.household': 'Lo que dice la familia',
  'sheet.history': 'Si se pregunta qué pasó:',
  'sheet.use': 'Si se pregunta por el agua:',
  'sheet.expected': 'Qué se espera',
  'sheet.close': 'Cerrado por teléfono, con seguimiento.',
  'sheet.visit': 'Una visita. Con qué prisa: {when}.',
  'sheet.pass': 'Superado con {n} de 100, sin saltarse ningún paso que protege la vida.',
  'sheet.path': 'La solución propia del aviso',
  'sheet.step': '{what} ({m})',
  'sheet.stopped': 'Desde aquí no sigue: {why}',
  'sheet.cautions': 'Precauciones',
};
