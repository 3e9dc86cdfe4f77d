import { effect } from '@preact/signals';
import { render } from 'preact';
import { App } from './app.tsx';
import { createDesk, type Desk, type DeskParts } from './desk.ts';
import { listenForTrainer } from './listen.ts';
import { wear } from './theme.ts';

/** Builds the desk on its parts and shows it, once what comes `first` is done. */
export async function mountDesk(
  root: HTMLElement,
  parts: DeskParts,
  first?: (desk: Desk) => Promise<void>,
): Promise<Desk> {
  const desk = await createDesk(parts);
  effect(() => wear(desk.settings.value.theme ?? 'auto'));
  await first?.(desk);
  root.textContent = '';
  render(<App desk={desk} />, root);
  listenForTrainer(desk);
  document.documentElement.dataset.ready = '1';
  return desk;
}
