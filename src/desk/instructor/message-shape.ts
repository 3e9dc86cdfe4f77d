/** The shape of what the core says, and of texts in both languages. */
import type { LocalText, Message, MessageValue, Quantity } from '../../service/message.ts';
import { fields, finite, oneOf, type Shape, text } from '../shape.ts';

/** Messages stand within messages, but never as deep as this. */
const DEEPEST = 12;

export const localText: Shape<LocalText> = fields({ en: text, es: text });

export const measure = oneOf(
  ...([
    'pressure_kPa',
    'length_m',
    'volume_m3',
    'waterFlow_Ls',
    'airFlow_Lmin',
    'concentration_mgL',
    'wind_ms',
  ] as const),
  ...(['current_A', 'voltage_V', 'resistance_ohm', 'resistance_Mohm', 'capacitance_uF', 'temperature_C'] as const),
  ...(['rise_mh', 'duration_min', 'duration_h', 'money_usd', 'count', 'share', 'clock_s'] as const),
);

export const quantity: Shape<Quantity> = fields({ measure, value: finite }, { resolution: finite });

export const message: Shape<Message> = (value): value is Message => isMessage(value, DEEPEST);

function isMessage(value: unknown, deep: number): value is Message {
  if (typeof value !== 'object' || value === null || deep === 0) return false;
  const { id, values } = value as Record<string, unknown>;
  if (!text(id)) return false;
  if (values === undefined) return true;
  return typeof values === 'object' && values !== null && Object.values(values).every((one) => isValue(one, deep - 1));
}

function isValue(value: unknown, deep: number): value is MessageValue {
  return text(value) || finite(value) || quantity(value) || localText(value) || isMessage(value, deep);
}
