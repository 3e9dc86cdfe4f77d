import { describe, expect, it } from 'vitest';
import { checkFile } from '../../src/tools/imports/check.ts';
import { access, FOLDERS } from '../../src/tools/imports/rules.ts';
import { blank, importsOf } from '../../src/tools/imports/source.ts';

const rulesBroken = (file: string, source: string) =>
  checkFile(file, source).map(({ line, rule }) => `${line}: ${rule}`);

describe('reading a source', () => {
  it('blanks comments, strings, templates and regular expressions, and keeps every offset', () => {
    const source = [
      "const a = 'Date'; // Date",
      '/* Date',
      ' Date */ const b = `Date ${`in ${c} Date`} Date`;',
      'const d = /[/"]Date/.test(a) ? e / Date : "it\\"s";',
    ].join('\n');
    const code = blank(source);
    expect(code).toHaveLength(source.length);
    expect(code.split('\n')).toHaveLength(4);
    expect([...code.matchAll(/Date/g)].map(({ index }) => index)).toEqual([source.lastIndexOf('Date')]);
    expect(code).toContain('${`');
    expect(code).toContain('c}');
  });

  it('keeps a mistake over the text of JSX on its own line', () => {
    const source = "const p = <p>It's here</p>;\nconst q = `x`;\nimport { a } from './a.ts';";
    expect(importsOf(source).map(({ specifier }) => specifier)).toEqual(['./a.ts']);
  });

  it('finds every way to import', () => {
    const source = `
      import one from './one.ts';
      import type { A } from './type.ts';
      import { type B, c } from './mixed.ts';
      import * as all from "./all.ts";
      import def, { type D } from './def.ts';
      import {
        long, // with a comment
        list,
      } from './long.ts';
      import './effect.css';
      import data from './data.json' with { type: 'json' };
      export { x } from './again.ts';
      export type { Y } from './again-type.ts';
      export * from './star.ts';
      const lazy = await import('./lazy.ts');
      const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
      const files = import.meta.glob(['./a/*.json', './b/*.json'], { eager: true });
      // import no from './comment.ts';
      const text = "import no from './string.ts'";
      export const notAnImport = 'x';
      export type Z = 'from' | './z.ts';
      const from = thing.import('./method.ts');`;
    expect(importsOf(source).map(({ specifier, kind }) => `${kind} ${specifier}`)).toEqual([
      'value ./one.ts',
      'type ./type.ts',
      'value ./mixed.ts',
      'value ./all.ts',
      'value ./def.ts',
      'value ./long.ts',
      'value ./effect.css',
      'value ./data.json',
      'value ./again.ts',
      'type ./again-type.ts',
      'value ./star.ts',
      'value ./lazy.ts',
      'value ./worker.ts',
      'value ./a/*.json',
      'value ./b/*.json',
    ]);
  });
});

describe('the order of folders', () => {
  it('never grants a way forward and one back', () => {
    for (const a of FOLDERS) {
      for (const b of FOLDERS) {
        if (a === b) continue;
        const both = [access(`${a}/x.ts`, `${b}/x.ts`), access(`${b}/x.ts`, `${a}/x.ts`)];
        expect(both).toContain('none');
      }
    }
  });

  it('lets good imports pass', () => {
    const good: readonly (readonly [string, string])[] = [
      ['plant/air.ts', "import { exp } from './num.ts';"],
      ['unit/engine.ts', "import { exp } from '../plant/num.ts'; import { setup } from 'xstate';"],
      ['unit/u1.ts', "import data from '../../scenarios/units/u1.json' with { type: 'json' };"],
      ['yard/draw.ts', "import 'pixi.js/unsafe-eval'; import type { Scene } from '../scene/types.ts';"],
      ['sound/index.ts', "import type { SoundCue } from '../calls/view.ts';"],
      ['words/en.ts', "import type { Measure } from '../service/message.ts';"],
      ['calls/view.ts', "import type { Scene } from '../scene/types.ts';"],
      ['desk/app.tsx', "import { openSound } from '../sound/index.ts'; import { render } from 'preact';"],
      ['cli/underlawn.ts', "import { readFileSync } from 'node:fs'; import { tell } from '../words/words.ts';"],
      ['tools/bench.ts', "import anything from 'anything';"],
    ];
    for (const [file, source] of good) expect(rulesBroken(file, source), file).toEqual([]);
  });

  it.each([
    ['plant/air.ts', "import { t } from '../control/timer.ts';", 'plant may not import control (control/timer.ts)'],
    ['control/timer.ts', "import { exp } from '../plant/num.ts';", 'control may not import plant (plant/num.ts)'],
    ['plant/air.ts', "import { setup } from 'xstate';", 'plant may not use xstate'],
    ['unit/engine.ts', "import type { F } from '../faults/air.ts';", 'unit may not import faults (faults/air.ts)'],
    ['yard/draw.ts', "import { xray } from '../scene/xray.ts';", 'yard may take only types from scene/xray.ts'],
    ['yard/draw.ts', "import type { F } from '../faults/air.ts';", 'yard may not import faults (faults/air.ts)'],
    ['sound/index.ts', "import type { B } from '../yard/draw.ts';", 'sound may not import yard (yard/draw.ts)'],
    [
      'words/en.ts',
      "import { say } from '../service/message.ts';",
      'words may take only types from service/message.ts',
    ],
    ['scene/known.ts', "import { en } from '../words/en.ts';", 'scene may not import words (words/en.ts)'],
    ['calls/loader.ts', "import type { S } from '../scene/types.ts';", 'calls may not import scene (scene/types.ts)'],
    ['calls/view.ts', "import { PART_IDS } from '../scene/types.ts';", 'calls may take only types from scene/types.ts'],
    ['cli/run.ts', "const desk = await import('../desk/app.ts');", 'cli may not import desk (desk/app.ts)'],
    ['calls/loader.ts', "import { readFileSync } from 'node:fs';", 'calls may not use node:fs'],
    ['desk/app.tsx', "import { Application } from 'pixi.js';", 'desk may not use pixi.js'],
    [
      'desk/app.tsx',
      "import { openApp } from '../../tests/browser/page.ts';",
      'tests/browser/page.ts lies outside src',
    ],
    [
      'plant/air.ts',
      "import u from '../../scenarios/units/u1.json';",
      'plant may not read data (scenarios/units/u1.json)',
    ],
    ['unit/engine.ts', "import { exp } from '../plant/num';", '../plant/num has no file ending'],
    ['misc/x.ts', '', 'lies in no known folder of src'],
  ])('stops %s: %s', (file, source, rule) => {
    expect(rulesBroken(file, source)).toEqual([`1: ${rule}`]);
  });
});

