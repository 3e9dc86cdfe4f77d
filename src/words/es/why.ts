import type { why as en } from '../en/why.ts';

export const why: Record<keyof typeof en, string> = {
  'why.on-site': 'Esto va por teléfono, y el aviso ya está en el sitio.',
  'why.on-the-phone': 'Solo en el sitio: mande antes una visita.',
  'why.lid': 'Quite antes la {lid}.',
  'why.lid-open': 'Ya está abierta.',
  'why.lid-buried': 'El césped la tapó. Haga marcar las líneas enterradas y luego sondee desde la casa.',
  'why.no-lid-buried': 'Aquí no hay tapa enterrada.',
  'why.lid-closed': 'Ya está cerrada.',
  'why.locked': 'Este circuito está bloqueado. Quite antes el candado.',
  'why.not-locked': 'Este circuito no tiene candado.',
  'why.compressor-silent': 'Solo con el compresor trabajando.',
  'why.pump-runs': 'Solo con la bomba parada.',
  'why.not-spraying': 'Solo mientras la bomba dosifica el campo.',
  'why.call-over': 'El aviso ya terminó.',
  'why.frozen': 'Quien instruye ha parado el reloj.',
  'why.withheld': 'Esto no se puede hacer en este aviso.',
  'why.no-such-action': 'No existe la acción “{id}”.',
  'why.no-such-answer': 'El formulario no tiene esa respuesta en “{field}”.',
  'why.choose-one': 'Elija una: {field}.',
  'why.too-many': 'Como máximo {most}.',
};
