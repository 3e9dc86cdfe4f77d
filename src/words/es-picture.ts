import { panelFace } from './es/panel-face.ts';
import { picture } from './es/picture.ts';
import { plates } from './es/plates.ts';
import { sky } from './es/sky.ts';

/** What a picture says that is looked into, seen close up or kept, in Spanish. */
export const ofPicture = { ...picture, ...plates, ...panelFace, ...sky };
