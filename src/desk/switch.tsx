import { Icon } from './icons.tsx';

interface SwitchProps {
  readonly label: string;
  readonly on: boolean;
  readonly onFlip: (on: boolean) => void;
}

/** Something that is on or off. */
export function Switch({ label, on, onFlip }: SwitchProps) {
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
