/** What was done in a call, kept so that it can be done again to the same bits. */
import { type Message, quantity, say } from '../service/index.ts';
import { digest, type Json } from '../unit/index.ts';
import { ENGINE_VERSION } from './engine-version.ts';
import type { CallRecord, Progress } from './schema.ts';
import type { CallSession } from './session.ts';
import type { Prepared } from './setup.ts';

export { ENGINE_VERSION };

/** The engine that something kept names. */
export function engineOf(kept: unknown): string | undefined {
  const { engine } = (kept ?? {}) as { readonly engine?: unknown };
  return typeof engine === 'string' && /^\d{1,6}$/.test(engine) ? engine : undefined;
}

/** How the engine that something kept names stands to this one; undefined where it names none. */
export function engineAge(kept: unknown): 'older' | 'same' | 'newer' | undefined {
  const engine = engineOf(kept);
  if (engine === undefined) return undefined;
  if (engine === ENGINE_VERSION) return 'same';
  return Number(engine) > Number(ENGINE_VERSION) ? 'newer' : 'older';
}

/** Digest of all that a call begins with: its file, and the state of a property that lived before it. */
export function callHash({ call, lived }: Prepared): string {
  if (!lived) return digest(call as unknown as Json);
  const { from, setup, causes, wearing } = lived;
  return digest({ call, from, faults: setup.faults, causes, wearing } as unknown as Json);
}

export function actionsOf(session: CallSession): CallRecord['actions'] {
  return session.log.map(({ at_ms, do: id, fill, state }) => ({
    at_ms,
    do: id,
    ...(fill
      ? { fill: Object.fromEntries(Object.entries(fill).map(([k, v]) => [k, typeof v === 'string' ? v : [...v]])) }
      : {}),
    state,
  }));
}

/** A call in progress, to be kept and taken up again. */
export function makeProgress(session: CallSession): Progress {
  return {
    engine: ENGINE_VERSION,
    callHash: callHash(session.prepared),
    actions: actionsOf(session),
    now_ms: session.now_ms,
  };
}

/** Does actions again, each at its instant. Returns the first difference, if there is one. */
export function replayActions(session: CallSession, actions: CallRecord['actions']): Message | undefined {
  for (const [i, logged] of actions.entries()) {
    const number = quantity('count', i + 1);
    session.advance(logged.at_ms);
    if (session.now_ms !== logged.at_ms) return say('replay.instant', { n: number, id: logged.do });
    const why = session.act({ id: logged.do, ...(logged.fill ? { fill: logged.fill } : {}) });
    if (why) return say('replay.refused', { n: number, id: logged.do, why });
    if (session.log.at(-1)?.state !== logged.state) return say('replay.state', { n: number, id: logged.do });
  }
  return undefined;
}
