import type { Plugin } from 'vite';

/** Entries that only register extras for every page; the yard registers what it needs itself. */
const EXTRAS = ['index', 'rendering/init', 'spritesheet/init'];

/** What other parts of Pixi name, but nothing here asks for. */
const UNUSED = [
  // WebGPU, which is never asked for.
  'rendering/renderers/gpu/WebGPURenderer',
  'rendering/renderers/gpu/GpuUboSystem',
  'rendering/renderers/gpu/shader/GpuProgram',
  // Drawings come as strokes of our own, never as SVG text.
  'scene/graphics/shared/svg/SVGParser',
  'scene/graphics/shared/svg/parseSVGPath',
  // What Pixi draws itself has one colour and corners as they are; arcs come by their angles.
  'scene/graphics/shared/fill/FillGradient',
  'scene/graphics/shared/fill/FillPattern',
  'scene/graphics/shared/path/roundShape',
  'scene/graphics/shared/buildCommands/buildArcToSvg',
  // Its shapes are rectangles and lines, its curves quadratic.
  'maths/shapes/Circle',
  'maths/shapes/Ellipse',
  'maths/shapes/RoundedRectangle',
  'scene/graphics/shared/buildCommands/buildCircle',
  'scene/graphics/shared/buildCommands/buildTriangle',
  'scene/graphics/shared/buildCommands/buildArcTo',
  'scene/graphics/shared/buildCommands/buildAdaptiveBezier',
  // Textures come as canvases.
  'rendering/renderers/gl/texture/uploaders/glUploadVideoResource',
  'rendering/renderers/gl/texture/uploaders/glUploadCompressedTextureResource',
  // Masks are shapes, never pictures.
  'rendering/mask/alpha/AlphaMaskPipe',
  // Nothing drawn is read back.
  'rendering/renderers/shared/extract/ExtractSystem',
  'rendering/renderers/shared/extract/GenerateTextureSystem',
  // Neither meshes nor particle containers are shown, and nothing is said in the console.
  'scene/mesh/gl/GlMeshAdaptor',
  'scene/particle-container/shared/ParticleBuffer',
  'unsafe-eval/particle/generateParticleUpdatePolyfill',
  'rendering/renderers/shared/startup/HelloSystem',
];

const PIXI = /\/pixi\.js\/lib\/(.+)\.mjs$/;
/** Packages that Pixi brings along, and what stands in for them. */
const PACKAGES: readonly (readonly [file: RegExp, standIn: string])[] = [
  // Reads colours written as text, and their names; ours are numbers.
  [/\/@pixi\/colord\/index\.mjs$/, `export function extend() {} export function colord() { ${refusal('colord')} }`],
  [/\/@pixi\/colord\/plugins\/names\.mjs$/, 'export default function () {}'],
  // Cuts polygons into triangles; what the yard lets Pixi fill are rectangles, its other shapes come painted.
  [/\/earcut\/src\/earcut\.js$/, `export default function () { ${refusal('earcut')} }`],
];

/**
 * Bundles only the parts of Pixi that are used. Without this its entry counts as needed for its effects, and the
 * drawing code then waits for all three renderers, where each visitor needs one. What is left out has a stand-in that
 * registers nowhere, makes no program, and throws where it is used after all.
 */
export function pixiParts(): Plugin {
  return {
    name: 'pixi-parts',
    apply: 'build',
    enforce: 'pre',
    transform(code, id) {
      const file = id.replaceAll('\\', '/');
      const packaged = PACKAGES.find(([it]) => it.test(file));
      if (packaged !== undefined) return bare(packaged[1]);
      const part = PIXI.exec(file)?.[1];
      if (part === undefined) return undefined;
      if (EXTRAS.includes(part)) return bare(code);
      return UNUSED.includes(part) ? bare(exportsOf(code).map(standIn).join('\n')) : undefined;
    },
  };
}

function bare(code: string) {
  return { code, map: null, moduleSideEffects: false };
}

/** Names in the one list of exports that a module of Pixi ends with. */
function exportsOf(code: string): readonly string[] {
  return [...code.matchAll(/^export \{ (.+) \};$/gm)].flatMap(([, names = '']) => names.split(', '));
}

function standIn(name: string): string {
  return `export class ${name} {
  static extension = { type: [] };
  static from() {}
  constructor() { ${refusal(name)} }
}`;
}

function refusal(name: string): string {
  const why = `${name} of Pixi is left out of the bundle (src/tools/pixi-parts.ts)`;
  return `throw new Error(${JSON.stringify(why)});`;
}
