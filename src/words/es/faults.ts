import type { faults as en } from '../en/faults.ts';

export const faults: Record<keyof typeof en, string> = {
  'fault.line-split': 'Línea de aire rajada',
  'fault.joint-leak': 'Fuga en una unión de aire',
  'fault.diaphragm-worn': 'Diafragmas gastados',
  'fault.diaphragm-torn': 'Diafragma roto',
  'fault.intake-clogged': 'Filtro de toma tapado',
  'fault.compressor-stopped': 'Compresor averiado',
  'fault.breaker-tripped': '{^part} disparado',
  'fault.surge-latch': 'Alarma sellada por sobretensión',
  'fault.selector-left': 'Selector dejado en {part}',
  'fault.timer-misset': 'Reloj del temporizador mal puesto',
  'fault.lamp-dead': '{^part} fundida',
  'fault.stuck-up': '{^part} sujeto arriba',
  'fault.stuck-down': '{^part} sujeto abajo',
  'fault.winding-open': 'Devanado de la bomba abierto',
  'fault.disc-filter-clogged': 'Filtro de discos tapado',
  'fault.wash-day': 'Día de lavado',
  'shows.line-split':
    'El zumbido se aligera, el manómetro de la te cae y el jabón hace espuma en la pared de la manguera. Una rajadura chica no avisa a nadie: la altura del agua sostiene la presión mientras se pierde la mitad del aire.',
  'shows.joint-leak':
    'Las burbujas se debilitan y el manómetro de la te marca apenas bajo, así que ninguna luz enciende. A la vista no se halla nada; con jabón en cada unión, sí.',
  'shows.diaphragm-worn':
    'Burbujas débiles con zumbido parejo. A salida cerrada todavía llega a la presión completa, y eso engaña: lo que falta es caudal, y la caja abierta muestra por qué.',
  'shows.diaphragm-torn':
    'Traquetea y a salida cerrada no levanta presión: compresor malo, línea buena. El manómetro de la te por sí solo no lo distingue de una línea rajada.',
  'shows.intake-clogged':
    'La carcasa se calienta y las burbujas son débiles, pero ninguna luz enciende. Se culpa a la línea y a los diafragmas; mirar el filtro cuesta dos minutos.',
  'shows.compressor-stopped':
    'Callado con su interruptor conectado, y el medidor halla voltaje en su toma. Un interruptor disparado calla igual: palancas y voltaje van antes que la pieza.',
  'shows.breaker-tripped':
    'Una palanca a media carrera es la prueba, y un rearme la borra. Con el de la alarma disparado la luz queda apagada pase lo que pase: un tablero callado engaña.',
  'shows.surge-latch':
    'Luz encendida tras una tormenta, con aire y agua normales; un rearme la borra para siempre. Una avería que sigue se ve igual al principio: solo cinco minutos de observar las distinguen.',
  'shows.selector-left':
    'En Fuera no hay dosis y el agua sube con la bomba sana; en Manual la bomba trabaja sin hacer caso a ningún flotador. Se lee en un segundo, y se pasa por alto si primero se sospecha de la bomba.',
  'shows.timer-misset':
    'El riego sale a horas que no son, y nada avisa. Un bombeo de exceso de día se parece; el reloj del tablero junto al de pulsera los distingue.',
  'shows.lamp-dead':
    'El zumbador suena con la luz apagada o, ya silenciado, no se nota nada. Solo Prueba distingue una lámpara fundida de una unidad sana.',
  'shows.stuck-up':
    'El flotador apunta arriba con agua demasiado baja y su contacto sigue cerrado. El de paro se esconde detrás de dosis sanas; el de exceso sigue bombeando; el de nivel alto avisa con un nivel normal.',
  'shows.stuck-down':
    'El flotador cuelga bajo agua que debería alzarlo; si es el de paro, Manual bombea y Auto nunca. Se culpa a la bomba, al temporizador o al día de lavado: mire primero los cables.',
  'shows.winding-open':
    'El voltaje llega a las terminales y nada gira; el devanado marca abierto. Un flotador que frena la bomba calla igual, pero entonces falta el voltaje.',
  'shows.disc-filter-clogged':
    'Riego débil y bombeo de exceso de día. Una bomba cansada se ve igual hasta que se abren los discos.',
  'shows.wash-day':
    'Mucha agua en pocas horas, así que el exceso o la alarma llegan antes. No rompe nada, pero saca a la luz un circuito de bomba muerto.',
};
