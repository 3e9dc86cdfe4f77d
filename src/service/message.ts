/**
 * What the core says: message ids with values, never sentences. `words` turns them into English or Spanish and
 * into US customary or SI units, so that a record, a test and a screen all hold the same facts.
 */

/** What a bare number is, in SI (or the trade's own unit where SI has none). */
export type Measure =
  | 'pressure_kPa'
  | 'length_m'
  | 'volume_m3'
  | 'waterFlow_Ls'
  | 'airFlow_Lmin'
  | 'wind_ms'
  | 'rise_mh'
  | 'concentration_mgL'
  | 'current_A'
  | 'voltage_V'
  | 'resistance_ohm'
  | 'resistance_Mohm'
  | 'capacitance_uF'
  | 'temperature_C'
  | 'duration_min'
  | 'duration_h'
  | 'money_usd'
  | 'count'
  | 'share'
  | 'clock_s';

/** A number as it was read: `resolution` is the instrument's smallest step, in the same measure. */
export interface Quantity {
  readonly measure: Measure;
  readonly value: number;
  readonly resolution?: number;
}

/** A text that comes from a data file, whole in every language. It is always shown as text, never as markup. */
export interface LocalText {
  readonly en: string;
  readonly es: string;
}

export type MessageValue = Quantity | LocalText | Message | string | number;

/** A message id of `words`, with what goes into its gaps. A bare string value is shown as it stands. */
export interface Message {
  readonly id: string;
  readonly values?: Readonly<Record<string, MessageValue>>;
}

/** Shorthand used all over the core: `say('reading.pressure', { p: quantity('pressure_kPa', 6.1, 0.5) })`. */
export function say(id: string, values?: Readonly<Record<string, MessageValue>>): Message {
  return values === undefined ? { id } : { id, values };
}

/** A quantity with its measure and, where an instrument made it, its resolution. */
export function quantity(measure: Measure, value: number, resolution?: number): Quantity {
  return resolution === undefined ? { measure, value } : { measure, value, resolution };
}
