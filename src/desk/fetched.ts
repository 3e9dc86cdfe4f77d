import { EngineError } from './engine.ts';

/** Waits for a part of the page that is a file of its own; where it cannot be had, says so in words for the screen. */
export async function fetched<T>(part: Promise<T>): Promise<T> {
  try {
    return await part;
  } catch (error) {
    console.error(error);
    throw new EngineError({ id: 'trouble.notLoaded' });
  }
}
