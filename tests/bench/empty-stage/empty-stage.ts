/** The least that a page with Pixi is: our renderer, nothing on its stage, one frame of it. */
import { Container } from 'pixi.js';
import { makeRenderer } from '../../../src/yard/renderer.ts';

const renderer = await makeRenderer('auto', 1);
renderer.resize(window.innerWidth, window.innerHeight);
document.body.append(renderer.canvas);
renderer.render(new Container());
document.documentElement.dataset.ready = '';
