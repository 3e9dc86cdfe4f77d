import type { together as en } from '../en/together.ts';

export const together: Record<keyof typeof en, string> = {
  'together.sound': 'Una planta sana habría mostrado todo esto: nada de lo leído habla de una avería.',
  'together.only': 'Solo «{one}» muestra todo esto.',
  'together.two': '«{one}» y «{other}» muestran todo esto por igual: nada de lo leído las distingue.',
  'together.many': '{n} averías todavía muestran todo esto; habría que leer más antes de nombrar una.',
  'together.pair': 'Ninguna avería sola muestra todo esto; «{one}» junto con «{other}» sí.',
  'together.pairs':
    'Ninguna avería sola muestra todo esto; «{one}» junto con «{other}» sí, y también {n} {n:otra pareja|otras parejas}.',
  'together.none': 'Ninguna avería de la lista muestra todo esto, ni dos juntas.',
};
