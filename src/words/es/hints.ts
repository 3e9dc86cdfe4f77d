import type { hints as en } from '../en/hints.ts';

export const hints: Record<keyof typeof en, string> = {
  'cause.sound': 'Ahora no falla nada',
  'cause.something-else': 'Otra cosa',
  'hint.symptom': 'Empiece por lo que avisaron: «{said}» ¿Qué piezas podrían causarlo?',
  'hint.cue': '{symptom} Quien ya lo ha visto nota primero: {cue}',
  'hint.account': 'Quien preparó este aviso haría ahora: {check}',
  'hint.area': 'Lo que sigue abierto se separa mejor en: {part}.',
  'hint.kind.look': 'Mirar o escuchar esta pieza es lo que más dice ahora: {part}.',
  'hint.kind.measure': 'Una medida con instrumento es lo que más dice ahora, en: {part}.',
  'hint.kind.operate': 'Accionar algo a mano y observar es lo que más dice ahora, en: {part}.',
  'hint.check': '«{check}»: distingue «{one}» de «{other}».',
  'hint.enough': 'Ninguna comprobación más vale su tiempo: ya se sabe bastante.',
  'hint.name-it': 'Diga qué era, con la nota que lo muestra, y repárelo.',
  'hint.cause': 'Todo lo visto apunta a: {cause}.',
  'hint.works-changed': 'Quien instruye ha cambiado la planta desde el aviso: ya no se puede calcular ninguna pista.',
  'hint.again': '«{check}» se acaba de hacer y nada ha cambiado. ¿Qué más podría ser y qué lo mostraría?',
  'before.danger-not-asked':
    'Todavía no se preguntó por el peligro. Aguas negras afuera, olor a quemado, agua en el tablero, rayos o una descarga querrían decir que nadie se acerca.',
  'before.householder-opens-panel':
    'Detrás de una tapa atornillada quedan partes con tensión. La familia mueve palancas y botones y no abre nada.',
  'before.householder-opens-tank':
    'Bajo una tapa hay gas y agua honda. La familia nunca levanta una, sea lo que sea que se vea allí.',
  'before.site-not-made-safe':
    'El sitio todavía no está asegurado: primero van aguas negras, suelo mojado cerca de partes con tensión, tapas sueltas, gas, personas y animales.',
  'before.not-locked-out':
    'El circuito «{circuit}» no está bloqueado. Desconectar, bloquear, etiquetar y comprobar que no hay tensión antes de meter la mano.',
  'before.lid-left-open': 'Queda una tapa quitada. Toda abertura se cierra y se asegura antes de irse.',
};
