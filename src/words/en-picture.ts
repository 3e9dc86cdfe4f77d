import { panelFace } from './en/panel-face.ts';
import { picture } from './en/picture.ts';
import { plates } from './en/plates.ts';
import { sky } from './en/sky.ts';

/** What a picture says that is looked into, seen close up or kept, in English. */
export const ofPicture = { ...picture, ...plates, ...panelFace, ...sky };
