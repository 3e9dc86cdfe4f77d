import '../css/elsewhere.css';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { ScreenTitle } from '../screen.tsx';
import type { ElsewhereProps } from './later.tsx';

/** Says that another tab has it, and offers to take it over. */
export function Elsewhere({ how, onTake }: ElsewhereProps) {
  const { t } = useDesk();
  return (
    <div>
      <Bar />
      <main class="elsewhere">
        <section class="card">
          <ScreenTitle key={how}>{t(`elsewhere.${how}`)}</ScreenTitle>
          <p>{t(`elsewhere.${how}.text`)}</p>
          <div class="buttons">
            <button type="button" class="primary" onClick={onTake}>
              {t(`elsewhere.${how}.take`)}
            </button>
            <a class="secondary" href="#/">
              {t('elsewhere.back')}
            </a>
          </div>
        </section>
      </main>
    </div>
  );
}
