import { lengthAt, shownAt, textAt, valueAt } from '../../build/draft.ts';
import { newAccount } from '../../build/new-draft.ts';
import { ACCOUNT } from '../../calls/account.ts';
import { useDesk } from '../desk.ts';
import { Icon } from '../icons.tsx';
import { offeredAt, presenceAt } from './fault-at.ts';
import { InstantField, Problems, SliderField, TextField } from './fields.tsx';
import { NumberField } from './number-field.tsx';
import type { OfferedFault } from './protocol.ts';
import { useBuild } from './state.ts';

const DAY_ms = 86_400_000;

/** The fault that is worked on: since when, how bad, how it comes, what shows it. */
export function FaultCard() {
  const desk = useDesk();
  const { t, speak } = desk;
  const build = useBuild();
  const n = lengthAt(build.draft, 'faults');
  if (n === 0) {
    return (
      <section class="card fault-card none">
        <h3>{t('build.fault.none')}</h3>
        <p class="small">{t('build.fault.none.help')}</p>
        <Problems path="faults" />
      </section>
    );
  }
  const place = Math.min(build.fault, n - 1);
  const at = `faults[${place}]`;
  const offered = offeredAt(build, place);
  const takeOut = () => {
    build.set(at, undefined);
    build.chooseFault(Math.max(0, place - 1));
  };
  return (
    <section class="card fault-card" aria-labelledby="fault-title">
      <div class="fault-head">
        <span class="pin">{place + 1}</span>
        <h3 id="fault-title">{offered ? speak.value(offered.name) : shownAt(build.draft, `${at}.fault`)}</h3>
      </div>
      {n > 1 && <Others n={n} place={place} />}
      <Problems path={at} />
      <Problems path={`${at}.fault`} />
      <Problems path={`${at}.part`} />
      <InstantField path={`${at}.onset`} label={t('build.onset')} note={daysBefore(build.draft, at, t)} />
      <SliderField
        path={`${at}.severity`}
        label={t('build.severity')}
        otherwise={offered?.severity ?? 1}
        tell={(value) => value.toFixed(2)}
      />
      <NumberField
        path={`${at}.ramp_h`}
        label={t('build.ramp')}
        measure="duration_h"
        least={0}
        otherwise={offered?.ramp_h ?? 0}
      />
      <PresenceField place={place} offered={offered} />
      {offered && <Signs offered={offered} />}
      <Account at={at} />
      <button type="button" class="secondary" onClick={takeOut}>
        <Icon name="cross" /> {t('build.fault.out')}
      </button>
    </section>
  );
}

function Others({ n, place }: { n: number; place: number }) {
  const { t, speak } = useDesk();
  const build = useBuild();
  const names = Array.from({ length: n }, (_, i) => offeredAt(build, i));
  return (
    <ul class="fault-others" aria-label={t('build.fault.others')}>
      {names.map((offered, i) => (
        <li key={i}>
          <button type="button" class="pin-button" aria-pressed={i === place} onClick={() => build.chooseFault(i)}>
            {i + 1}
            <span class="vh"> {offered ? speak.value(offered.name) : ''}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function daysBefore(draft: Parameters<typeof shownAt>[0], at: string, t: ReturnType<typeof useDesk>['t']): string {
  const [start, onset] = [shownAt(draft, 'start'), shownAt(draft, `${at}.onset`)].map((one) => Date.parse(`${one}Z`));
  if (start === undefined || onset === undefined || Number.isNaN(start - onset)) return '';
  return t('build.onset.before', { d: ((start - onset) / DAY_ms).toFixed(1) });
}

type Way = 'always' | 'once' | 'spells';

function PresenceField({ place, offered }: { place: number; offered: OfferedFault | undefined }) {
  const { t } = useDesk();
  const build = useBuild();
  const at = `faults[${place}]`;
  const presence = presenceAt(build, place);
  const way: Way = typeof presence === 'object' ? 'once' : presence;
  const set = (next: Way) => {
    if (next === 'always') build.set(`${at}.present`, 'always');
    else build.set(`${at}.present`, next === 'once' ? { for_h: 6 } : { on_h: 4, off_h: 8 });
  };
  return (
    <fieldset class="field">
      <legend>{t('build.present')}</legend>
      <div class="ways">
        {(['always', 'spells', 'once'] as const).map((one) => (
          <label key={one} class="way">
            <input type="radio" name={`${at}.present`} checked={way === one} onChange={() => set(one)} />
            <span>{t(`build.present.${one}`)}</span>
          </label>
        ))}
      </div>
      {way === 'once' && (
        <NumberField path={`${at}.present.for_h`} label={t('build.present.for')} measure="duration_h" least={0} />
      )}
      {way === 'spells' && (
        <div class="two">
          <NumberField
            path={`${at}.present.on_h`}
            label={t('build.present.on')}
            measure="duration_h"
            least={0}
            otherwise={offered?.spells?.on_h ?? 4}
          />
          <NumberField
            path={`${at}.present.off_h`}
            label={t('build.present.off')}
            measure="duration_h"
            least={0}
            otherwise={offered?.spells?.off_h ?? 8}
          />
        </div>
      )}
      <Problems path={`${at}.present`} />
    </fieldset>
  );
}

/** What shows it, what mends it, and what only hides it, as the catalogue has it. */
function Signs({ offered }: { offered: OfferedFault }) {
  const { t, speak } = useDesk();
  const rows = [
    ['shown', offered.shownBy],
    ['mended', offered.mendedBy],
    ['hidden', offered.hiddenBy],
  ] as const;
  return (
    <dl class="signs">
      {rows
        .filter(([, all]) => all.length > 0)
        .map(([id, all]) => (
          <div key={id}>
            <dt>{t(`build.signs.${id}`)}</dt>
            <dd>{all.map((one) => speak.value(one)).join('; ')}</dd>
          </div>
        ))}
    </dl>
  );
}

/** The six questions of whoever knows the fault: they become hints, and stand in the debrief. */
function Account({ at }: { at: string }) {
  const { t } = useDesk();
  const build = useBuild();
  const has = valueAt(build.draft, `${at}.account`) !== undefined;
  const told = ACCOUNT.filter(
    (one) =>
      textAt(build.draft, `${at}.account.${one}`, 'en') !== '' &&
      textAt(build.draft, `${at}.account.${one}`, 'es') !== '',
  ).length;
  return (
    <details class="account-fields">
      <summary>{t('build.account', { n: told, of: ACCOUNT.length })}</summary>
      <p class="small">{t('build.account.help')}</p>
      {has ? (
        <>
          {ACCOUNT.map((one) => (
            <TextField key={one} path={`${at}.account.${one}`} label={t(`build.account.${one}`)} rows={2} />
          ))}
          <button type="button" class="secondary" onClick={() => build.set(`${at}.account`, undefined)}>
            <Icon name="cross" /> {t('build.account.out')}
          </button>
        </>
      ) : (
        <button type="button" class="secondary" onClick={() => build.set(`${at}.account`, newAccount())}>
          <Icon name="plus" /> {t('build.account.add')}
        </button>
      )}
    </details>
  );
}
