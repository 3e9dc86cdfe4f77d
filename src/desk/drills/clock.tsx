import { useDesk } from '../desk.ts';

/** Minutes and seconds left; not read out as they pass. */
export function TimeLeft({ left_s }: { left_s: number }) {
  const { t } = useDesk();
  const clock = `${Math.floor(left_s / 60)}:${String(left_s % 60).padStart(2, '0')}`;
  return (
    <p class="time-left" role="timer" aria-live="off">
      <span class="vh">{t('drills.left')}: </span>
      {clock}
    </p>
  );
}
