/** Paths of the specifications, taken on the real page: what is seen there is what is specified. */
import { afterAll, expect, it } from 'vitest';
import { told } from '../control/spec/walk.ts';
import { inBrowser, openApp } from './page.ts';
import { PANEL_WALKS } from './walk/panel-walks.ts';
import { PROCEDURE_WALKS } from './walk/procedure-walks.ts';
import { type PageRow, tableOfPage } from './walk/table.ts';
import { walkPanel } from './walk/walk-panel.ts';
import { walkProcedureOnPage, walkWholeCalls } from './walk/walk-procedure.ts';

const rows: PageRow[] = [];
const open = () => openApp({ width: 1280, height: 800 });

inBrowser('on the page', () => {
  it.each(PANEL_WALKS.map((w) => [w.promised.name, w.where, w.call, w] as const))(
    '%s %s, in the call %s',
    async (_promise, _where, _call, walk) => {
      const { row, failures } = await walkPanel(walk, open);
      rows.push(row);
      expect(failures.map(told).join('\n')).toBe('');
    },
  );
  it.each(PROCEDURE_WALKS.map((w) => [w.procedure.name, w.call, w] as const))(
    '%s, in the call %s',
    async (_name, _call, walk) => {
      const { row, failures } = await walkProcedureOnPage(walk, open);
      rows.push(row);
      expect(failures.map(told).join('\n')).toBe('');
    },
  );

  it('whole calls, from the first ring to the closed record and its debrief', async () => {
    const { row, failures } = await walkWholeCalls(open);
    rows.push(row);
    expect(failures.map(told).join('\n')).toBe('');
  });

  afterAll(() => console.log(tableOfPage(rows)));
});
