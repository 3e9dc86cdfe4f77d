import type { flags as en } from '../en/flags.ts';

export const flags: Record<keyof typeof en, string> = {
  'flag.reset-before-reading':
    'Se rearmó el tablero antes de leer las palancas. Una palanca disparada es una prueba y el rearme la borra: ya no se sabe qué circuito había abierto. ¿Qué habrían mostrado las tres palancas?',
  'flag.reset-twice':
    'El tablero se rearmó otra vez por teléfono. Un rearme y cinco minutos ya decían si la causa sigue; otro no agrega nada y puede alimentar un corto. ¿Qué hizo la luz después del primero?',
  'flag.closed-unwatched':
    'El aviso se cerró sin observar cinco minutos tras un rearme. La falta de aire tarda un minuto, más el arranque, en mostrarse; una luz apagada decía poco todavía. ¿Qué podía hacer aún la luz?',
  'flag.closed-needing-visit':
    'El aviso se cerró por teléfono mientras seguía una causa que ninguna llamada repara. Hasta que alguien venga, el tratamiento o las dosis están en riesgo. ¿Qué respuesta al teléfono pedía una visita?',
  'flag.no-follow-up':
    'Al cierre le falta la llamada de mañana, el disparo contado o la visita si se repite. Un disparo sin explicar solo es inofensivo si es único. ¿Cómo se sabría de otro dentro de 30 días?',
  'flag.wrong-urgency':
    'La visita se fijó para otro momento del que pedían las respuestas. Peligro o aguas negras: ya; tratamiento o dosis perdidos: antes de las dosis de la noche; lo demás puede esperar. ¿Cuál de los tres describían las respuestas?',
  'flag.needless-visit':
    'Se mandó una visita por una alarma que un rearme borra y cinco minutos de observar confirman. El viaje no dice más, y otro aviso espera. ¿Qué señal habría hecho necesaria la visita?',
  'flag.part-not-on-truck':
    'Hubo que ir por una pieza que no estaba en la camioneta. Durante ese viaje la causa siguió haciendo daño. ¿Qué respuesta al teléfono apuntaba a esa pieza?',
  'flag.part-not-needed':
    'Una reparación no halló nada suyo que reparar. Se fueron tiempo y pieza, y las lecturas que llevaron a ella siguen sin explicar. ¿Qué comprobación distingue esta pieza de sus vecinas?',
  'flag.no-suspect':
    'Se empezó a reparar sin marcar sospecha ni decir causa. Una reparación sin sospecha no se puede poner a prueba: todo le cuadra. ¿Qué causas permitían todavía las lecturas en ese momento?',
  'flag.repeated-check':
    'La misma comprobación se hizo dos veces seguidas, sin cambiar nada entre ellas. La segunda lectura solo repite la primera, dentro de la dispersión del instrumento. ¿Qué otra comprobación dividía lo que quedaba?',
  'flag.cause-after-mend':
    'Se reparó antes de decir la causa. La reparación se lleva pruebas, y lo que fallaba queda a la memoria. ¿Qué lectura mostraba la causa mientras aún estaba?',
  'flag.wrong-cause':
    'La causa dicha no es lo que fallaba, o no todo. Al menos una lectura no se sigue de ella. ¿Qué lectura habría salido distinta si esa fuera toda la causa?',
  'flag.unverified-close':
    'La visita terminó sin comprobar el arreglo. Después de la última reparación, alguna parte del ciclo nunca se vio trabajar, y una avería cabe detrás de una luz apagada. ¿Qué comprobación faltaba?',
  'flag.left-unready':
    'La unidad quedó sin poder trabajar sola: un interruptor desconectado, el selector fuera de Auto, un candado puesto o la luz encendida. De eso depende el aire o la próxima dosis. ¿Qué abarca la última mirada al tablero?',
  'flag.record-short':
    'Al registro le faltan líneas. El permiso y el próximo técnico necesitan hallazgo, lecturas, reparación, piezas, comprobación, cómo quedó la unidad y qué sigue. ¿Cuál de ellas ya nadie puede averiguar después?',
  'flag.household-not-told':
    'La familia no oyó todo lo que necesita: qué fallaba, qué significa la alarma, que las tapas siguen cerradas. La próxima alarma la enfrenta sola. ¿Qué debe pasar en los primeros cinco minutos?',
  'flag.told-to-open':
    'Se le dijo a la familia que la próxima vez abriera una tapa y mirara. Debajo hay gas y agua honda, y ninguno avisa. ¿Qué se puede ver, oír y contar por teléfono con todo cerrado?',
  'flag.sprayed-uncleared':
    'La bomba trabajó antes de despejar el campo de aspersión. Los aspersores salen sin avisar, y puede haber personas o animales bajo el agua. ¿Qué acciones arrancan la bomba y qué va antes de cada una?',
  'flag.over-limit':
    'El aviso pasó su límite de tiempo o de dinero. La línea de tiempo muestra lo que costó cada paso junto a lo que podía decir. ¿Cuál costó más, y qué comprobación más barata decía lo mismo?',
  'flag.label-unsigned':
    'La etiqueta del tablero quedó sin nombre ni fecha. Quien abra esa puerta después no verá ninguna visita. ¿Dónde la buscaría la siguiente persona?',
};
