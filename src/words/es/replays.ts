import type { replays as en } from '../en/replays.ts';

export const replays: Record<keyof typeof en, string> = {
  'trouble.progress-broken': 'El aviso guardado no se puede leer. Empiécelo de nuevo.',
  'trouble.progress-older':
    'Esto lo guardó un Underlawn más antiguo (motor {made}, aquí {here}) y no saldría igual. Queda guardado; el aviso se puede empezar de nuevo.',
  'trouble.progress-newer':
    'Esto lo guardó un Underlawn más nuevo (motor {made}, aquí {here}). Queda como está: recargue la página para tener el más nuevo.',
  'trouble.progress-other-version':
    'El aviso ha cambiado desde que esto se guardó, y no saldría igual. Queda guardado; el aviso se puede empezar de nuevo.',
  'trouble.progress-differs': 'El aviso guardado no sale como era. Empiécelo de nuevo. {what}',
  'replay.engine': 'El registro se hizo con el motor {made}; este es el motor {here}.',
  'replay.call-changed': 'El aviso {call} no es el de este registro.',
  'replay.seed': 'El registro nombra la semilla {claimed}; su aviso tiene {came}.',
  'replay.instant': 'La acción {n} ({id}) no se puede hacer en su instante.',
  'replay.refused': 'La acción {n} ({id}) no se puede hacer: {why}',
  'replay.state': 'Tras la acción {n} ({id}) la unidad está en otro estado que el registrado.',
  'replay.claim': 'El registro dice {claim} = {claimed}; la repetición da {came}.',
  'replay.end': 'El registro termina en otro instante que la repetición.',
  'trouble.no-call': 'No hay ningún aviso abierto. Elija uno de la lista.',
  'trouble.call-unknown': 'Este aviso ya no está en la lista.',
};
