/** What a place is called, what it is for and which cautions bite there, on a given unit. */
import { type Message, type Place, say } from '../service/index.ts';
import type { UnitSpec } from '../unit/index.ts';

export interface PlaceWords {
  readonly name: Message;
  readonly about: Message;
  readonly cautions: readonly Message[];
}

const CAUTIONS: Readonly<Partial<Record<Place, readonly string[]>>> = {
  phone: ['phone'],
  house: ['arrive'],
  'trash-tank': ['open-tank', 'sewage'],
  aeration: ['open-tank', 'sewage'],
  clarifier: ['open-tank'],
  disinfection: ['chlorine', 'open-tank'],
  'pump-tank': ['open-tank', 'pump-cord', 'sewage'],
  'disc-filter': ['pressure'],
  'spray-field': ['spray'],
  panel: ['live-parts'],
  compressor: ['live-parts'],
  'clean-out': ['sewage'],
};

/** Places that are something else on units with a drip field or with an ultraviolet lamp. */
function variantOf(place: Place, spec: UnitSpec): { readonly id: string; readonly cautions: readonly string[] } {
  if (place === 'spray-field' && spec.plant.discharge.kind === 'drip')
    return { id: 'drip-field', cautions: ['sewage'] };
  if (place === 'disinfection' && spec.panel.ultraviolet)
    return { id: 'ultraviolet', cautions: ['ultraviolet', 'open-tank'] };
  return { id: place, cautions: CAUTIONS[place] ?? [] };
}

export function placeWords(place: Place, spec: UnitSpec): PlaceWords {
  const { id, cautions } = variantOf(place, spec);
  return {
    name: say(`part.${id === 'drip-field' ? id : place}`),
    about: say(`about.${id}`),
    cautions: cautions.map((caution) => say(`caution.${caution}`)),
  };
}
