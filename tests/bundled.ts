/**
 * Work of the deep run in plain Node: a module as one bundle, as people run it, in a worker of its own. The test runner's
 * own way of loading makes every import a look-up, which costs the engine most of its speed.
 */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { build } from 'vite';

const FOLDER = 'dist/deep';

/** Bundles a module that exports `answer(question)`; what comes back asks it, each time in a new worker. */
export async function inPlainNode<Question, Answer>(
  entry: string,
  name: string,
): Promise<(question: Question) => Promise<Answer>> {
  const outDir = resolve(FOLDER);
  await build({
    configFile: false,
    publicDir: false,
    logLevel: 'error',
    build: {
      ssr: entry,
      outDir,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: `${name}.mjs` } },
    },
  });
  const file = JSON.stringify(pathToFileURL(resolve(outDir, `${name}.mjs`)).href);
  const start = `const { parentPort, workerData } = require('node:worker_threads');
    import(${file}).then(({ answer }) => parentPort.postMessage(answer(workerData)));`;
  return (question) =>
    new Promise((done, fail) => {
      const worker = new Worker(start, { eval: true, workerData: question });
      worker.once('message', done);
      worker.once('error', fail);
    });
}
