import { useEffect, useState } from 'preact/hooks';
import type { Rung } from '../../calls/rungs.ts';
import { Bar } from '../bar.tsx';
import { ClockBar } from '../clock-bar.tsx';
import { useDesk } from '../desk.ts';
import { OpenElsewhere } from '../elsewhere/later.tsx';
import { useTrainerHere } from '../instructor/key.tsx';
import { ScreenTitle } from '../screen.tsx';
import { useLater } from '../use-later.ts';
import { AlarmBand } from './alarm-band.tsx';
import { EndDialog } from './end-dialog.tsx';
import { Hand } from './hand.tsx';
import { useCallKeys } from './keys.ts';
import { NewsStrip } from './news-strip.tsx';
import { Notebook } from './notebook.tsx';
import { PartStrip } from './part-strip.tsx';
import { Sheet } from './sheet.tsx';
import { useSounds } from './sounds.ts';
import { Stage } from './stage.tsx';
import { Suspects } from './suspects.tsx';
import { type Tab, Tabs } from './tabs.tsx';

/** A call being worked on. */
export function CallScreen({ callId, rung }: { callId: string; rung: Rung }) {
  const desk = useDesk();
  const { session } = desk;
  const [tab, setTab] = useState<Tab>('hand');
  const begin = async (over = false) => {
    await session.take(callId, rung, over);
    if (session.view.value === null && session.elsewhere.value === null) desk.go({ screen: 'start' });
  };
  useEffect(() => {
    void begin();
  }, [desk, session, callId, rung]);
  useCallKeys(session);
  const captions = useSounds(desk);

  const view = session.view.value;
  const coach = useLater(view?.mode === 'coached', () => import('./coach/coach.tsx'), 'debrief') ?? null;
  const trainer = useTrainerHere(view);
  const elsewhere = session.elsewhere.value;
  if (elsewhere !== null) return <OpenElsewhere how={elsewhere} onTake={() => void begin(true)} />;
  if (view === null) {
    return (
      <div class="call">
        <Bar />
        <main class="waiting">
          <ScreenTitle>{desk.t('call.opening')}</ScreenTitle>
        </main>
      </div>
    );
  }
  const title = desk.local(view.title);
  return (
    <div class={session.closeUp.value === 'yard' ? 'call' : 'call close-up'}>
      <Bar subtitle={title} more={trainer.key}>
        <ClockBar />
      </Bar>
      {trainer.here}
      <main>
        <ScreenTitle hidden>{title}</ScreenTitle>
        <AlarmBand view={view} />
        <Stage view={view} captions={captions} />
        <PartStrip view={view} onGo={() => setTab('hand')} />
        <NewsStrip view={view} />
        {coach !== null && <coach.CoachWord wanted={tab !== 'coach'} />}
        <Tabs tab={tab} onTab={setTab} notes={view.notebook.length}>
          {coach !== null && <coach.CoachTab current={tab === 'coach'} onPick={() => setTab('coach')} />}
        </Tabs>
        <div class={coach === null ? 'bench' : 'bench coached'} data-tab={tab}>
          <Sheet view={view} />
          <Hand view={view} />
          <div class="notes-column">
            <Notebook view={view} />
            <Suspects view={view} />
          </div>
          {coach !== null && <coach.CoachCard onGo={() => setTab('hand')} />}
        </div>
      </main>
      {coach !== null && <coach.CoachDialogs view={view} />}
      <EndDialog view={view} />
    </div>
  );
}
