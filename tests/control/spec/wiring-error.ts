/** An error an electrician might make in a panel. It must be caught by a path of the specification. */
import type { Panel } from '../../../src/control/index.ts';
import type { PanelName } from '../panels.ts';
import type { Spoiling } from './spoiled.ts';

export interface WiringError {
  readonly error: string;
  readonly unit: PanelName;
  /** The promise it breaks. */
  readonly breaks: string;
  /** The walk that shows it, where the sound one cannot. */
  readonly fault?: string;
  /** Hidden so deep that covering every transition once may pass it by: the walk through all pairs must find it. */
  readonly deep?: true;
  readonly spoil: (right: Panel) => Spoiling;
}
