import { render } from 'preact';
import { App } from './app.tsx';
import { createDesk, type DeskParts } from './desk.ts';

/** Builds the desk on its parts and shows it. */
export async function mountDesk(root: HTMLElement, parts: DeskParts): Promise<void> {
  const desk = await createDesk(parts);
  root.textContent = '';
  render(<App desk={desk} />, root);
  document.documentElement.dataset.ready = '1';
}
