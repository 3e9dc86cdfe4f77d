import type { course as en } from '../en/course.ts';

/** Lo que dice una página que abrió una plataforma de cursos. */
export const course: Record<keyof typeof en, string> = {
  'course.note': 'Curso',
  'course.recorded.graded': 'Registrado en su curso: {score} de 100, {verdict}.',
  'course.recorded.practice': 'Registrado en su curso: completado, {score} de 100.',
  'course.passed': 'superado',
  'course.failed': 'no superado',
  'course.silent':
    'La plataforma del curso no responde, así que allí no se registra nada. El aviso funciona y se guarda en este navegador: guarde su registro desde el repaso y entréguelo.',
  'course.not-recorded':
    'La plataforma del curso no aceptó el resultado. El aviso se guarda en este navegador: guarde su registro desde el repaso y entréguelo.',
  'course.not-kept':
    'La plataforma del curso no aceptó el último paso. El siguiente lo intenta de nuevo; en este navegador se guarda todo.',
  'course.cut':
    'Es más de lo que la plataforma del curso puede guardar de un aviso a medias: en este navegador sigue desde el último paso, en otro dispositivo desde el paso {n}.',
  'course.review': 'Su curso ya tiene el resultado de este aviso: lo que se haga ahora es práctica y no se registra.',
  'course.unread': 'No se pudo leer lo que la plataforma del curso guardó de este aviso, así que empieza de nuevo.',
  'course.other-version':
    'Lo que la plataforma del curso guardó de este aviso es de otra versión de Underlawn y no puede seguir aquí. El aviso empieza de nuevo.',
  'course.over': 'La sesión con su curso terminó. Para seguir registrando, abra el aviso otra vez desde el curso.',
  'course.again': 'Intentar de nuevo',
  'course.back': 'Volver al curso',
};
