import type { CallRecord } from '../../calls/schema.ts';
import type { SavedCall } from '../protocol.ts';

/** A record as a call in progress that has come to its end; `brought`: the file of its call, where that did not ship. */
export function asSaved({ call, mode, engine, callHash, actions, end_ms }: CallRecord, brought?: string): SavedCall {
  return {
    version: 1,
    callId: call,
    mode,
    record: { engine, callHash, actions, now_ms: end_ms },
    now_ms: end_ms,
    title: { en: call, es: call },
    ...(brought === undefined ? {} : { brought }),
  };
}
