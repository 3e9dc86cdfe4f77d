/** State diagrams in Mermaid, made from the specification machines themselves: a small one for each region. */
import type { AnyStateMachine, AnyStateNode } from 'xstate';

/** A region of a machine as a diagram, with what lies inside its states left out. */
export function mermaidOf(region: AnyStateNode): string {
  const states = Object.values(region.states);
  const [first] = region.initial.target;
  const arrows = new Map<string, string[]>();
  for (const node of states) {
    for (const { to, label } of arrowsOf(node)) {
      const arrow = `${idOf(node)} --> ${idOf(to)}`;
      arrows.set(arrow, [...(arrows.get(arrow) ?? []), label]);
    }
  }
  return [
    'stateDiagram-v2',
    ...states.map((node) => `  state "${node.key}" as ${idOf(node)}`),
    ...(first ? [`  [*] --> ${idOf(first)}`] : []),
    ...[...arrows].map(([arrow, labels]) => `  ${arrow} : ${labels.join('<br/>')}`),
  ].join('\n');
}

/** Regions of a machine, those inside the states of others too, in the order in which they are written. */
export function regionsOf(machine: AnyStateMachine): AnyStateNode[] {
  const within = (node: AnyStateNode): AnyStateNode[] =>
    node.type === 'parallel'
      ? Object.values(node.states).flatMap((region) => [region, ...within(region)])
      : Object.values(node.states).flatMap(within);
  return within(machine.root);
}

/** A region of two states that only events move: not worth a drawing. */
export function isToggle(region: AnyStateNode): boolean {
  const states = Object.values(region.states);
  return (
    states.length === 2 && states.every((s) => s.always === undefined || s.always.length === 0) && !states.some(guarded)
  );
}

/** A toggle in a line: its states, and what leads from one to the other and back. */
export function toggleLine(region: AnyStateNode): string {
  const [first, second] = Object.values(region.states) as [AnyStateNode, AnyStateNode];
  const labels = (node: AnyStateNode) =>
    arrowsOf(node)
      .map((a) => a.label)
      .join(', ');
  return `| ${region.key} | ${first.key} | ${labels(first)} | ${second.key} | ${labels(second)} |`;
}

/** Names may hold anything that a person writes; Mermaid wants plain ones, and the written one beside it. */
function idOf(node: AnyStateNode): string {
  return node.key.replace(/[^A-Za-z0-9_]/g, '_');
}

function guarded(node: AnyStateNode): boolean {
  return [...node.transitions.values()].flat().some((t) => t.guard !== undefined);
}

function arrowsOf(node: AnyStateNode): { to: AnyStateNode; label: string }[] {
  const all = [...[...node.transitions.values()].flat(), ...(node.always ?? [])];
  return all.flatMap((t) =>
    (t.target ?? []).map((to) => {
      const guard = typeof t.guard === 'string' ? `[${t.guard}]` : '';
      const does = t.actions.length > 0 ? `/ ${t.actions.map((a) => String(a)).join(', ')}` : '';
      return { to, label: [t.eventType, guard, does].filter((part) => part !== '').join(' ') };
    }),
  );
}
