import type { CallView, PartView } from '../../calls/view.ts';
import type { Ink, Scene } from '../../scene/types.ts';

/** How well a part is known: never seen, as it was at an instant, or seen or heard right now. */
export type PartState =
  | { readonly kind: 'pencil' }
  | { readonly kind: 'ink'; readonly seen_s: number }
  | { readonly kind: 'live' };

/** What wells up there has no ink of its own: on the site it is in sight, by phone it is told with the state of the drains. */
function cleanOut({ flows, standsAt, house }: Scene): readonly Ink[] {
  if (flows.relief_Ls === null) return [];
  return [standsAt === 'phone' ? house.ink : { kind: 'live' }];
}

/** What the picture draws of a part, by its ink. Nothing is drawn of the phone. */
function inksOf(scene: Scene, part: PartView['id']): readonly Ink[] {
  switch (part) {
    case 'house':
      return [scene.house.ink];
    case 'disinfection':
      return [scene.chambers.disinfection.ink, scene.ultraviolet.ink];
    case 'pump-tank':
      return [scene.chambers['pump-tank'].ink, scene.pump.ink, ...scene.floats.map(({ ink }) => ink)];
    case 'trash-tank':
    case 'aeration':
    case 'clarifier':
      return [scene.chambers[part].ink];
    case 'disc-filter':
      return [scene.discFilter.ink];
    case 'spray-field':
      return [scene.field.ink];
    case 'panel':
      return [scene.panel.ink, ...scene.panel.lamps.map(({ ink }) => ink)];
    case 'compressor':
      return [scene.compressor.ink, scene.compressor.outlet.ink];
    case 'clean-out':
      return cleanOut(scene);
    case 'phone':
      return [];
  }
}

/** The picture's pencil and ink of a part, and what the notebook has of it, as one state. */
export function partState({ scene, notebook }: CallView, part: PartView['id']): PartState {
  const inks = inksOf(scene, part);
  if (inks.some(({ kind }) => kind === 'live')) return { kind: 'live' };
  const seen = [
    ...inks.flatMap((ink) => (ink.kind === 'ink' ? ink.seen_s : [])),
    ...notebook.filter((note) => note.part === part).map(({ at_s }) => at_s),
  ];
  return seen.length === 0 ? { kind: 'pencil' } : { kind: 'ink', seen_s: Math.max(...seen) };
}
