/** Where one is, kept in the address after the hash so that a reload comes back to it. */
export type Route =
  | { readonly screen: 'start' }
  | { readonly screen: 'call'; readonly callId: string }
  | { readonly screen: 'debrief'; readonly key: number }
  | { readonly screen: 'round' };

/** Reads `#/call/ID`, `#/debrief/NUMBER`, `#/round`; anything else is the start. */
export function readRoute(hash: string): Route {
  const [screen, rest] = hash.replace(/^#\/?/, '').split('/');
  if (screen === 'call' && rest !== undefined && /^[\w-]+$/.test(rest)) return { screen, callId: rest };
  if (screen === 'debrief' && rest !== undefined && /^\d+$/.test(rest)) return { screen, key: Number(rest) };
  return { screen: screen === 'round' ? 'round' : 'start' };
}

/** The hash of a route. */
export function writeRoute(route: Route): string {
  if (route.screen === 'call') return `#/call/${route.callId}`;
  if (route.screen === 'debrief') return `#/debrief/${route.key}`;
  return route.screen === 'round' ? '#/round' : '#/';
}
