import { useState } from 'preact/hooks';
import { lengthAt, valueAt } from '../../build/draft.ts';
import { newFault } from '../../build/new-draft.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { dayBefore } from './days.ts';
import { StepTitle } from './fields.tsx';
import type { OfferedFault } from './protocol.ts';
import { type BuildState, useBuild } from './state.ts';

/** What is dragged from the list to the picture. */
export const DRAGGED = 'application/x-underlawn-fault';

const MOST_FAULTS = 8;

/** Puts a fault into the draft, a day before the report, and has it worked on. */
export function addFault(build: BuildState, { fault, part }: OfferedFault): void {
  const place = lengthAt(build.draft, 'faults');
  if (place >= MOST_FAULTS) return;
  build.set(`faults[${place}]`, newFault(fault, part, dayBefore(String(build.draft.start))));
  build.chooseFault(place);
}

/** The faults that the unit can have, by family: to be dropped on the picture, or added by their buttons. */
export function FaultList() {
  const desk = useDesk();
  const { t, speak } = desk;
  const build = useBuild();
  const [sought, setSought] = useState('');
  const [open, setOpen] = useState<string | null>(null);
  const offered = build.looked?.offered.faults ?? [];
  const named = offered.map((fault) => ({ fault, name: speak.value(fault.name) }));
  const like = sought.trim().toLowerCase();
  const { part } = build;
  const found = named
    .filter(({ fault }) => part === null || fault.place === part)
    .filter(({ name }) => name.toLowerCase().includes(like));
  const narrow = like !== '' || part !== null;
  const families = [...new Set(offered.map(({ family }) => family))];
  return (
    <section class="card fault-list" aria-labelledby="step-title">
      <div class="fault-list-head">
        <StepTitle id="build.step.faults" />
        <span class="small">{t('build.faults.of', { n: found.length })}</span>
      </div>
      <label class="vh" for="seek-fault">
        {t('build.faults.seek')}
      </label>
      <input
        id="seek-fault"
        type="search"
        placeholder={t('build.faults.seek')}
        value={sought}
        onInput={(event) => setSought(event.currentTarget.value)}
      />
      {part !== null && (
        <button type="button" class="at-part" onClick={() => build.choosePart(null)}>
          {speak.value({ id: `part.${part}` })} <Icon name="cross" />
          <span class="vh">{t('build.faults.all')}</span>
        </button>
      )}
      <ul class="families">
        {families.map((family) => {
          const these = found.filter(({ fault }) => fault.family === family);
          const shown = narrow ? these.length > 0 : open === family;
          if (narrow && these.length === 0) return null;
          return (
            <li key={family}>
              <button
                type="button"
                class="family"
                aria-expanded={shown}
                onClick={() => setOpen(open === family ? null : family)}
              >
                <span>{t(`family.${family}` as 'family.air')}</span>
                <span class="small">{these.length}</span>
              </button>
              {shown && (
                <ul class="family-faults">
                  {these.map(({ fault, name }) => (
                    <FaultOffer key={fault.key} fault={fault} name={name} />
                  ))}
                </ul>
              )}
            </li>
          );
        })}
      </ul>
      <p class="small">{t('build.faults.how')}</p>
    </section>
  );
}

function FaultOffer({ fault, name }: { fault: OfferedFault; name: string }) {
  const build = useBuild();
  const { t } = useDesk();
  const on = placesOf(build, fault);
  return (
    <li>
      <button
        type="button"
        class="fault-offer"
        draggable
        onDragStart={(event) => {
          event.dataTransfer?.setData(DRAGGED, fault.key);
          build.drag(fault);
        }}
        onDragEnd={() => build.drag(null)}
        onClick={() => addFault(build, fault)}
      >
        <span>{name}</span>
        {on.length > 0 ? (
          <span class="small">{t('build.faults.on', { n: on.map((place) => place + 1).join(', ') })}</span>
        ) : (
          <Icon name="plus" />
        )}
      </button>
    </li>
  );
}

function placesOf({ draft }: BuildState, { fault, part }: OfferedFault): readonly number[] {
  const all = Array.from({ length: lengthAt(draft, 'faults') }, (_, i) => i);
  return all.filter(
    (i) => valueAt(draft, `faults[${i}].fault`) === fault && valueAt(draft, `faults[${i}].part`) === part,
  );
}
