import { picture } from './en/picture.ts';

/** What a picture says that is looked into or kept, in English. */
export const ofPicture = picture;
