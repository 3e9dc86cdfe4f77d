import type { kept as en } from '../en/kept.ts';

/** Lo que se guarda en el navegador: lo que puede fallar, una segunda pestaña y las copias. */
export const kept: Record<keyof typeof en, string> = {
  'trouble.store.memory':
    'Este navegador no guarda nada de esta página (¿modo privado?). Los avisos funcionan, pero al recargar se pierden.',
  'trouble.store.unread':
    'Algo guardado en una visita anterior no se pudo leer. Se apartó; lo demás está como lo dejó.',
  'trouble.store.full': 'El navegador no quiso guardar el último estado. Libere espacio o al recargar puede perderse.',
  'trouble.store.newer':
    'Este navegador tiene datos de un Underlawn más nuevo. No se tocan: recargue la página para tener el más nuevo. Los avisos funcionan entretanto, pero no se guarda nada de ellos.',
  'trouble.store.shut':
    'El almacén del navegador no se abrió; quizá estorbe otra pestaña de Underlawn. Lo guardado no se toca: cierre las otras pestañas y recargue. Hasta entonces no se guarda nada.',
  'trouble.store.left':
    'Otra pestaña abrió un Underlawn más nuevo o borró lo guardado. Recargue esta pestaña: hasta entonces no se guarda nada más de ella.',
  'trouble.store.missed':
    'Algo de lo guardado no se pudo traer ahora. Queda como está: recargue la página para intentarlo otra vez.',
  'trouble.store.failed':
    'El último estado no se pudo guardar. El próximo paso lo intenta otra vez; si recarga antes, puede perderse.',
  'trouble.round-newer':
    'La ronda guardada viene de un Underlawn más nuevo. Queda como está: recargue la página para tener el más nuevo.',
  'trouble.brought-broken': 'El archivo guardado de este aviso no se puede leer. Abra otra vez su enlace o archivo.',
  'trouble.noRecord': 'Este registro no está en este navegador.',
  'elsewhere.open': 'Abierto en otra pestaña',
  'elsewhere.open.text':
    'Solo una pestaña a la vez puede escribir en él. Siga en aquella pestaña, o tómelo aquí: todo lo hecho allí viene con él, y aquella pestaña lo suelta.',
  'elsewhere.open.take': 'Tomarlo aquí',
  'elsewhere.taken': 'Tomado por otra pestaña',
  'elsewhere.taken.text': 'Todo lo que se vio hecho aquí está guardado y sigue allí.',
  'elsewhere.taken.take': 'Recuperarlo',
  'elsewhere.back': 'Volver a los avisos',
  'copy.and': '{a}, {b}',
  'copy.made': 'El archivo {file} se entregó a las descargas del navegador. Contiene {all}.',
  'copy.empty': 'Todavía no hay nada que copiar.',
  'copy.came': 'Recuperado: {all}.',
  'copy.nothing-new': 'Todo lo que hay en {file} ya está aquí.',
  'copy.count.settings': 'los ajustes',
  'copy.count.progress': '{n} {n:aviso|avisos} a medias',
  'copy.count.finished': '{n} {n:aviso terminado|avisos terminados}',
  'copy.count.lines': '{n} {n:línea|líneas} para la próxima vez',
  'copy.count.drills': '{n} {n:ejercicio|ejercicios}',
  'copy.count.round': 'la ronda',
  'copy.count.brought': '{n} {n:aviso traído|avisos traídos} de otra parte',
  'copy.count.drafts': '{n} {n:aviso|avisos} en preparación',
  'copy.count.moments': '{n} {n:momento|momentos} desde los que empezar',
  'copy.count.cards': 'la práctica de {n} {n:destreza|destrezas}',
  'copy.count.exam': 'el examen de práctica',
  'copy.count.unread': '{n} {n:entrada apartada|entradas apartadas}',
  'copy.what.progress': 'Aviso «{title}»',
  'copy.what.brought': 'Aviso de otra parte «{title}»',
  'copy.what.line': 'Línea para la próxima vez',
  'copy.what.round': 'Ronda',
  'copy.what.cards': 'Práctica de una destreza',
  'copy.what.exam': 'Examen de práctica',
  'copy.later.copy': '{what}: lo de la copia es posterior y se tomó; lo de aquí se apartó.',
  'copy.later.here': '{what}: lo de aquí es posterior y queda; lo anterior sigue en el archivo.',
  'copy.later.more': 'Lo mismo pasó con {n} más.',
  'copy.settings-stay': 'El idioma, las unidades, el sonido y el movimiento quedan como están aquí.',
  'copy.wrong.unread': '{file} no se pudo leer. Elíjalo otra vez.',
  'copy.wrong.kind':
    '{file} no es una copia de lo que guarda Underlawn. Elija un archivo que escribió «Guardar una copia». No se cambió nada.',
  'copy.wrong.newer':
    '{file} lo escribió un Underlawn más nuevo. Recargue la página para tener el más nuevo y recupere luego la copia. No se cambió nada.',
  'copy.wrong.value':
    '{file}: {path} debería ser {wants}. Corrija ese lugar o quite su entrada, y recupere luego la copia. No se cambió nada.',
  'copy.wrong.full':
    'El navegador no tiene sitio para lo que contiene {file}. Libere espacio e inténtelo otra vez. No se cambió nada.',
  'copy.wrong.failed': '{file} no se pudo tomar. Recargue la página e inténtelo otra vez. No se cambió nada.',
  'copy.wants.text': 'un texto',
  'copy.wants.number': 'un número',
  'copy.wants.flag': 'true o false',
  'copy.wants.fields': 'un objeto',
  'copy.wants.list': 'una lista',
  'copy.wants.other': 'un valor de los que escribe Underlawn',
};
