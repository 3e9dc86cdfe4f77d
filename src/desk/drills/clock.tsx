import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';

/** Switches the clock off and on again, before a drill and in its middle. */
export function ClockSwitch({ label, on, onFlip }: { label: string; on: boolean; onFlip: (on: boolean) => void }) {
  return (
    <label class="switch">
      <span>{label}</span>
      <input
        type="checkbox"
        role="switch"
        aria-checked={on}
        checked={on}
        onChange={(event) => onFlip(event.currentTarget.checked)}
      />
      <span class="knob" aria-hidden="true">
        <Icon name="check" />
      </span>
    </label>
  );
}

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
