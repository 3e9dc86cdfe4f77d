import type { Plugin } from 'vite';

/** Modules of Pixi for WebGPU, which is never asked for; other parts name them all the same. */
const WEBGPU = /\b(WebGPURenderer|GpuUboSystem)\.mjs$/;
/** Entries that only register extras for every page; the yard registers what it needs itself. */
const EXTRAS = /\/pixi\.js\/lib\/(?:index|rendering\/init|spritesheet\/init)\.mjs$/;
const STUB = '\0no-webgpu:';

/**
 * Bundles only the parts of Pixi that are used. Without this its entry counts as needed for its effects, and the
 * drawing code then waits for all three renderers, where each visitor needs one.
 */
export function pixiParts(): Plugin {
  return {
    name: 'pixi-parts',
    apply: 'build',
    enforce: 'pre',
    resolveId(id) {
      const name = WEBGPU.exec(id)?.[1];
      return name === undefined ? undefined : STUB + name;
    },
    load(id) {
      if (!id.startsWith(STUB)) return undefined;
      return { code: `export class ${id.slice(STUB.length)} {}`, moduleSideEffects: false };
    },
    transform(code, id) {
      return EXTRAS.test(id.replaceAll('\\', '/')) ? { code, map: null, moduleSideEffects: false } : undefined;
    },
  };
}
