/** Checks what one window hears from another: nothing that comes over the channel is believed. */
import type { HoodView } from '../../calls/hood.ts';
import { RUNGS } from '../../calls/rungs.ts';
import { TEACH } from '../../calls/teach-ids.ts';
import type { CalendarClock } from '../../calls/view.ts';
import { WHY_IDS } from '../../scene/why-ids.ts';
import type { OpenCall, Truth } from '../protocol.ts';
import { anything, fields, finite, flag, oneOf, type Shape, text, textUpTo } from '../shape.ts';
import { Progress, SavedCall } from '../stored.ts';
import { LINE_VERSION } from './channel.ts';
import type { Answer, Ask, InstructorSays, Said, Told, TraineeSays, TraineeWindow } from './line.ts';
import { localText, measure, message, quantity } from './message-shape.ts';
import { scene } from './scene-shape.ts';
import { listOf, orNull, pair, valuesOf } from './shaped.ts';

const LONGEST_FILL = 200;
const name = textUpTo(40);

const clock: Shape<CalendarClock> = fields({
  year: finite,
  month: finite,
  day: finite,
  weekday: finite,
  secondOfDay: finite,
});

const curveId = oneOf(
  ...(['pumpTank_m', 'airPressure_kPa', 'oxygen_mgL', 'residual_mgL'] as const),
  ...(['blanket_m', 'trashSludge_m', 'trashScum_m'] as const),
);
const mode = oneOf('coached', 'practice', 'graded');
const at = { at_ms: finite, label: message } as const;

const hood: Shape<HoodView> = fields({
  callId: text,
  title: localText,
  mode,
  now_ms: finite,
  clock,
  from_ms: finite,
  startOfDay_ms: finite,
  stage: text as Shape<HoodView['stage']>,
  ended: flag,
  frozen: flag,
  inRound: flag,
  deeds: listOf(fields({ ...at, by: oneOf('trainee', 'trainer'), readings: listOf(message), undone: flag })),
  blocks: listOf(
    fields(
      {
        from_ms: finite,
        to_ms: finite,
        label: message,
        kind: oneOf('phone', 'drive', 'look', 'measure', 'operate', 'mend', 'say', 'wait'),
      },
      { flag: text },
    ),
  ),
  events: listOf(fields({ ...at, tone: oneOf('plain', 'bad', 'good') })),
  ticked: listOf(message),
  stated: listOf(message),
  notebook: listOf(fields({ at_ms: finite, where: message, what: message, reading: message })),
  faults: listOf(
    fields({
      key: text,
      name: message,
      severity: finite,
      full: finite,
      way: oneOf('grows', 'stands', 'fades'),
      droppedIn: flag,
      removable: flag,
    }),
  ),
  moments: listOf(fields({ place: finite, name: text, at_ms: finite })),
  curves: listOf(
    fields({
      id: curveId,
      label: message,
      measure,
      points: listOf(pair(finite, finite)),
      marks: listOf(fields({ value: finite, label: message })),
    }),
  ),
  readings: listOf(fields({ label: message, value: quantity })),
  balance: fields({ water: finite, cod: finite, nitrogen: finite, chlorine: finite }),
});

const whys = listOf(
  fields({
    id: oneOf(...WHY_IDS),
    value: quantity,
    parts: listOf(fields({ label: message, value: quantity, minus: flag })),
    how: message,
  }),
);
const truth: Shape<Truth> = fields({ scene, whys });
const openCall: Shape<OpenCall> = (value): value is OpenCall => hood(value) && truth(value);

const told: Shape<Told> = fields({ call: orNull(openCall), rate: oneOf(0, 1, 10, 60, 3600), shown: flag });

const traineeWindow: Shape<TraineeWindow> = fields({
  call: orNull(fields({ callId: text, title: localText, stage: text, clock })),
  shown: flag,
});

const family = oneOf(
  ...(['air', 'power', 'floats', 'pump', 'field', 'solids'] as const),
  ...(['disinfection', 'house', 'ground', 'use', 'kit'] as const),
);

/** Of messages of several kinds, each has a shape by its kind. */
function byKind<T extends { readonly kind: string }>(
  shapes: {
    readonly [K in T['kind']]: Shape<Extract<T, { kind: K }>>;
  },
): Shape<T> {
  return (value): value is T => {
    const kind = (value as { kind?: unknown } | null)?.kind;
    return typeof kind === 'string' && Object.hasOwn(shapes, kind) && shapes[kind as T['kind']](value);
  };
}

const action = fields({ id: oneOf(...Object.values(TEACH)), fill: valuesOf(textUpTo(LONGEST_FILL)) });

export const ask: Shape<Ask> = byKind<Ask>({
  teach: fields({ kind: oneOf('teach'), callId: text, action }),
  'next-change': fields({ kind: oneOf('next-change'), callId: text }),
  scene: fields({ kind: oneOf('scene'), callId: text, at_ms: finite }),
  droppable: fields({ kind: oneOf('droppable'), callId: text }),
  moment: fields({ kind: oneOf('moment'), callId: text, place: finite }),
  saved: fields({ kind: oneOf('saved'), callId: text }),
  begin: fields({ kind: oneOf('begin'), callId: text, rung: oneOf(...RUNGS) }),
  'take-up': fields({ kind: oneOf('take-up'), from: Progress }),
});

export const answer: Shape<Answer> = byKind<Answer>({
  done: fields({ kind: oneOf('done') }),
  refused: fields({ kind: oneOf('refused'), why: message }),
  scene: fields({ kind: oneOf('scene'), scene, whys }),
  droppable: fields({
    kind: oneOf('droppable'),
    faults: listOf(fields({ key: text, name: message, family, severity: finite, ramp_h: finite })),
  }),
  moment: fields({ kind: oneOf('moment'), kept: Progress }),
  saved: fields({ kind: oneOf('saved'), saved: SavedCall }),
});

const instructorSays: Shape<InstructorSays> = byKind<InstructorSays>({
  roll: fields({ kind: oneOf('roll') }),
  watch: fields({ kind: oneOf('watch'), to: name }),
  unwatch: fields({ kind: oneOf('unwatch'), to: name }),
  ask: fields({ kind: oneOf('ask'), to: name, n: finite, ask }),
});

const traineeSays: Shape<TraineeSays> = byKind<TraineeSays>({
  hello: fields({ kind: oneOf('hello') }),
  here: fields({ kind: oneOf('here'), window: traineeWindow }),
  gone: fields({ kind: oneOf('gone') }),
  told: fields({ kind: oneOf('told'), told }),
  answer: fields({ kind: oneOf('answer'), to: name, n: finite, answer }),
});

const head = fields({ version: anything, from: anything });

/** What was heard: `other` from a page of another version; undefined where it is for somebody else, or makes no sense. */
export type Heard<T> = Said<T> | 'other' | undefined;

function heard<T>(shape: Shape<T>, value: unknown): Heard<T> {
  if (!head(value)) return undefined;
  if (value.version !== LINE_VERSION) return 'other';
  return shape(value) && name(value.from) ? (value as unknown as Said<T>) : undefined;
}

export const heardOfInstructor = (value: unknown): Heard<InstructorSays> => heard(instructorSays, value);
export const heardOfTrainee = (value: unknown): Heard<TraineeSays> => heard(traineeSays, value);
