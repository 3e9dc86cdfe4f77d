import type { guide as en } from '../en/guide.ts';

export const guide: Record<keyof typeof en, string> = {
  'guide.ask-danger':
    'Aguas negras afuera, olor a quemado, agua en el tablero, rayos o una descarga: con cualquiera de ellos nadie se acerca. Por eso va antes que todo.',
  'guide.ask-history':
    'Lo que pasó poco antes suele señalar el lado que falló: una tormenta, una podadora, trabajos en el tablero, visitas.',
  'guide.ask-use':
    'Mucha agua en pocas horas sube todos los niveles sin nada roto. Conviene saberlo antes de culpar a la bomba.',
  'guide.ask-hum':
    'Un compresor que zumba tiene corriente; uno callado no la tiene o está acabado. Un traqueteo apunta a los diafragmas.',
  'guide.ask-smell': 'Dónde huele dice qué lado falla: afuera el aire, adentro un sifón o los desagües.',
  'guide.ask-drains':
    'Si los desagües van lentos, el agua está detenida en algún lugar y sube. Eso decide cuán pronto hay que ir.',
  'guide.ask-breakers':
    'Una palanca a medio camino es una prueba, y un rearme la borra. Por eso las palancas se leen antes de tocarlas.',
  'guide.guide-silence': 'Callado el zumbador, se puede hablar. La luz sigue encendida y sigue avisando.',
  'guide.guide-reset':
    'Lo que solo quedó enclavado se borra del todo; lo que sigue mal vuelve. Una vez basta para saberlo.',
  'guide.guide-watch':
    'Una avería que sigue tarda minutos en mostrarse otra vez. Hacen falta cinco con la luz apagada para darla por terminada.',
  'guide.decide-close':
    'La luz quedó apagada y nada más habla de una avería. El seguimiento cuida de que un segundo disparo no pase inadvertido.',
  'guide.decide-visit':
    'Lo que sigue mal no se repara por teléfono. Cuán pronto depende de lo que está en juego; la carga, de lo que aún es probable.',
  'guide.make-safe':
    'Aguas negras, suelo mojado cerca de partes con tensión, tapas sueltas, gas, personas y animales van antes de la primera mirada.',
  'guide.clear-field':
    'Desde ahora cualquier prueba puede levantar los aspersores. Antes, personas y animales fuera del campo.',
  'guide.open-lid': 'Lo que sigue está debajo. La abertura se vigila mientras está abierta y se cierra antes de irse.',
  'guide.close-lid': 'Toda abertura se cierra y se asegura antes de irse.',
  'guide.lock-out':
    'Ahora una mano va adonde puede llegar corriente: desconectar, bloquear, etiquetar y comprobar que no hay tensión. Los demás circuitos siguen vivos.',
  'guide.unlock': 'La mano ya está fuera. Quien puso el candado lo quita.',
  'guide.breaker-on': 'Con su corriente de vuelta, el circuito puede mostrar lo que hace.',
  'guide.look-at-traps': 'Un desagüe que casi no se usa se seca y deja entrar olor, con la instalación del todo sana.',
  'guide.look-into-clean-out':
    'Separa la casa del tanque: el agua detenida ahí está retenida más abajo; si está vacío, el problema queda en la casa.',
  'guide.look-at-tees': 'Cada te está libre o tapada: eso dice si es el propio tanque el que retiene el agua.',
  'guide.look-at-risers':
    'Donde un acceso se une a su tanque entra agua clara. Una junta mojada o manchada lo muestra.',
  'guide.look-into-aeration': 'Si burbujea, dónde y hasta dónde llega el agua: una mirada dice del aire y del nivel.',
  'guide.watch-feed':
    'Un vaso de agua hace trabajar la dosificación: lo que sale distingue un depósito vacío, un paso tapado y uno sano.',
  'guide.look-at-disinfectant':
    'De un depósito vacío no sale nada. Una mirada lo dice, antes de desarmar la dosificación.',
  'guide.look-at-ultraviolet':
    'El aspecto del agua no dice nada. Por la mirilla protegida se ve la lámpara encendida o apagada, nunca a ojo descubierto.',
  'guide.look-into-pump-tank': 'El nivel junto a los flotadores dice si se llamó a la bomba y qué viene ahora.',
  'guide.lift-float': 'Levantado a mano, un flotador muestra si el tablero lo oye, haga lo que haga el agua.',
  'guide.look-at-splices':
    'Empalmes y cable están entre el tablero y la bomba. El cobre desnudo y la corrosión se ven, no se miden.',
  'guide.filter-pressures':
    'Una presión antes del filtro y otra después dicen si el filtro retiene el caudal o la bomba da poco.',
  'guide.open-disc-filter': 'Los propios discos muestran si retienen el caudal.',
  'guide.walk-field':
    'Suelo blando, un hoyo, una franja mojada: lo que pierde se ve a pie, antes de arrancar la bomba.',
  'guide.read-panel': 'Una palanca o un selector fuera de su lugar explica mucho, y se lee en un minuto.',
  'guide.read-timer': 'El reloj del tablero junto a uno de pulsera distingue dosis a mala hora de dosis a mal nivel.',
  'guide.read-counters': 'Horas y arranques dicen qué hizo la bomba cuando no había nadie.',
  'guide.press-test':
    'La prueba alimenta por sí sola luz y zumbador: lo que aquí queda apagado o mudo es lo que falla.',
  'guide.look-into-panel':
    'Gotas, cables flojos y cables en otro borne se ven solo bajo la tapa, con todo sin tensión.',
  'guide.advance-timer':
    'Una dosis empezada a mano prueba a la vez temporizador, relé y bomba: lo que no responde está más allá.',
  'guide.set-timer':
    'El candado dejó sin corriente también al reloj, y perdió la hora. Hasta ponerlo no empieza ninguna dosis.',
  'guide.selector-hand':
    'Manual hace andar la bomba sin flotadores ni temporizador, para bajar el agua con alguien al lado.',
  'guide.selector-off': 'En Fuera la bomba debe parar. La que sigue andando recibe corriente por otro lado.',
  'guide.selector-auto': 'Auto devuelve la bomba a sus flotadores y su temporizador. No se deja en ningún otro lugar.',
  'guide.reset-panel': 'Lo que quedó enclavado se borra, para que una luz desde ahora signifique algo nuevo.',
  'guide.pump-volts':
    'La tensión en los bornes de la bomba separa los dos lados: si falta, es cosa del tablero; si está, de la bomba.',
  'guide.winding-ohms':
    'Un devanado abierto no vuelve a andar; uno entero pone la avería en otro sitio. Se mide sin tensión.',
  'guide.amps-in-hand':
    'La corriente dice qué hace el motor: ninguna, la suya, o varias veces esa mientras está quieto.',
  'guide.test-capacitor': 'Un capacitor débil y una bomba trabada zumban igual. El medidor los distingue.',
  'guide.insulation-test':
    'Una palanca que vuelve a saltar tiene un paso a tierra. El aislamiento dice si está en este circuito.',
  'guide.compressor-volts':
    'Con tensión en su tomacorriente, un compresor callado está acabado; sin ella, falla la alimentación.',
  'guide.listen-compressor':
    'Silencio, zumbido ligero, zumbido parejo, traqueteo: en medio minuto el oído separa corriente, línea y diafragmas.',
  'guide.feel-compressor': 'Una caja caliente trabaja contra algo: un filtro tapado, una línea que retiene o el sol.',
  'guide.look-at-outlet': 'El enchufe y el tomacorriente están entre un interruptor conectado y un compresor callado.',
  'guide.look-at-intake-filter': 'Un filtro tapado quita el aire antes del compresor, y verlo cuesta dos minutos.',
  'guide.follow-air-line': 'El ojo encuentra una raja, un extremo suelto o un aplastamiento, antes de desarmar nada.',
  'guide.tee-pressure':
    'Baja en la te, el aire se pierde o no se hace; alta, algo lo retiene. Un manómetro corta la lista a la mitad.',
  'guide.dead-head-compressor':
    'Cerrado el paso a la línea, el compresor muestra lo que puede solo: falla él o falla la línea.',
  'guide.soap-air-line': 'El jabón hace espuma donde la fuga es demasiado pequeña para verla.',
  'guide.test-air-switch':
    'La presión a la que cambia el presostato, junto a su etiqueta, distingue un mal presostato de un mal aire.',
  'guide.open-air-switch': 'Agua en su tubo e insectos en sus contactos se ven solo con la caja abierta.',
  'guide.state-cause': 'Dicha antes de reparar, con las notas que la muestran: así reparar no es adivinar.',
  'guide.drawing-down': 'Bajar el agua lleva tiempo. En el tablero se ve al momento si algo salta entretanto.',
  'guide.proof': 'Un arreglo cuenta cuando se ha mostrado después de reparar: {proof}.',
  'guide.write-record': 'Quien venga después a este lote sabe solo lo que dice el registro, y el permiso también.',
  'guide.tell-household':
    'La familia estará allí la próxima vez que se encienda la luz: debe saber qué significa y qué se deja cerrado.',
  'guide.leave-site': 'Reparado, comprobado, cerrado, conectado, en Auto y anotado: aquí no queda nada por hacer.',
  'guide.kind.look': 'Mirar o escuchar cuesta poco y muchas veces aclara mucho.',
  'guide.kind.measure': 'Una medida dice lo que los sentidos no pueden.',
  'guide.kind.operate': 'Accionado a mano, muestra si la instalación responde.',
  'guide.kind.mend': 'La causa está dicha y mostrada. Esto la termina; no se cambia nada más.',
  'guide.kind.say': 'Dicho ahora, protege a personas e instalación hasta que alguien venga.',
  'guide.think.look': 'Piénselo antes: ¿qué causas se verían o se oirían distintas aquí?',
  'guide.think.measure': 'Piénselo antes: ¿qué lectura hablaría por cuál causa?',
  'guide.think.operate': 'Piénselo antes: ¿qué dejaría pasar aquí cada causa aún posible?',
};
