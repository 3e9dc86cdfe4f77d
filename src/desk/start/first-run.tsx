import { useDesk } from '../desk.ts';

/** How a call goes, in three lines, until it is put away. */
export function FirstRun() {
  const desk = useDesk();
  const { t } = desk;
  if (desk.settings.value.howRead) return null;
  const putAway = () => {
    void desk.change({ howRead: true });
    document.querySelector<HTMLElement>('h1')?.focus();
  };
  return (
    <section class="card first-run" aria-labelledby="how-title">
      <h2 id="how-title">{t('start.how.title')}</h2>
      <ol>
        {([1, 2, 3] as const).map((n) => (
          <li key={n}>{t(`start.how.${n}`)}</li>
        ))}
      </ol>
      <button type="button" class="secondary" data-how-read onClick={putAway}>
        {t('start.how.got')}
      </button>
    </section>
  );
}
