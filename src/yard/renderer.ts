/**
 * Two renderers: WebGL on a graphics chip, Pixi's canvas renderer where WebGL would be computed in software, which
 * for this picture is several times slower than drawing on a 2D canvas.
 */
import 'pixi.js/unsafe-eval';
import { autoDetectRenderer, GlLimitsSystem, type Renderer, Ticker } from 'pixi.js';
import { FONT } from './pen.ts';

export type RendererWish = 'auto' | 'canvas' | 'webgl';

// The shader that batches sixteen textures is a chain of sixteen branches; four are plenty for a few dozen cels.
const contextChange = GlLimitsSystem.prototype.contextChange;
GlLimitsSystem.prototype.contextChange = function fewTextures(this: GlLimitsSystem): void {
  contextChange.call(this);
  this.maxBatchableTextures = Math.min(4, this.maxBatchableTextures);
};

// Pixi's own clock would ask for frames for ever; the yard draws only while something moves.
Ticker.system.autoStart = false;
Ticker.system.stop();

function softwareGraphics(): boolean {
  const gl = document.createElement('canvas').getContext('webgl2');
  if (gl === null) return true;
  const info = gl.getExtension('WEBGL_debug_renderer_info');
  const name = info === null ? '' : String(gl.getParameter(info.UNMASKED_RENDERER_WEBGL));
  gl.getExtension('WEBGL_lose_context')?.loseContext();
  return /swiftshader|llvmpipe|softpipe|basic render|software/i.test(name);
}

/** Makes a renderer with its canvas; the canvas is a picture only, everything in it is also there as HTML. */
export async function makeRenderer(wish: RendererWish, resolution: number): Promise<Renderer> {
  const preference = wish === 'auto' ? (softwareGraphics() ? 'canvas' : 'webgl') : wish;
  const renderer = await autoDetectRenderer({
    preference: preference === 'canvas' ? ['canvas'] : ['webgl', 'canvas'],
    width: 16,
    height: 16,
    resolution,
    autoDensity: true,
    antialias: false,
    background: 0xf6f0e1,
    eventFeatures: { move: false, globalMove: false, click: false, wheel: false },
    hello: false,
  });
  const canvas = renderer.canvas;
  canvas.setAttribute('aria-hidden', 'true');
  canvas.tabIndex = -1;
  return renderer;
}

/** The letters are painted into the sheets, so the typeface has to be there first; without it the next best serves. */
export async function fontsReady(): Promise<void> {
  try {
    await Promise.all([400, 700].map((w) => document.fonts.load(`${w} 14px ${FONT}`)));
  } catch {
    // A missing typeface is no reason to show no picture.
  }
}
