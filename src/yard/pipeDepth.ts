/**
 * How deep water runs in a sewer that is not full: Manning's formula for a round pipe (textbook; n 0.010 for smooth
 * plastic, from memory). Bore and fall are the drawing's, four inches and a quarter inch a foot: the usual least fall of
 * plumbing codes, since the simulation has no pipes between its tanks.
 */
export const BORE_m = 0.1016;
const FALL = 1 / 48;
const ROUGHNESS = 0.01;

/** Flow, L/s, with the water so high; `wet` is half the angle under which the surface is seen from the middle. */
function flowAt_Ls(wet: number): number {
  const r = BORE_m / 2;
  const area = r * r * (wet - Math.sin(wet) * Math.cos(wet));
  const edge = 2 * r * wet;
  return edge === 0 ? 0 : (1000 / ROUGHNESS) * area * (area / edge) ** (2 / 3) * Math.sqrt(FALL);
}

/** Depth of so many litres a second, m; a pipe that cannot take them runs full. */
export function pipeDepth_m(flow_Ls: number): number {
  // Beyond this the round pipe carries no more, however full it is.
  let [low, high] = [0, 2.6];
  if (flowAt_Ls(high) <= flow_Ls) return BORE_m;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (flowAt_Ls(middle) < flow_Ls) low = middle;
    else high = middle;
  }
  return (BORE_m / 2) * (1 - Math.cos(low));
}
