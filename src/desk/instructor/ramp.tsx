import { useDesk } from '../desk.ts';

/** A fault grows or fades over three days at most: no call lasts longer. */
const LONGEST_h = 72;

export interface Ramp {
  readonly over: boolean;
  /** As typed. */
  readonly hours: string;
}

interface Props {
  readonly name: string;
  readonly ramp: Ramp;
  readonly onRamp: (ramp: Ramp) => void;
}

/** At once, or over so many hours. */
export function RampField({ name, ramp, onRamp }: Props) {
  const { t } = useDesk();
  return (
    <fieldset class="ramp">
      <legend>{t(name === 'in' ? 'instructor.ramp.in' : 'instructor.ramp.out')}</legend>
      <label class="option">
        <input
          type="radio"
          name={`ramp-${name}`}
          checked={!ramp.over}
          onChange={() => onRamp({ ...ramp, over: false })}
        />
        {t('instructor.ramp.once')}
      </label>
      <label class="option">
        <input
          type="radio"
          name={`ramp-${name}`}
          value="over"
          checked={ramp.over}
          onChange={() => onRamp({ ...ramp, over: true })}
        />
        {t('instructor.ramp.over')}
      </label>
      <label class="hours">
        <input
          type="number"
          data-hours={name}
          min={0.5}
          max={LONGEST_h}
          step={0.5}
          disabled={!ramp.over}
          value={ramp.hours}
          onInput={(event) => onRamp({ ...ramp, hours: event.currentTarget.value })}
        />
        {t('instructor.ramp.hours')}
      </label>
    </fieldset>
  );
}

/** Hours of a ramp as an action carries them. */
export function hoursOf({ over, hours }: Ramp): string {
  const asked = Number(hours);
  return over && Number.isFinite(asked) ? String(Math.min(LONGEST_h, Math.max(0, asked))) : '0';
}
