import { it } from 'vitest';
import { choose } from '../browser/walk/chosen.ts';
import { PANEL_WALKS } from '../browser/walk/panel-walks.ts';
it('x', () => {
  for (const w of PANEL_WALKS) {
    const c = choose(w);
    const r = c.handed.reach(c.takes.flat());
    const t = [...r.transitions].filter((x) => c.whole.transitions.has(x)).length;
    console.log(w.promised.name, w.call, 'takes', c.takes.map((p) => p.length).join(), 'paths', c.paths, 'slow', c.tooSlow.length, 'states', r.states.size, 'tr', t, r.transitions.size, c.whole.states.size, c.whole.transitions.size);
    console.log(c.tooSlow.map((x) => x.split('} ').pop()).join('; '));
    for (const t of c.takes) console.log(t.map((e) => e.event).join(' > '));
  }
});
