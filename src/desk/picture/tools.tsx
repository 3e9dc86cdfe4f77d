/** What one does with a picture beside looking at it. */
export { GlassOver } from './glass-over.tsx';
export { SavePicture } from './save-picture.tsx';
