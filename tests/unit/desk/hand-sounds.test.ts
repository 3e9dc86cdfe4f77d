import { expect, it } from 'vitest';
import { handSound } from '../../../src/desk/call/hand-sounds.ts';
import { ACTION_BY_ID } from '../../../src/service/index.ts';

it('gives each sound of the hand to some action there is', () => {
  const heard = new Map([...ACTION_BY_ID.keys()].map((id) => [id, handSound(id)]));
  expect(new Set(heard.values())).toEqual(new Set(['clack', 'click', 'scrape', 'trickle', undefined]));
  const ids = (sound: string) => [...heard].filter(([, one]) => one === sound).map(([id]) => id);
  expect(ids('clack').some((id) => id.startsWith('breaker-off'))).toBe(true);
  expect(ids('scrape').some((id) => id.startsWith('open-lid'))).toBe(true);
  expect(heard.get('press-silence')).toBe('click');
  expect(heard.get('measure-level')).toBe('trickle');
  expect(heard.get('ask-danger')).toBeUndefined();
  expect(heard.get('guide-silence')).toBeUndefined();
});
