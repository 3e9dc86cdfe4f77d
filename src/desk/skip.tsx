import { useDesk } from './desk.ts';

/** The first thing that Tab comes to: past the bar, on a call to the part at hand. No link, whose address would be another screen's. */
export function SkipLink() {
  const desk = useDesk();
  const skip = () => {
    const to = document.getElementById('hand-title') ?? document.querySelector<HTMLElement>('main h1');
    if (to === null) return;
    to.tabIndex = -1;
    to.focus();
  };
  return (
    <button type="button" class="skip" onClick={skip}>
      {desk.t('bar.skip')}
    </button>
  );
}
