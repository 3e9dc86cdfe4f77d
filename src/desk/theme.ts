import type { Theme } from './stored.ts';

/**
 * Has the page in light colours or dark ones. The styles ask the root for it and, where it says nothing, the device; so does
 * the colour that the page's head gives the browser for its own frame.
 */
export function wear(theme: Theme): void {
  const { dataset } = document.documentElement;
  if (theme === 'auto') delete dataset.theme;
  else dataset.theme = theme;
  for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[data-scheme]')) {
    const { scheme } = meta.dataset;
    if (theme === 'auto') meta.media = `(prefers-color-scheme: ${scheme})`;
    else meta.media = scheme === theme ? 'all' : 'not all';
  }
}
