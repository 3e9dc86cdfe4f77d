import type { proofs as en } from '../en/proofs.ts';

export const proofs: Record<keyof typeof en, string> = {
  'proof.pressure': 'presión en la te dentro de la etiqueta',
  'proof.watched': 'cinco minutos ante el tablero con la luz apagada',
  'proof.air-alarm': 'la alarma de aire, provocada a propósito',
  'proof.water-alarm': 'la luz encendida por el flotador de nivel alto',
  'proof.floats': 'cada flotador alzado por turno',
  'proof.dosing': 'una dosis arrancada por el temporizador',
  'proof.spray': 'el campo dosificado a plena presión',
  'proof.clock': 'el reloj del tablero en hora',
  'proof.lamp': 'luz y zumbador con Prueba',
  'proof.stops': 'la bomba parada con el selector en Off',
  'proof.disinfects': 'cloro que dosifica, o lámpara UV encendida, ya reparado',
};
