interface Props {
  readonly done: number;
  readonly of: number;
  readonly says: string;
  /** What the button beside it does. */
  readonly act: string;
  readonly onAct: () => void;
}

/** How far something is that takes a while, and a button to stop it or to have it go on. */
export function HowFar({ done, of, says, act, onAct }: Props) {
  return (
    <div class="class-progress">
      <progress value={done} max={of} aria-label={says} />
      <span aria-hidden="true">{says}</span>
      <button type="button" class="secondary" onClick={onAct}>
        {act}
      </button>
    </div>
  );
}

/** Steps in which a live region tells how far it is: every record would be too much to listen to. */
const TOLD_STEPS = 5;

export function told({ done, of }: Pick<Props, 'done' | 'of'>): number {
  const step = Math.ceil(of / TOLD_STEPS);
  return Math.floor(done / step) * step;
}
