/** What a page holds of an open yard. */
import type { ControlId } from '../calls/view.ts';
import type { PartId, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';
import type { Glass } from './glass.ts';
import type { Box } from './pen.ts';
import type { PosterWish } from './posterWords.ts';
import type { RendererWish } from './renderer.ts';

/** The close-ups: the panel, the float tree, a part cut open, a jar or a tube held up. */
export type CloseUpName = 'panel' | 'floats' | 'compressor' | 'discs' | 'clarifier' | 'jar' | 'core';

/** The whole cutaway, or a close-up. */
export type ViewName = 'yard' | CloseUpName;

/** A place one can press, in CSS pixels of the host; the page lays a real button over it. */
export interface Hotspot {
  readonly id: PartId | ControlId;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly label: Message;
}

/** How lengths are marked: every so many whole units a mark, a longer one, a figure. */
export interface Staff {
  readonly unit_m: number;
  readonly mark: number;
  readonly long: number;
  readonly figure: number;
}

/** What the picture says things in: a language and units of measure. */
export interface Speech {
  readonly text: (message: Message) => string;
  readonly staff: Staff;
}

export interface YardOptions extends Speech {
  readonly renderer?: RendererWish;
  /** Everything at its final state, nothing moves. */
  readonly still?: boolean;
  /** Where drags and pinches are heard: the element that also holds the buttons over the picture. The host by default. */
  readonly touch?: HTMLElement;
  /** A part was pressed on the picture itself. */
  readonly onSelect?: (part: PartId) => void;
}

export interface Yard {
  /** New truth: the picture goes there, and keeps drawing only while something moves. */
  draw(scene: Scene): void;
  /** A dashed frame round the part at hand. */
  select(part: PartId | null): void;
  /** Goes there; resolves when it is shown. A close-up is fetched first, which can fail. */
  view(view: ViewName): Promise<void>;
  hotspots(): readonly Hotspot[];
  /** What names and notes cover, CSS pixels of the host: for tests. */
  labels(): readonly Box[];
  /** Figures of the close-up that is shown, for who is told them. */
  told(): readonly (readonly [name: Message, value: Message])[];
  /** Called at once and after every change of the hotspots; returns the way to stop it. */
  onHotspots(heard: (spots: readonly Hotspot[]) => void): () => void;
  /** Moves the sheet under the screen, CSS pixels. */
  pan(dx: number, dy?: number): void;
  panTo(part: PartId): void;
  /** Zooms about the middle of the screen; 1 is the usual size. */
  zoom(by: number): void;
  setStill(on: boolean): void;
  /** What is shown, the whole works or a close-up, as a sheet to keep; what makes it is fetched first. */
  poster(wish: PosterWish): Promise<Blob>;
  /** A glass to hold over the works; fetched when one first takes it. */
  glass(): Promise<Glass>;
  setSpeech(speech: Speech): void;
  /** What is on the screen, in shares of the whole sheet: for tests. */
  visible(): { readonly x: number; readonly width: number };
  /** How many frames were drawn, and whether more are coming: for tests. */
  readonly frames: number;
  readonly moving: boolean;
  dispose(): void;
}
