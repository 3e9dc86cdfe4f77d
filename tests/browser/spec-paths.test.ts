/** Paths of the specifications, taken on the real page: what is seen there is what is specified. */
import { readFileSync } from 'node:fs';
import { afterAll, expect, it } from 'vitest';
import { MODEL_PAGE, withSection } from '../control/spec/pages.ts';
import { told } from '../control/spec/walk.ts';
import { inBrowser, openApp } from './page.ts';
import { type Extent, extentTable, pageExtents } from './walk/extents.ts';
import { PANEL_WALKS } from './walk/panel-walks.ts';
import { PROCEDURE_WALKS } from './walk/procedure-walks.ts';
import { walkPanel } from './walk/walk-panel.ts';
import { walkProcedureOnPage, walkWholeCalls } from './walk/walk-procedure.ts';

const done: Extent[] = [];
const open = () => openApp({ width: 1024, height: 640 });

inBrowser('on the page', () => {
  it.each(PANEL_WALKS.map((w) => [w.promised.name, w.where, w.call, w] as const))(
    '%s %s, in the call %s',
    async (_promise, _where, _call, walk) => {
      const { extent, failures } = await walkPanel(walk, open);
      done.push(extent);
      expect(failures.map(told).join('\n')).toBe('');
    },
  );
  it.each(PROCEDURE_WALKS.map((w) => [w.procedure.name, w.call, w] as const))(
    '%s, in the call %s',
    async (_name, _call, walk) => {
      const { extent, failures } = await walkProcedureOnPage(walk, open);
      done.push(extent);
      expect(failures.map(told).join('\n')).toBe('');
    },
  );

  it('whole calls, from the first ring to the closed record and its debrief', async () => {
    const { extent, failures } = await walkWholeCalls(open);
    done.push(extent);
    expect(failures.map(told).join('\n')).toBe('');
  });

  afterAll(() => console.log(extentTable(done)));
});

it('has its extent told by the page of the control model; if that is stale, run: npm run diagrams', () => {
  const page = readFileSync(MODEL_PAGE, 'utf8');
  expect(withSection(page, 'page walk', extentTable(pageExtents()))).toBe(page);
});
