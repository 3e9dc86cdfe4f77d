/** Makes the screen's value of a call from the session and the Scene that `scene/known` made of it. */
import { faultsOf } from '../faults/index.ts';
import {
  ACTIONS,
  type ActionDef,
  hindrance,
  type LiveFacts,
  type Message,
  PLACES,
  type Place,
  perceive,
  say,
} from '../service/index.ts';
import { calendarDay, readout, weekday } from '../unit/index.ts';
import { actionIn } from './allowed.ts';
import { spent } from './cost.ts';
import { placeWords } from './places.ts';
import { PHONE_STEPS, phaseOf, stageOf, stepState, stepsOf } from './procedure.ts';
import type { CallSession } from './session.ts';
import { faultName, stateCause } from './session-actions.ts';
import { soundsOf } from './sounds.ts';
import { goneBackTo_ms, isFrozen } from './teaching.ts';
import type {
  ActionView,
  CalendarClock,
  CallView,
  ControlId,
  NotebookEntry,
  PartView,
  StageId,
  StageView,
  SuspectView,
} from './view.ts';
import { rowViews } from './visit/row-views.ts';

/** Calendar and time of day at an engine instant. */
export function clockAt(session: CallSession, t_s: number): CalendarClock {
  const number = session.prepared.firstDay + Math.floor(t_s / 86_400);
  return { ...calendarDay(number), weekday: weekday(number), secondOfDay: ((t_s % 86_400) + 86_400) % 86_400 };
}

/** What the person perceives without doing anything, at the session's present instant. */
export function liveFacts(session: CallSession): LiveFacts {
  const { unit, person } = session.service;
  return perceive(person, unit, readout(unit, session.now_ms / 1000));
}

export function viewOf(session: CallSession, scene: CallView['scene']): CallView {
  const { call } = session.prepared;
  const { person } = session.service;
  const live = liveFacts(session);
  const steps = stepsOf(call.kind);
  const { minutes, money_usd } = spent(session);
  const still = standstill(session);
  return {
    callId: call.id,
    title: call.title,
    mode: session.mode,
    now_ms: session.now_ms,
    clock: clockAt(session, session.now_ms / 1000),
    stage: stageOf(session.procedure, steps),
    stages: stagesOf(session),
    said: call.report.said,
    scene,
    parts: PLACES.map((place) => partView(session, place, still)),
    notebook: notebookOf(session),
    suspects: suspectsOf(session),
    sounds: soundsOf(person, live),
    lamp: live.lamp ?? person.facts.lamp?.value ?? null,
    buzzer: live.buzzer ?? person.facts.buzzer?.value ?? null,
    changes: session.changes,
    minutesSpent: minutes,
    moneySpent_usd: money_usd,
    ...breachView(session),
    ended: session.ended,
    ...trainerView(session),
    ...(call.kind === 'visit' ? { rows: rowViews(session) } : {}),
  };
}

/** What a trainee sees of a trainer's hand. */
function trainerView({ log }: CallSession): Pick<CallView, 'frozen' | 'backTo_ms'> {
  const backTo_ms = goneBackTo_ms(log);
  return { ...(isFrozen(log) ? { frozen: true } : {}), ...(backTo_ms === undefined ? {} : { backTo_ms }) };
}

/** Why nothing at all can be done now. */
function standstill({ ended, log }: CallSession): Message | undefined {
  if (ended) return say('why.call-over');
  return isFrozen(log) ? say('why.frozen') : undefined;
}

function breachView({ breaches }: CallSession): Pick<CallView, 'breach' | 'breaches'> {
  const last = breaches.at(-1);
  return { ...(last ? { breach: say(`breach.${last.id}`) } : {}), breaches: breaches.length };
}

function stagesOf(session: CallSession): StageView[] {
  const steps = stepsOf(session.prepared.call.kind);
  const now = stageOf(session.procedure, steps);
  const onSite = phaseOf(session.procedure) === 'site' || session.drove;
  const stages = steps.map((step): StageView => {
    const state = stepState(session.procedure, step);
    const done = state === 'done' || state === 'late';
    return { id: step, state: step === now ? 'now' : done ? 'done' : state === 'skipped' ? 'skipped' : 'todo' };
  });
  const drive: StageView = { id: 'drive', state: now === 'drive' ? 'now' : onSite ? 'done' : 'todo' };
  const phone = stages.filter((s) => (PHONE_STEPS as readonly StageId[]).includes(s.id));
  const site = stages.filter((s) => !(PHONE_STEPS as readonly StageId[]).includes(s.id));
  return [...phone, drive, ...site];
}

function partView(session: CallSession, place: Place, still: Message | undefined): PartView {
  const { person } = session.service;
  const { spec } = session.prepared;
  const actions = ACTIONS.flatMap((a) => (a.place === place ? (actionIn(session.prepared, a.id) ?? []) : []));
  const all = place === 'house' ? [...actions, stateCause(person.notebook, spec)] : actions;
  const { cautions, ...words } = placeWords(place, spec);
  return {
    id: place,
    ...words,
    cautions: [...cautions, ...all.flatMap(({ caution }) => caution ?? [])],
    here: person.place === place,
    actions: all.map((def) => actionView(session, def, still)),
    known: session.service.person.notebook
      .filter((n) => n.place === place)
      .slice(-3)
      .map((n) => say('note.line', { what: n.what, reading: n.reading })),
  };
}

function actionView(session: CallSession, def: ActionDef, still: Message | undefined): ActionView {
  const why = still ?? hindrance(session.service, def);
  return {
    action: { id: def.id },
    part: def.place,
    group: def.group,
    label: def.label,
    minutes: def.minutes,
    cost_usd: def.cost_usd ?? 0,
    available: why === undefined,
    ...(why ? { why } : {}),
    ...(def.form ? { form: def.form.map((f) => ({ ...f, label: say(`field.${f.id}`) })) } : {}),
    ...(def.control ? { control: def.control as ControlId } : {}),
  };
}

function notebookOf(session: CallSession): NotebookEntry[] {
  const notes = session.service.person.notebook.map(
    ({ id, at_s, place, what, reading, remark }): NotebookEntry => ({
      id,
      at_s,
      part: place,
      where: placeWords(place, session.prepared.spec).name,
      what,
      reading,
      ...(remark ? { remark } : {}),
    }),
  );
  return notes.sort((a, b) => a.at_s - b.at_s);
}

function suspectsOf(session: CallSession): SuspectView[] {
  return faultsOf(session.prepared.spec)
    .filter((f) => f.family !== 'use')
    .map((f) => ({ fault: f.key, label: faultName(f.key), ticked: session.suspects.has(f.key) }));
}
