import type { shows as en } from '../en/shows.ts';

export const shows: Record<keyof typeof en, string> = {
  'shows.line-split':
    'El zumbido se aligera, el manómetro de la te cae y el jabón hace espuma en la pared de la manguera. Una rajadura chica no avisa a nadie: la altura del agua sostiene la presión mientras se pierde la mitad del aire.',
  'shows.joint-leak':
    'Las burbujas se debilitan y el manómetro de la te marca apenas bajo, así que ninguna luz enciende. A la vista no se halla nada; con jabón en cada unión, sí.',
  'shows.line-off-fitting':
    'Zumbido ligero, manómetro en nada, sin burbujas: un diafragma roto se parece hasta taparle la salida. La vista halla el extremo suelto.',
  'shows.line-pinched':
    'Manómetro alto, pocas burbujas, caja caliente, sin luz. Los difusores sucios también lo suben: siga la línea antes de sacarlos.',
  'shows.diffuser-fouled':
    'El manómetro marca alto y falta oxígeno, aunque la superficie se revuelve y no hay luz. La línea se ve entera; saque los difusores.',
  'shows.drop-line-broken':
    'Hierve en un punto y hay poco oxígeno, pero el manómetro sigue en su rango. Solo mirar bajo la tapa lo dice.',
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
  'shows.trap-dry':
    'Olor a cloaca solo adentro, semanas tras el último uso de un desagüe; la planta está sana. La falta de aire huele afuera.',
  'shows.toilet-leaking':
    'Entra agua a toda hora, también de noche; las dosis son frecuentes, nada está roto. El colorante lo muestra.',
  'shows.crowd': 'Mucha agua en horas, como en día de lavado; nada está roto. Pregunte antes de culpar a la bomba.',
  'shows.grease':
    'Por semanas solo se nota algo menos de oxígeno; la nata crece un cuarto de milímetro al día. Primero, preguntar.',
  'shows.disinfectant-shock':
    'Espuma blanca tras días, con oxígeno alto y amoníaco: el lodo está enfermo, no falta aire. El lodo joven también hace espuma; pregunte qué vertieron.',
  'shows.air-switch-drifted':
    'La alarma vuelve tras cada rearme con buena presión en la te: el presostato cambia muy arriba de su etiqueta. Se culpa a la línea; la presión a la que cambia lo dice.',
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
    'Su interruptor, o un tomacorriente que corta por fuga, se dispara en cuanto el cordón recibe corriente. Un corto en el cable del tablero hace lo mismo y se culpa al compresor; el cobre pelado se ve junto a la toma.',
  'shows.dialler-no-line':
    'Luz y zumbador cumplen y ninguna llamada sale. Nadie lo nota hasta que una alarma lleva días.',
  'shows.float-flooded':
    'Cuelga bajo agua que debería alzarlo y pesa en la mano; alzado, su contacto sirve, y eso engaña. Un cable atorado se ve igual desde arriba.',
  'shows.float-on-scum':
    'Apunta arriba con agua muy baja y cae tarde, así que bomba o alarma llegan a niveles raros. El contacto está sano; al mirar se ve la nata.',
  'shows.floats-swapped':
    'Después de trabajos en el tablero, un flotador hace lo del siguiente: alarma donde debe arrancar la bomba, o dosis a otra altura. Cambiar flotadores no arregla nada, pues cada uno está sano.',
  'shows.gfci-tripped':
    'Compresor callado, interruptor conectado, sin voltaje tras el botón de la toma. La humedad lo dispara una vez; si vuelve a hacerlo, hay una fuga que hallar.',
  'shows.housing-hot':
    'Un rearme parece curarlo: arranca frío y avisa otra vez una hora después, al sol. La mano en la caja lo dice; se culpa a los diafragmas.',
  'shows.insects-in-contacts':
    'Nadie lo nota hasta que falta el aire y ninguna luz enciende: los contactos no cierran. Parece un presostato pegado hasta que se abre.',
  'shows.low-voltage':
    'El zumbido es débil, cada dosis se corta y el protector de la bomba abre caliente. Una bomba nueva hará lo mismo: primero el voltaje en el tablero, con carga.',
  'shows.outage':
    'Nada zumba y ninguna luz puede encender, así que un tablero apagado no dice nada del aire ni del agua. Tras un corte largo una avería puede tardar un minuto en avisar, y un reloj digital parpadea.',
  'shows.panel-wet':
    'Alarma de nivel alto con agua baja, peor tras la lluvia; ni alzar el flotador ni cambiarlo la quita. Hay gotas en las terminales: no se mete la mano sin comprobar que no hay tensión.',
  'shows.protector-open':
    'Voltaje en las terminales, nada gira, el devanado marca abierto y sigue así en frío. Un motor recalentado marca lo mismo hasta enfriarse.',
  'shows.pump-cord-chafed':
    'El interruptor de la bomba aguanta todo el día y se dispara a la primera dosis. Un corto en el tablero dispara al conectar; este espera la dosis.',
  'shows.pump-seized':
    'Zumba unos segundos, toma cinco veces su corriente y para diez minutos, una y otra vez. Entre dos intentos no toma corriente y el devanado marca abierto, y eso engaña.',
  'shows.impeller-worn':
    'Riego débil y poca corriente, como con un filtro tapado. Pero también a salida cerrada da poca presión, y eso ningún filtro lo hace; fuera del tanque lo muestran los álabes.',
  'shows.impeller-clogged':
    'Traquetea y vibra, con riego débil. El manómetro solo lo toma por desgaste; lo dicen el oído y la bomba afuera. Busque de dónde vino la basura, o volverá.',
  'shows.intake-screened':
    'El caudal baja en días y la presión a salida cerrada sigue completa: a la bomba le falta agua. Se culpa al filtro y a los aspersores; saque la bomba y mire su rejilla.',
  'shows.capacitor-weak':
    'Zumba, no gira, abre su protector, y horas después arranca como sana. Su corriente es la de una bomba trabada, y eso engaña; el capacitor marca muy por debajo de su placa.',
  'shows.check-valve-stuck-open':
    'Nada avisa. Tras cada marcha regresa agua por el tubo y el nivel sube unos milímetros; el agua de la casa también lo sube, así que hay que mirar enseguida.',
  'shows.check-valve-stuck-shut':
    'La bomba anda, toma poca corriente y no mueve nada: presión completa sobre la bomba, nada en el filtro. Una bomba muerta no da en ningún lado; la válvula abierta muestra su chapaleta.',
  'shows.weep-hole-blocked':
    'Riego débil con bomba entera: el aire atrapado le quita presión. Purgar ayuda un rato, y eso engaña. En marcha un orificio sano echa un chorro; este está seco.',
  'shows.air-locked':
    'Anda ligera, toma poca corriente y no mueve nada, a menudo tras vaciar el tanque. Parece bomba arruinada; su orificio escupe espuma, y purgarla lo arregla.',
  'shows.siphoning':
    'El tanque queda a la altura de la toma, no hay dosis y el contador descansa, pero la parte baja del césped está mojada. Un tanque con fuga se parece; este sale por la línea.',
  'shows.discharge-broken':
    'Los aspersores apenas suben y el tanque baja rápido: mucho caudal, corriente alta, poca presión. Una bomba débil da también poco caudal. El suelo blando sobre la línea dice dónde.',
  'shows.nozzle-clogged':
    'Un aspersor queda seco y los demás llegan más lejos: sube la presión, baja el caudal. Una bomba cansada baja los dos. En goteo solo lo muestran los goteros abiertos.',
  'shows.head-broken':
    'Un géiser en un aspersor, los demás débiles, el tanque pronto vacío. Desde la casa solo se ve riego débil: caminando se halla el hoyo, antes de arrancar la bomba.',
  'shows.lateral-broken':
    'La zona no se llena, la bomba mueve más que nunca y una franja de césped está mojada. Un filtro tapado también da poca presión, pero con poco caudal.',
  'shows.zone-valve-stuck':
    'Medio campo recibe cada dosis y se empapa, el otro medio se seca. La zona abierta tiene buena presión, y eso engaña: mida las dos en una misma marcha.',
  'shows.soil-saturated':
    'Bomba, manómetros y aspersores están sanos, y la dosis queda encima del suelo. Una línea rota moja un lugar; esto moja todo, más tras la lluvia.',
  'shows.relay-open':
    'Ni Auto ni Manual mueven la bomba, con devanado e interruptor sanos: la bobina recibe y el contacto no cierra. Por esto se cambian bombas buenas.',
  'shows.relay-welded':
    'La bomba sigue en Fuera y pasa de todo flotador hasta vaciar el tanque. Solo su interruptor la para: primero desconectar, luego pensar.',
  'shows.sensing-tube-wet':
    'La luz va y viene con buenas burbujas, sobre todo en mañanas frías. El manómetro de la te acierta; el presostato está detrás de un tapón de agua.',
  'shows.splice-corroded':
    'El flotador sube y baja libre y el tablero no se entera, ni alzándolo a mano. Uno atorado hace lo mismo, pero ese se ve.',
  'shows.terminal-loose':
    'Unas dosis salen y otras no, o ninguna, con voltaje en las terminales y el devanado entero. Se culpa a la bomba; un jalón a los cables, con candado puesto, muestra el que se mueve.',
  'shows.tethers-tangled':
    'Dos flotadores cuelgan juntos bajo agua que debería alzarlos: el nivel alto no trae ni bomba ni alarma, hasta que los drenajes van lentos. Cada tapa se ve tranquila; hay que mirar los flotadores, no la luz.',
  'shows.timer-dead':
    'No sale ninguna dosis, y el exceso bombea de día o el agua sube hasta la alarma. En Manual bombea, así que se culpa a los flotadores; el temporizador, adelantado a una dosis, no arranca nada.',
  'shows.timer-lost-clock':
    'Tras un apagón largo el reloj parpadea y no dosifica; el exceso trabaja de día. Se arregla poniéndolo en hora, no con un rearme.',
  'shows.uv-lamp-out':
    'La luz de aire enciende con buen aire: en este tablero vale también por la ultravioleta. El agua se ve igual de clara y sale sin desinfectar; lo dice la mirilla, nunca el ojo puesto en la lámpara.',
  'shows.reservoir-empty':
    'La tira no da color y el agua se ve igual de clara, sin alarma. Un dosificador tapado da la misma tira; el nivel del depósito lo dice.',
  'shows.feed-clogged':
    'El depósito lleno engaña: la tira casi no da color, y un vaso de agua trae una gota de vez en cuando. Llenarlo no cambia nada.',
  'shows.feed-air-locked':
    'Suele venir tras llenar: depósito lleno, sin cloro, aire parado en el tubo. Pide cebarlo, no más cloro.',
  'shows.overfeed':
    'Olor a cloro, pasto quemado, depósito que dura poco, tira muy arriba. Parece bueno a quien solo teme gérmenes; con un vaso de agua se ve el chorro.',
  'shows.hypochlorite-stale':
    'Depósito lleno, goteo como debe y tira débil, con poco o nada de cloro libre. Calor y tiempo le quitaron fuerza: solo lo dice una muestra diluida con tira.',
  'shows.tablets-bridged':
    'Pastillas de sobra y nada de cloro: la humedad las hinchó y cuelgan secas. Desde arriba el tubo se ve lleno; un vaso de agua no las moja.',
  'shows.tablets-used-up':
    'Tira sin color, agua clara, ninguna alarma. Se gastan con el agua usada, no con el calendario: se mira el tubo.',
  'shows.tablets-drowned':
    'Olor a cloro, pasto quemado, pastillas que duran poco, sobre todo con poco uso de agua. Poner menos apenas ayuda: la lama retiene el agua en el tubo, y un vaso de agua no baja.',
  'shows.wrong-tablets':
    'Bien puestas y mojadas, pero la tira es débil: las de alberca se disuelven muy lento. Solo la etiqueta lo dice, y con las correctas encima pueden explotar.',
  'shows.uv-sleeve-dirty':
    'La mirilla brilla y nada alarma, así que parece bien; la costra deja pasar poca luz. Se ve con la corriente bloqueada y la funda en la mano.',
  'shows.line-water-frozen':
    'Manómetro alto, pocas burbujas, sin luz, con helada fuerte; al mediodía puede irse. La línea aplastada y los difusores sucios también lo suben; junto a la línea gorgotea donde está fría y cuelga.',
  'shows.scum-heavy':
    'Por meses no se nota; luego se retiene menos y el aire tiene más trabajo. El nivel es normal, así que solo la sonda lo dice; si es mucha, apunta a la cocina.',
  'shows.sludge-high':
    'El tanque retiene cada vez menos y el licor se espesa antes. Nivel y luz siguen normales; se culpa al aire por el agua mala. Sonde antes de que llegue a la salida.',
  'shows.outlet-baffle-lost':
    'Aquí la nata es poca y aparece en la cámara de aireación; el licor se espesa en semanas. Vaciar parece el remedio y lo tapa; mirar la te de salida lo dice.',
  'shows.inlet-blocked':
    'Desagües lentos y en un día aguas negras en el registro de limpieza, con el tanque de sólidos a nivel. Se sondea el drenaje y vuelve: hay toallitas en la te de entrada.',
  'shows.outlet-blocked':
    'Solo el tanque de sólidos está sobre su salida; cámara y tanque de bombeo, normales. Una bomba muerta lo represa todo por igual: mire primero la cámara siguiente.',
  'shows.mixed-liquor-old':
    'Espuma oscura y grasosa y un frasco que casi no asienta, con buen oxígeno y sin luz. El lodo esponjado también lo llena, pero es ligero y café; el viejo es espeso.',
  'shows.return-slot-blocked':
    'En días el manto sube a la salida y pasa lodo al pozo de desinfección; el licor de la cámara se aclara. Se culpa al esponjamiento; el frasco asienta bien y la varilla topa.',
  'shows.blanket-rising':
    'El frasco queda casi lleno bajo agua clara, el manto está alto y un día de lavado arrastra lodo. Mucho lodo viejo también lo llena; mire si faltó aire hace poco.',
  'shows.pump-tank-sludge':
    'Callado: la bomba mantiene limpio su lugar y el agua se ve clara. Un núcleo junto a ella engaña; tres lugares promediados lo dicen. Lo que hay vino del clarificador: mire también allí.',
  'shows.drain-leak':
    'Olor a cloaca adentro desde el principio y siempre, con agua en cada sifón; la planta está sana. Un sifón seco huele igual: mire primero los sifones; el inodoro se mueve.',
  'shows.vent-blocked':
    'Los desagües gorgotean y los sifones pierden la mitad del agua, pero el registro de limpieza está vacío. Un drenaje tapado también gorgotea, pero en él hay agua.',
  'shows.softener-brine':
    'No se ve ni se huele nada y el tratamiento apenas se frena. Lo dicen unos cloruros muy sobre los del agua de la red; pregunte adónde desagua el suavizador: la norma local puede prohibirlo.',
  'shows.vacation':
    'Pocas horas de bomba, mucho oxígeno, poca comida para el lodo, agua baja. Parece una fuga o un flotador muerto; pregunte quién estuvo en casa y por cuánto tiempo.',
  'shows.storm-infiltration':
    'Nivel alto solo con lluvia, y muchas dosis con el medidor de agua parado. Se culpa a bomba y flotadores; en seco solo queda una raya café bajo la junta del acceso.',
  'shows.clear-water-connected':
    'Nivel alto a la hora de llover, agua clara que pasa por el registro de limpieza, tanques sin fugas. Un acceso que pierde se ve igual; siga las bajadas de agua.',
  'shows.lid-unsealed':
    'Olor a huevo podrido junto a los tanques a toda hora, con buen aire. La falta de aire huele igual: mida el oxígeno; al represarse, deja salir agua antes que el registro de limpieza.',
  'shows.lid-unsafe':
    'Nada avisa, huele ni falla: una tapa rajada o suelta sobre agua honda y gas solo se ve mirando. Se arregla antes que cualquier otra cosa de la visita.',
  'shows.tank-leaks':
    'Callado: menos dosis que gente, y el tanque de sólidos bajo su salida. Uno vaciado hace una semana también está bajo, y el de una familia ausente: pregunte primero.',
  'shows.sewer-blocked':
    'Desagües lentos y luego aguas negras en el registro de limpieza o adentro; sin luz, porque los tanques están normales. Una bomba muerta también represa, pero con el tanque de sólidos lleno.',
  'shows.kit-stale':
    'Las tiras casi no toman color en ningún lado, con un dosificador que gotea y cloro fresco. Luego se pone más y se quema el pasto; pruebe antes las tiras en agua de fuerza conocida.',
};
