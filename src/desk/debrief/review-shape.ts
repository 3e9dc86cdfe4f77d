import type { StepReviewView } from '../../calls/lesson.ts';
import type { TogetherView } from '../../calls/together.ts';
import type { Message, MessageValue } from '../../service/message.ts';
import { fields, finite, flag, oneOf, type Shape, text } from '../shape.ts';

/** A message, with messages in it or none. */
const Said: Shape<Message> = (value): value is Message => fields({ id: text }, { values: anyOf(Value) })(value);

const Value: Shape<MessageValue> = (value): value is MessageValue =>
  text(value) || finite(value) || Quantity(value) || LocalText(value) || Said(value);

const Quantity = fields({ measure: text, value: finite });
const LocalText = fields({ en: text, es: text });

/** An object whose every value has a shape. */
function anyOf<T>(shape: Shape<T>): Shape<Readonly<Record<string, T>>> {
  return (value): value is Readonly<Record<string, T>> =>
    typeof value === 'object' && value !== null && Object.values(value).every(shape);
}

function listOf<T>(shape: Shape<T>): Shape<readonly T[]> {
  return (value): value is readonly T[] => Array.isArray(value) && value.every(shape);
}

const Cause = fields({ name: Said, before: finite, after: finite, ticked: flag });

const Steps: Shape<readonly StepReviewView[]> = listOf(
  fields(
    {
      step: finite,
      at_ms: finite,
      weighed: flag,
      label: Said,
      seen: listOf(Said),
      lesson: listOf(Said),
      causes: listOf(Cause),
      brought_bits: finite,
    },
    {
      expected_bits: finite,
      regret_min: finite,
      best: Said,
      finding: oneOf('told-nothing', 'too-early', 'against-evidence', 'best'),
    },
  ),
) as Shape<readonly StepReviewView[]>;

const Together: Shape<TogetherView> = fields({
  of: finite,
  readings: listOf(fields({ seen: Said, left: finite })),
  end: Said,
});

/** All that an expert says of a finished call. */
export interface Review {
  readonly steps: readonly StepReviewView[];
  readonly together: TogetherView;
}

/** A review as it was kept beside a finished call. */
export const isReview: Shape<Review> = fields({ steps: Steps, together: Together });
