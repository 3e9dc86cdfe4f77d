/**
 * For tests: a folder's public face with all that is behind it as one module, as the bundler makes it for people. The
 * test runner turns every import into a look-up, which costs equations that are spread over many files most of their speed.
 */
import { resolve } from 'node:path';
import { build, type Plugin } from 'vite';

const FOLDERS = ['plant', 'unit'] as const;

export function foldersAsOne(): Plugin {
  const faces = FOLDERS.map((folder) => resolve('src', folder, 'index.ts'));
  return {
    name: 'folders-as-one',
    enforce: 'pre',
    load(id) {
      return faces.includes(id) ? asOne(id) : undefined;
    },
  };
}

async function asOne(face: string): Promise<{ code: string; map: string }> {
  const made = await build({
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    plugins: [otherFolders(face)],
    build: {
      write: false,
      minify: false,
      sourcemap: true,
      target: 'es2022',
      lib: { entry: face, formats: ['es'] },
      rolldownOptions: { external: /^[^./]/ },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  const chunk = first && 'output' in first ? first.output[0] : undefined;
  if (!chunk?.map) throw new Error(`${face} was not bundled`);
  return { code: chunk.code, map: chunk.map.toString() };
}

/** What a folder imports from others stays an import, of their own one module. */
function otherFolders(face: string): Plugin {
  return {
    name: 'other-folders',
    enforce: 'pre',
    resolveId(source, importer) {
      if (importer === undefined || !source.endsWith('/index.ts')) return undefined;
      const id = resolve(importer, '..', source);
      return id === face ? undefined : { id, external: 'absolute' };
    },
  };
}
