/** What is packed for a course platform: calls, how they are taken, and the files of the page that shows them. */
import { callHash } from '../../calls/progress.ts';
import type { Prepared } from '../../calls/setup.ts';
import type { LocalText } from '../../service/message.ts';
import { UNDERLAWN, uuid5 } from '../uuid.ts';
import type { PackedMode } from './platforms.ts';

/** One call within a package. */
export interface PackedActivity {
  readonly call: string;
  readonly title: LocalText;
  readonly summary: LocalText;
  /** Score that passes, of 100. */
  readonly pass: number;
  /** The publisher's identifier: that of the call as it is, so that a changed call is another activity. */
  readonly uuid: string;
  /** The page that opens it. */
  readonly entry: string;
}

export interface Course {
  readonly title: LocalText;
  readonly mode: PackedMode;
  readonly activities: readonly PackedActivity[];
  /** All files of the page, in the order of their names, entry pages and the platform's own file not among them. */
  readonly files: readonly string[];
}

export function activityOf(prepared: Prepared): PackedActivity {
  const { id, title, summary, pass } = prepared.call;
  const uuid = uuid5(UNDERLAWN, `call ${id} ${callHash(prepared)}`);
  return { call: id, title, summary, pass, uuid, entry: `call-${id}.html` };
}

/** Named after what is in it and how it is taken. */
export function courseUuid({ activities, mode }: Course): string {
  return uuid5(UNDERLAWN, `course ${mode} ${activities.map(({ uuid }) => uuid).join(' ')}`);
}

/** Of one call its title; of several, how many they are. */
export function courseTitle(activities: readonly Pick<PackedActivity, 'title'>[]): LocalText {
  const [first] = activities;
  if (first !== undefined && activities.length === 1) return first.title;
  return { en: `Underlawn: ${activities.length} calls`, es: `Underlawn: ${activities.length} avisos` };
}
