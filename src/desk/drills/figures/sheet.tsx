import type { SheetFigure } from '../../../quiz/figure.ts';
import { figureWords } from '../../../quiz/figure-words.ts';
import { useDesk } from '../../desk.ts';

/** What is known, as a sheet of paper has it. */
export function SheetView({ figure }: { figure: SheetFigure }) {
  const { t, speak } = useDesk();
  return (
    <figure class="fig fig-sheet">
      <ul class="fig-facts" aria-label={t('drills.known')}>
        {figureWords(figure).map((row, i) => (
          <li key={i}>{speak.value(row)}</li>
        ))}
      </ul>
    </figure>
  );
}