describe('the bans', () => {
  it.each([
    ['const y = Math.exp(x);', 'Math.exp differs in its last bits between engines'],
    ['const y = Math . tanh(x);', 'Math.tanh differs in its last bits between engines'],
    ['const { log } = Math;', 'Math differs in its last bits between engines'],
    ["const f = Math['pow'];", 'Math differs in its last bits between engines'],
    ['const y = x ** 2;', '** differs in its last bits between engines'],
    ['const y = Math.random();', 'Math.random makes every run different'],
    ['const now = new Date();', 'Date reads the clock of the machine'],
    ['const t0 = performance.now();', 'performance reads the clock of the machine'],
    ['setTimeout(done, 5);', 'setTimeout waits in real time'],
    ["const f = new Intl.NumberFormat('en');", 'Intl depends on the language data of the machine'],
    ['const s = n.toLocaleString();', '.toLocaleString depends on the language data of the machine'],
    ['names.sort((a, b) => a.localeCompare(b));', '.localeCompare depends on the language data of the machine'],
    ["const e = document.querySelector('p');", 'document belongs to a browser or to Node'],
    ["const r = await fetch('/x');", 'fetch belongs to a browser or to Node'],
    ['const t = `${new Date()}`;', 'Date reads the clock of the machine'],
  ])('in a pure folder stop %s', (source, rule) => {
    expect(rulesBroken('plant/x.ts', source)).toEqual([`1: ${rule}`]);
    expect(rulesBroken('words/x.ts', source)).toEqual([`1: ${rule}`]);
    expect(rulesBroken('desk/x.ts', source)).toEqual([]);
  });

  it('let exact arithmetic, other names and plain words pass', () => {
    const source = `
      const y = Math.max(0, Math.floor(Math.sqrt(x * x)));
      const area = Math.PI * r * r;
      const fields = { window: 1, fetch: 2 };
      const seen = fields.window + dateOf(updated) + openWindow;
      /** Date, Math.exp and ** in a comment. */
      const said = 'the document of that Date';`;
    expect(rulesBroken('plant/x.ts', source)).toEqual([]);
  });

  it('stop chance in the yard, and markup and eval everywhere but in tools', () => {
    expect(rulesBroken('yard/x.ts', 'const x = Math.random();')).toEqual(['1: Math.random makes every run different']);
    expect(rulesBroken('desk/x.tsx', '\nnode.innerHTML = text;')).toEqual(['2: innerHTML turns text into markup']);
    expect(rulesBroken('desk/x.tsx', 'eval(text);')).toEqual([
      '1: eval runs text as code, which the content policy forbids',
    ]);
    expect(rulesBroken('tools/x.ts', 'page.$eval(x); eval(y);')).toEqual([]);
  });

  it('name line and mend', () => {
    const [finding] = checkFile('unit/x.ts', "import { a } from './a.ts';\n\nexport const b = a(Math.cos(1));\n");
    expect(finding).toEqual({
      file: 'unit/x.ts',
      line: 3,
      rule: 'Math.cos differs in its last bits between engines',
      mend: 'use exp, log, pow, cos of plant/num',
    });
  });
});
