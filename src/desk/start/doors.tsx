import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { dayOf } from '../day.ts';
import { type Desk, useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { suggestedCall } from '../next-call.ts';
import { writeRoute } from '../routes.ts';
import { wordsOf } from './call-card.tsx';
import { headingOf } from './heading-of.ts';

type DoorId = 'apprentice' | 'trainer' | 'course' | 'household' | 'instructor';

const ART: Readonly<Record<DoorId, string>> = {
  apprentice: new URL('../art/door-van.svg', import.meta.url).href,
  trainer: new URL('../art/door-workshop.svg', import.meta.url).href,
  course: new URL('../art/door-school.svg', import.meta.url).href,
  household: new URL('../art/door-house.svg', import.meta.url).href,
  instructor: new URL('../art/door-lookout.svg', import.meta.url).href,
};

/** The five doors of the street: one for each kind of person, with how things stand behind it. */
export function Doors() {
  const desk = useDesk();
  const { t } = desk;
  const { drafts, due } = useKept(desk);
  return (
    <nav class="street" aria-label={t('start.doors')}>
      <ul class="doors">
        <Door id="apprentice" state={courseState(desk)}>
          <NextCall />
          <p class="door-ways">
            <Jump to="calls-title">{t('start.all')}</Jump>
            <Jump to="visits-title">{t('start.visits')}</Jump>
            <a href="#/round">{t('start.round')}</a>
          </p>
        </Door>
        <Door id="trainer" state={drafts === undefined ? '' : t('door.trainer.state', { n: drafts })}>
          <Go to="#/build">{t('door.trainer.go')}</Go>
          <p class="door-ways">
            <a href="#/class">{t('title.class')}</a>
            <a href="#/take">{t('start.bring')}</a>
          </p>
        </Door>
        <Door id="course" state={due === undefined ? '' : t('door.course.state', { n: due })}>
          <Go to="#/quiz">{t('door.course.go')}</Go>
          <p class="door-ways">
            <a href="#/drills">{t('title.drills')}</a>
            <a href="#/faults">{t('title.faults')}</a>
          </p>
        </Door>
        <Door id="household" state={t('door.household.state')}>
          <Go to="#/home">{t('door.household.go')}</Go>
        </Door>
        <Door id="instructor" state={t('door.instructor.state')}>
          <Go to="#/instructor">{t('door.instructor.go')}</Go>
        </Door>
      </ul>
    </nav>
  );
}

function Door({ id, state, children }: { id: DoorId; state: string; children: ComponentChildren }) {
  const { t } = useDesk();
  return (
    <li class={`door door-${id}`}>
      <img class="door-art" src={ART[id]} alt="" width="216" height="176" />
      <h2>{t(`door.${id}`)}</h2>
      <p class="door-lead">{t(`door.${id}.lead`)}</p>
      <p class="door-state">{state}</p>
      {children}
    </li>
  );
}

/** The call that the course has next, taken as the course has it. */
function NextCall() {
  const desk = useDesk();
  const next = suggestedCall(desk);
  const card = desk.calls.value.find(({ id }) => id === next?.callId);
  if (next === undefined || card === undefined) return null;
  return (
    <>
      <p class="door-next">
        <span class="label">{desk.t('start.next')}</span> {desk.local(card.title)}
      </p>
      <Go to={writeRoute({ screen: 'call', ...next })} first>
        {desk.t(wordsOf(next.rung))}
        <span class="vh">: {desk.local(card.title)}</span>
      </Go>
    </>
  );
}

function Go({ to, first = false, children }: { to: string; first?: boolean; children: ComponentChildren }) {
  return (
    <a class={`${first ? 'primary' : 'secondary'} door-go`} href={to}>
      {children} <Icon name="arrow" />
    </a>
  );
}

/** Leads to a heading further down the page. */
function Jump({ to, children }: { to: string; children: ComponentChildren }) {
  return (
    <button type="button" class="link" onClick={() => headingOf(to)}>
      {children}
    </button>
  );
}

function courseState({ calls, finished, t }: Desk): string {
  const passed = new Set(finished.value.flatMap((one) => (one.passed ? [one.callId] : [])));
  const visits = calls.value.filter(({ kind }) => kind === 'visit');
  const made = visits.filter(({ id }) => finished.value.some(({ callId }) => callId === id));
  const all = calls.value.filter(({ kind }) => kind !== 'visit');
  return t('door.apprentice.state', {
    n: all.filter(({ id }) => passed.has(id)).length,
    all: all.length,
    v: made.length,
  });
}

/** What lies on two shelves that only the doors look at: drafts of calls, and questions that are due by tonight. */
function useKept({ store, wallClock }: Desk): { readonly drafts?: number; readonly due?: number } {
  const [kept, setKept] = useState({});
  useEffect(() => {
    const today = dayOf(wallClock()).number;
    void Promise.all([store.drafts(), store.cards()]).then(([drafts, cards]) =>
      setKept({ drafts: drafts.length, due: cards.filter(({ due }) => dayOf(due).number <= today).length }),
    );
  }, [store, wallClock]);
  return kept;
}
