import type { breach as en } from '../en/breach.ts';

export const breach: Record<keyof typeof en, string> = {
  'breach.danger-not-asked':
    'Se mandó una mano al tablero sin preguntar antes por peligros. Aguas negras afuera, olor a quemado, agua en el tablero, rayos o una descarga quieren decir: no tocar nada, alejarse, visita ya. El peligro va primero en cada aviso. La norma local, las instrucciones del fabricante y el técnico con licencia van antes que esto.',
  'breach.householder-opens-panel':
    'Se le dijo a la familia que abriera el tablero. Detrás de una cubierta atornillada hay tensión, aun con cada palanca desconectada. La familia maneja palancas y botones, con manos secas y piso seco; lo demás toca al técnico con licencia, según la norma local y las instrucciones del fabricante.',
  'breach.householder-opens-tank':
    'Se le dijo a la familia que abriera un tanque. El gas de abajo mata sin avisar, y una abertura sin tapa es agua honda donde puede caer un niño. La familia nunca levanta una tapa; abrir toca al técnico con licencia, según la norma local y las instrucciones del fabricante.',
  'breach.site-not-made-safe':
    'Se empezó a trabajar sin asegurar el sitio. Antes se buscan aguas negras, suelo mojado junto a partes con tensión, tapas sueltas, gas y animales; se aleja a la gente y se ponen guantes y protección de ojos. La norma local, las instrucciones del fabricante y el técnico con licencia van antes que esto.',
  'breach.not-locked-out':
    'Se metió la mano sin bloquear el circuito. Una palanca desconectada no es un circuito muerto: desconectar, bloquear, etiquetar, probar el medidor, medir, probarlo otra vez. Los otros circuitos siguen vivos y un capacitor guarda su carga. La norma local, las instrucciones del fabricante y el técnico con licencia van primero.',
  'breach.lid-left-open':
    'Se dejó el sitio con una tapa quitada. Una abertura es gas y agua honda en un patio donde juegan niños. Se vigila mientras está abierta, y se cierra y sujeta antes de irse. La norma local, las instrucciones del fabricante y el técnico con licencia van antes que esto.',
  'breach.chlorine-mixed':
    'Se pusieron pastillas nuevas sobre las de alberca. El hipoclorito de calcio y el tricloro juntos pueden explotar y soltar cloro. Primero se lee la etiqueta; las malas salen secas, con guantes, protección de ojos y aire fresco, y quedan aparte. La norma local, las instrucciones del fabricante y el técnico con licencia van primero.',
};
