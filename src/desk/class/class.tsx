import '../css/class.css';
import { useEffect, useMemo } from 'preact/hooks';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { ScreenTitle } from '../screen.tsx';
import { useLater } from '../use-later.ts';
import { Choose } from './choose.tsx';
import { answersIn, held, sheetOf } from './held.ts';
import { Missed } from './missed.tsx';
import { OneByOne } from './one-by-one.tsx';
import { RecordDebrief } from './record-debrief.tsx';
import { NotCounted } from './refused.tsx';
import { Sheet } from './sheet.tsx';
import { useMarking } from './use-marking.ts';
import { useRegret } from './use-regret.ts';

/** A class on one sheet, from the records that its people handed in; or the debrief of one of them. */
export function ClassScreen({ record }: { record: number | undefined }) {
  const desk = useDesk();
  const { t } = desk;
  const marking = useMarking(desk);
  const regret = useRegret(desk, marking.running === null);
  useEffect(() => {
    void desk.session.leave().then(desk.refreshShelves);
  }, [desk]);
  const records = held.value;
  const course = desk.calls.value;
  const sheet = useMemo(
    () =>
      sheetOf(
        records,
        course.map(({ id }) => id),
      ),
    [records, course],
  );
  const answers = useMemo(() => answersIn(records), [records]);
  const questions = useLater(answers.length > 0, () => import('./questions.tsx'), 'quiz');
  const opened = record === undefined ? undefined : records[record];
  if (opened?.marked.state === 'counts') {
    const { who, text, marked } = opened;
    return <RecordDebrief key={record} who={who} text={text} deeds={marked.deeds} />;
  }
  return (
    <div class="class-screen">
      <Bar subtitle={t('title.class')} />
      <main>
        <section class="class-head">
          <ScreenTitle>{t('title.class')}</ScreenTitle>
          <p>{t('class.lead')}</p>
          <Choose marking={marking} sheet={sheet} />
          <p class="small">{t('class.names')}</p>
          <p class="small">{t('class.stays')}</p>
        </section>
        {sheet.rows.length > 0 && <Sheet sheet={sheet} regret={regret} />}
        {(sheet.counted > 0 || sheet.refused.length > 0) && (
          <div class="class-cards">
            {sheet.counted > 0 && <Missed sheet={sheet} />}
            {sheet.refused.length > 0 && <NotCounted refused={sheet.refused} />}
          </div>
        )}
        {questions && <questions.Questions answers={answers} />}
        {records.length > 0 && <OneByOne />}
      </main>
    </div>
  );
}
