import type { happenings as en } from '../en/happenings.ts';

export const happenings: Record<keyof typeof en, string> = {
  'change.arrived': 'llegada al sitio',
  'change.breach': 'detenido: se saltó un paso que protege la vida',
  'sound.buzzer': 'Suena el zumbador',
  'sound.hum': 'Zumba el compresor',
  'sound.rattle': 'Traquetea el compresor',
  'sound.hiss': 'Sisea el aire',
  'sound.pump': 'Trabaja la bomba',
  'sound.spray': 'Riego sobre el césped',
  'sound.bubbles': 'Suben burbujas',
  'sound.click': 'Chasquido de un interruptor',
  'sound.ring': 'Suena el teléfono',
};
