/**
 * Work of the deep run in plain Node: a module as one bundle, as people run it, in a worker of its own. The test runner's
 * own way of loading makes every import a look-up, which costs the engine most of its speed.
 */
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { build } from 'vite';

const FOLDER = 'dist/deep';

/**
 * Bundles a module that exports `answer(question)`; what comes back asks it, in a worker that has answered before where one
 * is free: a warm engine is twice as fast as a cold one.
 */
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
  const start = `const { parentPort } = require('node:worker_threads');
    import(${file}).then(({ answer }) => parentPort.on('message', (question) => parentPort.postMessage(answer(question))));`;
  const free: Worker[] = [];
  return (question) =>
    new Promise((done, fail) => {
      const worker = free.pop() ?? new Worker(start, { eval: true });
      worker.ref();
      worker.once('message', (answer: Answer) => {
        worker.removeListener('error', fail);
        worker.unref();
        free.push(worker);
        done(answer);
      });
      worker.once('error', fail);
      worker.postMessage(question);
    });
}
