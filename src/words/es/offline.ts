import type { offline as en } from '../en/offline.ts';

/** Lo que la página dice de la copia de sí misma que guarda el navegador. */
export const offline: Record<keyof typeof en, string> = {
  'offline.coming': 'Preparándose para trabajar sin red: {done} de {of} MB.',
  'offline.kept': 'Lista para trabajar sin red. Este navegador guarda {n} MB para ello.',
  'offline.not.network':
    'Todavía no está lista para trabajar sin red: la descarga se cortó. Todo lo demás funciona; se intenta otra vez cuando vuelva la red.',
  'offline.not.full':
    'No hay sitio para guardar la página y trabajar sin red. Todo lo demás funciona. Libere espacio e inténtelo otra vez.',
  'offline.not.changed':
    'El servidor no entrega la página tal como se hizo, o la está renovando. Por eso no se guarda para trabajar sin red; todo lo demás funciona.',
  'offline.not.denied':
    'Este navegador no guarda la página aquí (¿ventana privada o dirección sin https?), así que necesita red. Todo lo demás funciona.',
  'offline.newer.full': 'Hay una versión más nueva, pero no hay sitio para descargarla. Esta funciona como antes.',
  'offline.again': 'Intentarlo otra vez',
  'offline.update': 'Hay una versión nueva lista',
  'offline.update.waits': 'Espera hasta que usted la tome o vuelva más tarde. Los avisos y registros quedan.',
  'offline.update.ends':
    'Dejó {what} a medias y la versión nueva no puede seguir con ello. Termínelo antes, o empiécelo de nuevo después.',
  'offline.update.unsure':
    'Lo que dejó a medias no se pudo leer ahora, y quizá la versión nueva no pueda seguir con ello.',
  'offline.update.take': 'Tomarla ahora',
  'offline.call': '«{title}»',
  'offline.round': 'la ronda',
  'offline.and': '{a} y {b}',
};
