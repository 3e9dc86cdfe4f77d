/**
 * Two renderers: WebGL on a graphics chip, Pixi's canvas renderer where WebGL would be computed in software, which
 * for this picture is several times slower than drawing on a 2D canvas.
 */
import 'pixi.js/graphics';
import { AbstractRenderer, autoDetectRenderer, type Renderer, Ticker } from 'pixi.js';
import { FONT } from './pen.ts';

export type RendererWish = 'auto' | 'canvas' | 'webgl';

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

/**
 * The page's policy forbids building code from text. WebGL needs Pixi's way round that, which brings the shader
 * renderers along; the canvas renderer builds none and needs only to be told not to look for the permission.
 */
async function allowStrictPolicy(preference: 'canvas' | 'webgl'): Promise<void> {
  if (preference === 'webgl') await import('./webgl.ts');
  else Object.assign(AbstractRenderer.prototype, { _unsafeEvalCheck: () => {} });
}

/** Makes a renderer with its canvas; the canvas is a picture only, everything in it is also there as HTML. */
export async function makeRenderer(wish: RendererWish, resolution: number): Promise<Renderer> {
  const preference = wish === 'auto' ? (softwareGraphics() ? 'canvas' : 'webgl') : wish;
  await allowStrictPolicy(preference);
  const renderer = await autoDetectRenderer({
    preference: preference === 'canvas' ? ['canvas'] : ['webgl', 'canvas'],
    width: 16,
    height: 16,
    resolution,
    autoDensity: true,
    antialias: false,
    background: 0xf6f0e1,
    // No events, accessibility or DOM of Pixi's own: the page has real buttons over the picture.
    skipExtensionImports: true,
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
