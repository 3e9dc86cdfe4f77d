/** `npm run sounds`: makes our recordings, `assets/sounds/sprite.wav` and where each lies in it, `sprite.json`. */
import { mkdirSync, writeFileSync } from 'node:fs';
import { makeSprite } from './sounds/sprite.ts';

export function main(): number {
  const { clips, wav, json } = makeSprite();
  mkdirSync('assets/sounds', { recursive: true });
  writeFileSync('assets/sounds/sprite.wav', wav);
  writeFileSync('assets/sounds/sprite.json', json);
  console.log(`${clips.length} recordings, ${Math.round(wav.length / 1000)} kB`);
  return 0;
}
