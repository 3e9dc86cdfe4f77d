import type { LocalText } from '../../service/message.ts';
import type { TraineeSheet } from '../../share/sheets.ts';
import { formatMoment } from '../../words/calendar.ts';
import { useDesk } from '../desk.ts';
import type { SheetOf } from '../protocol.ts';
import { ScreenTitle } from '../screen.tsx';

/** The head of both sheets: what call it is, and what its card on the list says. */
export function Heading({ sheet, who }: { sheet: TraineeSheet; who: SheetOf }) {
  const desk = useDesk();
  const { t, local } = desk;
  return (
    <header>
      <p class="label">
        {t(`sheet.${who}`)} · {local(sheet.lot)}
      </p>
      <ScreenTitle>{local(sheet.title)}</ScreenTitle>
      <p>
        <strong>
          {t(sheet.kind === 'visit' ? 'sheet.visited' : 'sheet.rings', {
            when: formatMoment(desk.words.value, sheet.rings),
          })}
        </strong>
        <br />
        {local(sheet.summary)}
      </p>
      {who === 'trainee' && <p class="name">{t('sheet.name')}</p>}
    </header>
  );
}

export function Said({ said }: { said: readonly LocalText[] }) {
  const { local } = useDesk();
  return (
    <>
      {said.map((line) => (
        <blockquote key={line.en}>{local(line)}</blockquote>
      ))}
    </>
  );
}
