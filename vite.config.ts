import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';
import { foldersAsOne } from './src/tools/folders-as-one.ts';
import { offline } from './src/tools/offline.ts';
import { pixiParts } from './src/tools/pixi-parts.ts';
import { workedOut } from './src/tools/worked-out.ts';

const SHELL =
  /\Wsrc\W(?:desk\W(?:icons|screen|bar|desk|routes|switch|later|use-later|day|picture-host|instructor\Wchannel|elsewhere\Wlater|backing|stored|shape|call\W(?:time|meter\Wkinds)|start\W[\w-]+)|words\Wcalendar|service\Wperson|sound\Wgesture|yard\Wflow)\.tsx?$|node_modules\W@?preact/;

/** One config: the page (default), the command line (`--mode cli`), and the test projects. */
export default defineConfig(({ mode }) => {
  if (mode === 'cli') {
    return {
      publicDir: false,
      build: {
        ssr: true,
        rolldownOptions: { input: ['src/cli/underlawn.ts', 'src/cli/faults-worker.ts'] },
        outDir: 'dist/cli',
        emptyOutDir: true,
        target: 'node20',
        minify: false,
        chunkSizeWarningLimit: 2000,
      },
      ssr: { noExternal: true },
    };
  }
  return {
    root: 'src',
    base: './',
    plugins: [pixiParts(), workedOut(), offline()],
    publicDir: '../assets/public',
    build: {
      outDir: '../dist/web',
      emptyOutDir: true,
      target: 'es2022',
      // The first that know `light-dark()`, which the colours are made of: else it would be written out, and then no sheet of
      // paper on a dark page could be light.
      cssTarget: ['chrome123', 'firefox121', 'safari17.5'],
      assetsInlineLimit: 0,
      manifest: true,
      // Browsers that lack it fetch a file when it is asked for, without a polyfill of a few hundred bytes. Of a part that comes
      // later only the styles are fetched ahead: lists of all its files would weigh on the first load.
      modulePreload: {
        polyfill: false,
        resolveDependencies: (_file, needs) => needs.filter((name) => name.endsWith('.css')),
      },
      // What the first screen shares with others, what both renderers of Pixi share, what the sheets of the yard share, and
      // what only its close-ups share, in one file each instead of several: fewer requests, and it packs tighter. What only
      // later parts share stays out. The order of the parts is for the shell too, which draws nothing.
      rolldownOptions: {
        output: {
          codeSplitting: {
            groups: [
              { name: 'shell', test: SHELL, minShareCount: 2 },
              { name: 'drawing', test: /pixi(?!.*\Wgl\W)/, minShareCount: 2 },
              {
                name: 'sheets',
                test: /\Wsrc\Wyard\W(?!flow|copy|poster|closeUps|\w+Plate|plate|staff|vault|along|floatsTank|moonlight|houseLight|skySaid)/,
                minShareCount: 2,
              },
              { name: 'closer', test: /\Wsrc\Wyard\W(?:plate|staff|vault|along)/, minShareCount: 2 },
            ],
          },
        },
      },
    },
    worker: {
      format: 'es',
      plugins: () => [workedOut()],
      rolldownOptions: {
        output: {
          // Vite takes the bundler's own comments out of the page, but leaves them in its workers.
          comments: { annotation: false },
          // What many parts of the engine's worker share, in one file.
          codeSplitting: {
            groups: [
              { name: 'session', test: /\Wsrc\W(?:calls\W(?:cost|places)|desk\Wengine)\.ts$/, minShareCount: 2 },
            ],
          },
          chunkFileNames: ({ facadeModuleId }) => `assets/${dataFolder(facadeModuleId) ?? 'worker'}-[name]-[hash].js`,
        },
      },
    },
    optimizeDeps: {
      include: ['pixi.js', 'pixi.js/unsafe-eval', 'preact', 'preact/hooks', '@preact/signals', 'xstate', 'idb'],
    },
    server: { host: '127.0.0.1' },
    preview: { host: '127.0.0.1' },
    test: {
      root: '.',
      maxWorkers: '100%',
      reporters: ['default', './src/tools/closing-line.ts'],
      projects: [
        project('unit', ['tests/unit/**/*.test.ts', 'tests/calls/**/*.test.ts']),
        project('published', ['tests/published/**/*.test.ts']),
        project('control', ['tests/control/**/*.test.ts'], { testTimeout: 300_000 }),
        project('browser', ['tests/browser/**/*.test.ts'], {
          // After all else, and two at a time: a page waits more than it works.
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          testTimeout: 120_000,
          hookTimeout: 120_000,
        }),
        project('deep', ['tests/**/*.deep.ts'], { testTimeout: 3_600_000, maxConcurrency: 2 }),
      ],
    },
  };
});

/** The folder of `scenarios` that a data file lies in: it stands in the file's name, for `bench/size` to tell them apart. */
function dataFolder(id: string | null): string | undefined {
  return /\Wscenarios\W(\w+)\W/.exec(id ?? '')?.[1];
}

function project(name: string, include: string[], more: TestProjectInlineConfiguration['test'] = {}) {
  const test = { name, root: '.', environment: 'node' as const, include, testTimeout: 60_000, ...more };
  return { plugins: [foldersAsOne()], test };
}
