import type { CallView, PartView } from '../../calls/view.ts';
import type { Ink, Scene } from '../../scene/types.ts';

/** How well a part is known: never seen, as it was at an instant, or seen or heard right now. */
export type PartState =
  | { readonly kind: 'pencil' }
  | { readonly kind: 'ink'; readonly seen_s: number }
  | { readonly kind: 'live' };

/**
 * What the picture draws of each part, by its ink. Nothing is drawn of the phone. What wells up at the clean-out has no ink of its
 * own: on the site it is in sight, by phone it is told with the state of the drains.
 */
function inked({ chambers, house, flows, standsAt, ...scene }: Scene) {
  const cleanOut: readonly { readonly ink: Ink }[] = [standsAt === 'phone' ? house : { ink: { kind: 'live' } }];
  return {
    phone: [],
    house: [house],
    'clean-out': flows.relief_Ls === null ? [] : cleanOut,
    'trash-tank': [chambers['trash-tank']],
    aeration: [chambers.aeration],
    clarifier: [chambers.clarifier],
    disinfection: [chambers.disinfection, scene.ultraviolet],
    'pump-tank': [chambers['pump-tank'], scene.pump, ...scene.floats],
    'disc-filter': [scene.discFilter],
    'spray-field': [scene.field],
    panel: [scene.panel, ...scene.panel.lamps],
    compressor: [scene.compressor, scene.compressor.outlet],
  } satisfies Readonly<Record<PartView['id'], readonly { readonly ink: Ink }[]>>;
}

/** The picture's pencil and ink of a part, and what the notebook has of it, as one state. */
export function partState({ scene, notebook }: CallView, part: PartView['id']): PartState {
  const drawn: readonly { readonly ink: Ink }[] = inked(scene)[part];
  if (drawn.some(({ ink }) => ink.kind === 'live')) return { kind: 'live' };
  const seen = [
    ...drawn.flatMap(({ ink }) => (ink.kind === 'ink' ? ink.seen_s : [])),
    ...notebook.filter((note) => note.part === part).map(({ at_s }) => at_s),
  ];
  return seen.length === 0 ? { kind: 'pencil' } : { kind: 'ink', seen_s: Math.max(...seen) };
}
