import type { about as en } from '../en/about.ts';

export const about: Record<keyof typeof en, string> = {
  'about.phone': 'La familia está al teléfono. Manos secas y tapas cerradas marcan lo que se puede hacer.',
  'about.house': 'De aquí viene el agua, y aquí se cuenta lo que se halló.',
  'about.clean-out':
    'Tubo con tapa de resorte en el drenaje, entre la casa y el tanque. Lo que se regresa sale aquí antes que adentro.',
  'about.trash-tank': 'Retiene lo que flota y lo que se hunde. El agua de en medio sigue su camino.',
  'about.aeration': 'El aire de los difusores agita el licor mezclado y alimenta la vida que hace la limpieza.',
  'about.clarifier':
    'Agua quieta dentro de la cámara de aireación: los sólidos se asientan y vuelven por abajo; el agua clara sale por arriba.',
  'about.disinfection': 'Aquí el cloro se une al agua clara, camino del tanque de bombeo.',
  'about.ultraviolet':
    'Aquí el agua clara pasa junto a una lámpara ultravioleta en su funda, camino del tanque de bombeo.',
  'about.pump-tank': 'Guarda el agua tratada hasta la siguiente dosis. Sus flotadores indican la altura.',
  'about.disc-filter': 'Último colador antes del campo: sus discos apilados cuidan los orificios pequeños.',
  'about.spray-field': 'Los aspersores reparten de noche el agua tratada sobre el césped.',
  'about.drip-field': 'Mangueras enterradas con goteros dan el agua tratada al suelo, dosis por dosis.',
  'about.panel': 'Alimenta y vigila todo: interruptores, presostato, relé de bomba, luz y zumbador.',
  'about.compressor': 'Empuja aire por la línea hasta los difusores. Una te alimenta el presostato del tablero.',
  'caution.phone':
    'Primero el peligro. Después, manos secas, piso seco, solo palancas y botones. Nadie abre una cubierta atornillada ni levanta una tapa.',
  'caution.arrive':
    'Mire antes de entrar: aguas negras, suelo mojado junto a partes con tensión, tapas sueltas, perro, avispas, víboras, calor. Primero van la norma local y el técnico con licencia.',
  'caution.open-tank':
    'Nunca entre ni se asome adentro: el gas mata sin avisar. Vigile la abertura, no la deje sola, ciérrela y sujétela. Primero van la norma local y el técnico con licencia.',
  'caution.pump-cord': 'Bloquee antes de meter la mano. Nunca levante una bomba por su cable.',
  'caution.chlorine':
    'Nunca mezcle clases de cloro, ni cloro con otra cosa. Guantes, protección de ojos, aire fresco. Primero van la etiqueta y las instrucciones del fabricante.',
  'caution.ultraviolet':
    'Nunca mire una lámpara encendida: la luz quema ojos y piel y no deslumbra. Mire por la mirilla protegida; antes de sacar la lámpara, corte y bloquee la alimentación. Primero van las instrucciones del fabricante.',
  'caution.pressure': 'Con presión mientras la bomba trabaja. Pare la bomba y deje salir la presión antes de abrir.',
  'caution.spray':
    'Los aspersores salen sin avisar. Aleje a personas y animales, también del pasto mojado. Primero va la norma local.',
  'caution.dig': 'Haga marcar las líneas enterradas antes de meter la sonda o la pala.',
  'caution.hose':
    'La punta de la manguera queda por encima del agua: sumergida, puede chupar aguas negras hacia el agua de la casa.',
  'caution.live-parts':
    'Partes con tensión. Desconecte, bloquee, etiquete y compruebe que no hay tensión antes de meter la mano; los otros circuitos siguen vivos. La norma local y una licencia pueden reservar este trabajo.',
  'caution.sewage':
    'Las aguas negras traen gérmenes: guantes, protección de ojos, lavarse después. Aleje a personas y animales del suelo mojado.',
  'lid.trash': 'tapa de sólidos',
  'lid.aeration': 'tapa de aireación',
  'lid.riser': 'tapa de desinfección',
  'lid.pump': 'tapa de bombeo',
  'circuit.alarmBreaker': 'alarma',
  'circuit.compressorBreaker': 'compresor',
  'circuit.pumpBreaker': 'bomba',
  'float.redundantOffFloat': 'flotador de respaldo',
  'float.startStopFloat': 'flotador de marcha',
  'float.stopFloat': 'flotador de paro',
  'float.doseFloat': 'flotador de dosis',
  'float.overrideFloat': 'flotador de exceso',
  'float.highWaterFloat': 'flotador de nivel alto',
  'part.stopFloat': 'flotador de paro',
  'part.doseFloat': 'flotador de dosis',
  'part.overrideFloat': 'flotador de exceso',
  'part.highWaterFloat': 'flotador de nivel alto',
  'part.alarmBreaker': 'interruptor de la alarma',
  'part.compressorBreaker': 'interruptor del compresor',
  'part.pumpBreaker': 'interruptor de la bomba',
  'part.redundantOffFloat': 'flotador de respaldo',
  'part.startStopFloat': 'flotador de marcha',
  'part.lamp': 'lámpara',
  'part.airLamp': 'lámpara de aire',
  'part.waterLamp': 'lámpara de agua',
  'part.off': 'Fuera',
  'part.hand': 'Manual',
  'part.sticksOpen': 'abierto',
  'part.sticksClosed': 'cerrado',
};
