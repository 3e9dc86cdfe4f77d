/** State diagrams in Mermaid, made from the specification machines themselves. */
import type { AnyStateMachine, AnyStateNode } from 'xstate';

interface Arrow {
  readonly from: AnyStateNode;
  readonly to: AnyStateNode;
  readonly label: string;
}

/** A machine as a diagram: each region a box of its own. `only` draws some of the regions, by their paths. */
export function mermaidOf(machine: AnyStateMachine, only?: readonly string[]): string {
  const regions = Object.values(machine.root.states);
  const drawn = only ? regions.filter((r) => only.includes(r.key)) : regions;
  const lines = machine.root.type === 'parallel' ? drawn.flatMap((r) => box(r, 1)) : inside(machine.root, 1);
  return ['stateDiagram-v2', ...lines].join('\n');
}

/** Names may hold anything that a person writes; Mermaid wants plain ones, and the written one beside it. */
function idOf(node: AnyStateNode): string {
  return node.path.join('__').replace(/[^A-Za-z0-9_]/g, '_');
}

function box(node: AnyStateNode, depth: number): string[] {
  const pad = '  '.repeat(depth);
  const children = Object.values(node.states);
  const name = `${pad}state "${node.key}" as ${idOf(node)}`;
  return children.length === 0 ? [name] : [`${name} {`, ...inside(node, depth + 1), `${pad}}`];
}

function inside(node: AnyStateNode, depth: number): string[] {
  const pad = '  '.repeat(depth);
  const children = Object.values(node.states);
  const boxes = children.flatMap((child) => box(child, depth));
  if (node.type === 'parallel') return boxes;
  const [first] = node.initial.target;
  return [
    ...boxes,
    ...(first ? [`${pad}[*] --> ${idOf(first)}`] : []),
    ...children.flatMap(arrowsOf).map(({ from, to, label }) => `${pad}${idOf(from)} --> ${idOf(to)} : ${label}`),
  ];
}

function arrowsOf(node: AnyStateNode): Arrow[] {
  const all = [...[...node.transitions.values()].flat(), ...(node.always ?? [])];
  return all.flatMap((t) =>
    (t.target ?? []).map((to) => {
      const guard = typeof t.guard === 'string' ? `[${t.guard}]` : '';
      const does = t.actions.length > 0 ? `/ ${t.actions.map((a) => String(a)).join(', ')}` : '';
      return { from: node, to, label: [t.eventType, guard, does].filter((part) => part !== '').join(' ') };
    }),
  );
}
