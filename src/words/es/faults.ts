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
  'fault.air-switch-drifted': 'Presostato desajustado',
  'fault.air-switch-stuck': 'Presostato pegado {part}',
  'fault.alarm-float-misset': 'Flotador de alarma muy alto',
  'fault.breaker-retrips': '{^part}: cable en corto',
  'fault.buzzer-dead': 'Zumbador muerto',
  'fault.compressor-unplugged': 'Compresor desenchufado',
  'fault.cord-chafed': 'Cordón del compresor pelado',
  'fault.dialler-no-line': 'Marcador sin línea',
  'fault.float-flooded': '{^part} con agua adentro',
  'fault.float-on-scum': '{^part} sobre nata',
  'fault.floats-swapped': 'Cables cruzados: {part}',
  'fault.gfci-tripped': 'Tomacorriente disparado',
  'fault.housing-hot': 'Caja del compresor muy caliente',
  'fault.insects-in-contacts': 'Insectos en el presostato',
  'fault.low-voltage': 'Voltaje de entrada bajo',
  'fault.outage': 'Sin corriente',
  'fault.panel-wet': 'Agua en el tablero',
  'fault.protector-open': 'Protector de la bomba abierto',
  'fault.pump-cord-chafed': 'Cordón de la bomba pelado',
  'fault.pump-seized': 'Bomba trabada',
  'fault.relay-open': 'Relé de la bomba no cierra',
  'fault.relay-welded': 'Relé de la bomba soldado',
  'fault.sensing-tube-wet': 'Agua en el tubo sensor',
  'fault.splice-corroded': '{^part}: empalme corroído',
  'fault.terminal-loose': 'Cable de la bomba flojo',
  'fault.tethers-tangled': 'Cables enredados: {part}',
  'fault.timer-dead': 'Temporizador muerto',
  'fault.timer-lost-clock': 'El temporizador perdió la hora',
  'fault.uv-lamp-out': 'Lámpara ultravioleta apagada',
  'shows.air-switch-drifted':
    'La alarma va y viene con buena presión en la te: el presostato cambia muy arriba de su etiqueta. Se culpa a la línea; la presión a la que cambia lo dice.',
  'shows.air-switch-stuck':
    'Pegado cerrado, la luz enciende con buen aire; pegado abierto, un compresor parado no avisa a nadie. Prueba enciende la luz igual: hay que probar el presostato.',
  'shows.alarm-float-misset':
    'A mano todo responde, pero el agua llega a la entrada antes que la luz. Solo una cinta en su cable, comparada con la etiqueta, lo encuentra.',
  'shows.breaker-retrips':
    'La palanca se dispara en cuanto se conecta, trabaje lo que trabaje. Un rearme ya es prueba: dejarla desconectada y medir el aislamiento.',
  'shows.buzzer-dead':
    'La luz enciende y nada suena, así que nadie mira. Un zumbador silenciado calla igual, pero con Prueba ese sí suena.',
  'shows.compressor-unplugged':
    'Callado con su interruptor conectado, después de que alguien podó o usó la toma. Lo condena quien no miró el enchufe.',
  'shows.cord-chafed':
    'Su interruptor, o la toma que corta por fuga, se dispara al enchufarlo. Desenchufado todo se mantiene: es el cordón, no el compresor.',
  'shows.dialler-no-line':
    'Luz y zumbador cumplen y ninguna llamada sale. Nadie lo nota hasta que una alarma lleva días.',
  'shows.float-flooded':
    'Cuelga bajo agua que debería alzarlo y pesa en la mano; alzado, su contacto sirve, y eso engaña. Un cable atorado se ve igual desde arriba.',
  'shows.float-on-scum':
    'Apunta arriba con agua muy baja y cae tarde, así que bomba o alarma llegan a niveles raros. El contacto está sano; al mirar se ve la nata.',
  'shows.floats-swapped':
    'Después de trabajos en el tablero, un flotador hace lo del siguiente: alarma donde debe arrancar la bomba, o dosis a otra altura. Cada flotador por sí solo prueba bien.',
  'shows.gfci-tripped':
    'Compresor callado, interruptor conectado, sin voltaje tras el botón de la toma. La humedad lo dispara una vez; si vuelve a hacerlo, hay una fuga que hallar.',
  'shows.housing-hot':
    'Un rearme parece curarlo: arranca frío y avisa otra vez una hora después, al sol. La mano en la caja lo dice; se culpa a los diafragmas.',
  'shows.insects-in-contacts':
    'Abrir la línea no enciende ninguna luz: los contactos no cierran. Parece un presostato muerto hasta que se abre.',
  'shows.low-voltage':
    'El zumbido es débil, cada dosis se corta y el protector de la bomba abre caliente. Una bomba nueva hará lo mismo: primero el medidor en la entrada.',
  'shows.outage':
    'Nada zumba y ninguna luz puede encender. Tras una larga el tablero sigue oscuro aunque haya avería, y un reloj digital parpadea.',
  'shows.panel-wet':
    'Alarma de nivel alto con agua baja, peor tras la lluvia; alzar y soltar el flotador no cambia nada. Cambiarlo solo lo esconde hasta que llueva.',
  'shows.protector-open':
    'Voltaje en las terminales, nada gira, el devanado marca abierto y sigue así en frío. Un motor recalentado marca lo mismo hasta enfriarse.',
  'shows.pump-cord-chafed':
    'El interruptor de la bomba aguanta todo el día y se dispara a la primera dosis. Un corto en el tablero dispara al conectar; este espera la dosis.',
  'shows.pump-seized':
    'Zumba unos segundos, toma cinco veces su corriente y para, una y otra vez. Un voltaje bajo hace algo parecido, con menos corriente.',
  'shows.relay-open':
    'Ni Auto ni Manual mueven la bomba, con devanado e interruptor sanos: la bobina recibe y el contacto no cierra. Por esto se cambian bombas buenas.',
  'shows.relay-welded':
    'La bomba sigue en Fuera y pasa de todo flotador hasta vaciar el tanque. Solo su interruptor la para: primero desconectar, luego pensar.',
  'shows.sensing-tube-wet':
    'La luz va y viene con buenas burbujas, sobre todo en mañanas frías. El manómetro de la te acierta; el presostato está detrás de un tapón de agua.',
  'shows.splice-corroded':
    'El flotador sube y baja libre y el tablero no se entera, ni alzándolo a mano. Uno atorado hace lo mismo, pero ese se ve.',
  'shows.terminal-loose':
    'Unas dosis salen y otras no, y en la visita todo funciona. Un jalón a las terminales, con candado puesto, muestra el cable que se mueve.',
  'shows.tethers-tangled':
    'Dos flotadores cuelgan juntos bajo el agua: ni arranque ni alarma, hasta que los drenajes van lentos. Mire los flotadores, no la luz.',
  'shows.timer-dead':
    'Las noches quedan secas y el exceso bombea de día; el reloj no anda. En Manual bombea, y eso engaña: la bomba nunca fue.',
  'shows.timer-lost-clock':
    'Tras un apagón largo el reloj parpadea y no dosifica; el exceso trabaja de día. Se arregla poniéndolo en hora, no con un rearme.',
  'shows.uv-lamp-out':
    'La luz de aire enciende con buen aire: en este tablero vale también por la ultravioleta. El agua se ve igual de clara y sale sin desinfectar.',
};
