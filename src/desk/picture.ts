import type { SoundCue } from '../calls/view.ts';
import type { PartId, Scene } from '../scene/types.ts';
import type { Message } from '../service/message.ts';

/** The whole yard, or one of the close-ups in which things are worked by hand. */
export type ViewName = 'yard' | 'panel' | 'floats';

/** A place in the picture that can be pressed, in CSS pixels of the host element. */
export interface Hotspot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What this page needs of the drawn cutaway. */
export interface Picture {
  draw(scene: Scene): void;
  select(part: PartId | null): void;
  view(name: ViewName): void;
  hotspots(): readonly Hotspot[];
  onHotspots(heard: (spots: readonly Hotspot[]) => void): () => void;
  panTo(part: PartId): void;
  setStill(still: boolean): void;
  setText(text: (message: Message) => string): void;
  dispose(): void;
}

export interface PictureOptions {
  readonly text: (message: Message) => string;
  readonly still: boolean;
  readonly onSelect: (part: PartId) => void;
}

export type OpenPicture = (host: HTMLElement, options: PictureOptions) => Promise<Picture>;

/** What this page needs of the sounds. */
export interface Sounds {
  play(cues: readonly SoundCue[]): void;
  mute(muted: boolean): void;
}

export type OpenSounds = () => Promise<Sounds>;
