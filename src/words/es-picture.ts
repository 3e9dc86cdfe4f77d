import { picture } from './es/picture.ts';

/** What a picture says that is looked into or kept, in Spanish. */
export const ofPicture = picture;
