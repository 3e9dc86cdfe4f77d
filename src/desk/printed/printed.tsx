import '../css/printed.css';
import { useEffect, useState } from 'preact/hooks';
import type { TraineeSheet, TrainerSheet } from '../../share/sheets.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { toldOf } from '../engine.ts';
import { CautionSign } from '../icons.tsx';
import type { SheetOf } from '../protocol.ts';
import { ScreenTitle } from '../screen.tsx';
import { TraineePaper } from './trainee.tsx';
import { TrainerPaper } from './trainer.tsx';

interface Props {
  readonly callId: string;
  readonly who: SheetOf;
}

/** A call on one sheet of paper. The trainer's stays shut until one says that one wants to see it. */
export function SheetScreen({ callId, who }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const [open, setOpen] = useState(who === 'trainee');
  const [sheet, setSheet] = useState<TraineeSheet | TrainerSheet | null>(null);
  useEffect(() => {
    if (!open) return;
    load().catch((error: unknown) => {
      desk.fail(toldOf(error));
      desk.go({ screen: 'start' });
    });
    async function load() {
      await desk.session.leave();
      const brought = await desk.store.broughtBy(callId);
      const asked = { kind: 'sheet', callId, who, ...(brought && { brought: brought.text }) } as const;
      setSheet((await desk.engine.ask(asked)).sheet);
    }
  }, [desk, callId, who, open]);
  return (
    <div class="printed">
      <Bar subtitle={t(`sheet.${who}`)} />
      <main>
        {open ? (
          <>
            <div class="buttons not-on-paper">
              <button type="button" class="primary" disabled={sheet === null} onClick={() => print()}>
                {t('sheet.print')}
              </button>
              <a class="secondary" href="#/">
                {t('brought.back')}
              </a>
            </div>
            {sheet === null ? <p class="waiting">{t('brought.opening')}</p> : <Paper who={who} sheet={sheet} />}
          </>
        ) : (
          <section class="caution-card sheet-warning">
            <CautionSign />
            <ScreenTitle>{t('sheet.warning')}</ScreenTitle>
            <p>{t('sheet.warning.text')}</p>
            <div class="buttons">
              <button type="button" class="primary" data-reveal onClick={() => setOpen(true)}>
                {t('sheet.reveal')}
              </button>
              <a class="secondary" href="#/">
                {t('brought.back')}
              </a>
            </div>
          </section>
        )}
      </main>
    </div>
  );
}

function Paper({ who, sheet }: { who: SheetOf; sheet: TraineeSheet | TrainerSheet }) {
  return (
    <article class={`paper ${who}`}>
      {isTrainers(sheet) ? <TrainerPaper sheet={sheet} /> : <TraineePaper sheet={sheet} />}
    </article>
  );
}

function isTrainers(sheet: TraineeSheet | TrainerSheet): sheet is TrainerSheet {
  return 'causes' in sheet;
}
