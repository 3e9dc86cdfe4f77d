import { it } from 'vitest';
import { PROCEDURES, planOfProcedure, wholeCalls } from '../control/spec/call-walk.ts';
it('x', () => {
  for (const p of PROCEDURES) {
    const plan = planOfProcedure(p);
    const local = (e: { from: string; event: string; to: { key: string } }) => {
      const a = JSON.parse(e.from), b = JSON.parse(e.to.key);
      return Object.keys(a).filter((k) => a[k] !== b[k]).map((k) => `${k}: ${a[k]} > ${b[k]} by ${e.event}`);
    };
    const all = new Set([...plan.edges.values()].flat().flatMap(local));
    for (const mode of ['count', 'ratio']) {
    const left = new Set(all);
    const picked: number[] = [];
    for (;;) {
      let best: any = null, score = 0;
      for (const path of plan.paths) {
        const news = new Set(path.flatMap(local).filter((x) => left.has(x)));
        const last = path.findLastIndex((e) => local(e).some((x) => left.has(x)));
        const s = mode === 'count' ? news.size : news.size / (last + 1 + 15);
        if (s > score) { score = s; best = path.slice(0, last + 1); }
      }
      if (!best) break;
      picked.push(best.length);
      for (const e of best) for (const l of local(e)) left.delete(l);
    }
    console.log(p.name, mode, 'states', plan.edges.size, 'edges', plan.transitions, 'paths', plan.paths.length, 'local', all.size, 'picked', picked.length, picked.reduce((a, b) => a + b, 0), picked.join());
    }
  }
  const w = wholeCalls();
  const left = new Set(w.flatMap((c) => c.events.map((e, i) => `${c.stages[i - 1] ?? ''} ${e}`)));
  const nall = left.size; const picks: string[] = [];
  for (;;) {
    let best: any, score = 0;
    for (const c of w) { const n = new Set(c.events.map((e, i) => `${c.stages[i - 1] ?? ''} ${e}`).filter((x) => left.has(x))).size; const s = n / (c.events.length + 10); if (s > score) { score = s; best = c; } }
    if (!best) break;
    picks.push(best.events.join(' > '));
    best.events.forEach((e: string, i: number) => left.delete(`${best.stages[i - 1] ?? ''} ${e}`));
  }
  console.log('whole', nall, picks.length, '\n' + picks.join('\n'));
});
