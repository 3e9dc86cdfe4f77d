/** Por qué un número es el que es: sus partes, la ecuación, de dónde viene. */
import type { because as en } from '../en/because.ts';

export const because: Record<keyof typeof en, string> = {
  'because.title': 'Los números de aquí, y por qué',
  'because.lead':
    'Cada uno es lo que tenía la simulación en este instante. Abra uno y verá sus partes, la ecuación y la fuente.',
  'because.sum': 'Se compone de',
  'because.plus': 'más',
  'because.minus': 'menos',
  'because.source': 'Fuente: {s}',
  'because.air': 'Presión de aire en la línea',
  'because.air-flow': 'Aire que llega a los difusores',
  'because.oxygen': 'Oxígeno en la cámara de aireación',
  'because.liquor': 'Sólidos del licor mezclado',
  'because.head': 'Presión que da la bomba',
  'because.current': 'Corriente de la bomba',
  'because.tank': 'Nivel del tanque de bombeo',
  'because.stay': 'Estancia antes de la desinfección',
  'because.sludge': 'Lodo en el tanque de sólidos',
  'because.part.air-depth': 'agua sobre los difusores',
  'because.part.air-cracking': 'apertura de los difusores',
  'because.part.air-line-water': 'agua detenida en la línea',
  'because.part.air-loss': 'paso por los difusores',
  'because.part.air-moved': 'lo que mueve el compresor',
  'because.part.air-leaks': 'lo que se pierde por agujeros de la línea',
  'because.part.oxygen-full': 'lo que el agua admitiría',
  'because.part.oxygen-breathed': 'lo que se respira antes de que el aire lo reponga',
  'because.part.living': 'vivo',
  'because.part.remains': 'restos de lo que murió',
  'because.part.inert': 'entró y no se puede comer',
  'because.part.uneaten': 'aún sin comer',
  'because.part.head-lift': 'subida hasta el campo',
  'because.part.head-filter': 'válvula de retención y filtro de discos',
  'because.part.head-pipe': 'fricción en la tubería',
  'because.part.head-end': 'lo que queda en el campo',
  'because.part.current-turning': 'girar el impulsor en aire',
  'because.part.current-water': 'mover agua',
  'because.part.stay-trash': 'tanque de sólidos',
  'because.part.stay-aeration': 'cámara de aireación',
  'because.part.stay-clarifier': 'clarificador',
  'because.how.air':
    'p = ρ g d + lo que abre los difusores + k Q², con {d} de agua encima y {q} de paso. Una rajadura, un agujero o un diafragma gastado cambian Q, y con ello la última parte.',
  'because.how.air-standing':
    'El compresor está parado. Lo que queda en la línea se fuga por él y por cualquier agujero: √p baja parejo con el tiempo.',
  'because.how.air-short': 'Los difusores abrirían a {p}. La línea no llega a eso, así que no sale aire.',
  'because.how.air-flow':
    'El compresor mueve el Q donde su curva p = p₀ (1 − Q / Q₀)^(1/n), con Q₀ {free} y p₀ {dead}, iguala lo que toman difusores y agujeros a p.',
  'because.how.oxygen':
    'dC/dt = KLa (C* − C) − r. A {t} el aire renueva el oxígeno del agua {k} veces por hora; lo que falta hasta C* es lo que gasta lo vivo, unos {r} por hora.',
  'because.how.oxygen-none': 'No entra aire: el oxígeno que había pronto se respira y nada trae más.',
  'because.how.liquor': 'Los sólidos cuentan 0.75 g por cada g de DQO no disuelta.',
  'because.how.head':
    'H = H₀ − a Q²: {h} con la válvula cerrada, menos lo que {q} cuesta dentro de la bomba. Fricción según Hazen y Williams; aberturas según Q = Cd A √(2p/ρ).',
  'because.how.current':
    'Nominal {a}. Un tercio gira el impulsor; el resto crece con el caudal, hasta su máximo a boca libre.',
  'because.how.current-stalled':
    'El rotor está trabado: 5.5 veces los {a} nominales, hasta que abra un interruptor o el protector.',
  'because.how.tank':
    'Contiene {v}. A {q} por día, la media de los últimos días, los {left} hasta el flotador de nivel alto duran {h}, si nada se dosifica.',
  'because.how.tank-high': 'Contiene {v}, y el flotador de nivel alto está arriba.',
  'because.how.stay': 'θ = V / Q, con Q la entrada media de los últimos días, {q} por día.',
  'because.how.sludge':
    '{v} sobre el fondo del tanque. Se toma que un metro cúbico de lodo contiene 90 kg de sólidos secos; crece con lo que asienta y baja con lo que digiere.',
  'because.source.air': 'hidrostática; pérdidas: práctica común, sin fuente',
  'because.source.air-flow':
    'agujeros: ecuación de tobera en la forma de ISO 6358; el compresor es inventado (convención)',
  'because.source.oxygen': 'transferencia según la norma de ASCE; saturación Benson y Krause 1984; demanda IWA ASM1',
  'because.source.liquor': 'IWA ASM1 con las relaciones de BSM1',
  'because.source.head':
    'Hazen-Williams y ley del orificio, manuales de hidráulica; la bomba es inventada (convención)',
  'because.source.current':
    'lecturas del oficio en aire, a válvula cerrada y a boca libre; las partes son una convención',
  'because.source.tank': 'balance de volumen',
  'because.source.stay': 'definición del tiempo medio de residencia',
  'because.source.sludge': 'sólidos secos de 40 a 90 kg/m³: práctica común, sin fuente; 90 es una convención',
  'because.stroke': 'Carrera del compresor',
  'because.blanket': 'Manto de lodo sobre la ranura del clarificador',
  'because.solids-out': 'Sólidos en el agua almacenada',
  'because.residual': 'Cloro en el agua almacenada',
  'because.passage': 'Caudal que deja pasar el filtro de discos',
  'because.sediment': 'Sedimento en el tanque de bombeo',
  'because.scum': 'Nata en el tanque de sólidos',
  'because.part.stroke-open': 'carrera entera con la línea libre',
  'because.part.stroke-held': 'que la presión de la línea le quita',
  'because.part.chlorine-free': 'libre',
  'because.part.chlorine-bound': 'unido al amoniaco',
  'because.how.stroke':
    's = 1 − (p / p₀)ⁿ, con p {p}, p₀ {dead} y n {n}: sus oscilaciones por segundo son las de la red, así que lo que mueve cada una baja como el caudal en su curva.',
  'because.how.blanket':
    'Su techo está donde los sólidos pasan la mitad de los {x} del licor. El licor cae {falls} por hora, más lento cuanto más espeso; el caudal del día sube {up} por hora. El aire devuelve lo que llega a la ranura.',
  'because.how.solids-out':
    'Lo que el clarificador deja pasar y el tanque de bombeo aún no ha asentado. El manto está {b} sobre su ranura; cuanto más se acerca a la salida, más pasa.',
  'because.how.residual':
    '{n} de nitrógeno amoniacal atan hasta {most} de cloro como monocloramina; solo bastante más allá queda algo libre. Lo que hay se pierde por primer orden, más deprisa en agua sucia.',
  'because.how.passage':
    'De lo que pasa limpio. A {q} quita ahora {p} de la presión de la bomba: Δp = k Q², y k crece al cerrarse sus ranuras.',
  'because.how.passage-rests': 'De lo que pasa limpio. La bomba descansa, así que ahora no se pierde nada en él.',
  'because.how.sediment':
    '{v} sobre el fondo, de {least} a {most} según el sitio: la bomba mantiene limpia su esquina. Se toma que un metro cúbico contiene {g} kg de sólidos secos.',
  'because.how.scum':
    '{v} sobre la superficie del tanque, de {a} m². Se toma que un metro cúbico de nata contiene 400 kg de grasa y sólidos.',
  'because.source.stroke': 'el compresor es inventado (convención)',
  'because.source.blanket':
    'Takács, Patry y Nolasco 1991 según BSM1; velocidades por índice de volumen de una calculadora pública; la mitad del licor es una convención',
  'because.source.solids-out': 'el sedimentador por capas de BSM1',
  'because.source.residual':
    'estequiometría del punto de quiebre, 5.07 g de cloro por 1 g de nitrógeno; la pérdida es una convención dentro de rangos de libro',
  'because.source.passage':
    'pérdidas según el cuadrado del caudal, manuales de hidráulica; el filtro es inventado (convención)',
  'because.source.sediment': '40 kg/m³ es una convención',
  'because.source.scum': '400 kg/m³ es una convención',
  'because.intake': 'Filtro de toma tapado',
  'because.jar': 'Lodo asentado de un litro en media hora',
  'because.rise': 'Velocidad ascensional en el clarificador',
  'because.clarified': 'Sólidos arriba en el clarificador',
  'because.field': 'Presión en el campo',
  'because.flow': 'Caudal al campo',
  'because.aeration-level': 'Agua sobre la ranura del clarificador',
  'because.part.level-outlet': 'de la ranura a la salida',
  'because.part.level-over': 'sobre la salida, para que corra el agua',
  'because.part.level-short': 'que falta hasta la salida',
  'because.how.intake':
    'Quita {p} de la presión del compresor a {q}: Δp = k Q². Se dibuja tapado desde k = 0.03 kPa por (L/min)².',
  'because.how.jar':
    'Un litro de {x} con un índice de volumen de {i} mL/g, asentado en 60 capas por la misma ley del clarificador; la línea está donde los sólidos pasan la mitad de los del licor.',
  'because.how.rise': 'v = Q / A: {q} por una superficie de {a} m².',
  'because.how.clarified': 'Lo que cae más despacio de lo que sube el agua, y lo que nunca asienta, llega a la salida.',
  'because.how.field':
    'Los orificios dejan pasar Q = n Cd A √(2p/ρ): {q} a esta presión. El campo está hecho para {d}.',
  'because.how.flow':
    'Donde la curva de la bomba, {h} contra una válvula cerrada, encuentra lo que pide la línea: {l} de elevación, pérdidas con Q² y Q^1.852, y {p} en el campo.',
  'because.how.aeration-level':
    'Cámara y clarificador están al mismo nivel. Salen {q}; el tubo lleva más cuanto más sube sobre la salida.',
  'because.source.intake': 'pérdidas según el cuadrado del caudal, manuales; 0.03 es una convención',
  'because.source.jar':
    'Takács, Patry y Nolasco 1991 según BSM1; velocidades por índice de volumen de una calculadora pública',
  'because.source.rise': 'definición de la carga superficial',
  'because.source.clarified': 'el sedimentador por capas de BSM1',
  'because.source.field': 'ley de orificios, manuales de hidráulica',
  'because.source.flow':
    'Hazen-Williams y la ley de orificios, manuales de hidráulica; la bomba es inventada (convención)',
  'because.source.aeration-level': 'balance de volumen',
};
