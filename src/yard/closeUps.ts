/** The close-ups, each fetched when one first goes there: most of a call is seen on the works. */
import type { Sheet } from './sheet.ts';
import type { Sparks } from './sparks.ts';
import type { CloseUpName } from './types.ts';

const OPENED: Readonly<Record<CloseUpName, (sparks: Sparks) => Promise<Sheet>>> = {
  panel: async (sparks) => new (await import('./panelCloseup.ts')).PanelCloseup(sparks),
  floats: async (sparks) => new (await import('./floatsCloseup.ts')).FloatsCloseup(sparks),
  compressor: (sparks) => plate(import('./compressorPlate.ts'), sparks),
  jar: (sparks) => plate(import('./jarPlate.ts'), sparks),
  core: (sparks) => plate(import('./corePlate.ts'), sparks),
  discs: (sparks) => plate(import('./discsPlate.ts'), sparks),
  clarifier: (sparks) => plate(import('./clarifierPlate.ts'), sparks),
};

interface PlateFile {
  readonly makePlate: (sparks: Sparks) => import('./plate.ts').Plate;
}

async function plate(file: Promise<PlateFile>, sparks: Sparks): Promise<Sheet> {
  const [{ makePlate }, { PlateSheet }] = await Promise.all([file, import('./plate.ts')]);
  return new PlateSheet(makePlate(sparks));
}

export function openCloseUp(name: CloseUpName, sparks: Sparks): Promise<Sheet> {
  return OPENED[name](sparks);
}
