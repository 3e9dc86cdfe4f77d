import { useState } from 'preact/hooks';
import type { ActionGroup, ActionView, CallView, PartView } from '../../calls/view.ts';
import type { Message } from '../../service/message.ts';
import { useDesk } from '../desk.ts';
import { CautionSign, Icon, type IconName } from '../icons.tsx';
import { Said } from '../screen.tsx';
import { ActionButton } from './action-button.tsx';
import { ActionForm } from './action-form.tsx';
import { PartStateWords } from './part-state-words.tsx';
import { flowNumber, partShown } from './parts.ts';

const GROUPS: readonly { readonly id: ActionGroup; readonly icon: IconName }[] = [
  { id: 'look', icon: 'look' },
  { id: 'measure', icon: 'measure' },
  { id: 'operate', icon: 'operate' },
  { id: 'mend', icon: 'mend' },
  { id: 'say', icon: 'say' },
];

/** The part at hand: what is known of it, what bites there, and what can be done, each with its time. */
export function Hand({ view }: { view: CallView }) {
  const desk = useDesk();
  const part = partShown(view.parts, desk.session.part.value);
  if (part === undefined) return null;
  return <HandCard key={part.id} view={view} part={part} />;
}

function HandCard({ view, part }: { readonly view: CallView; readonly part: PartView }) {
  const desk = useDesk();
  const { asking } = desk.session;
  const [picked, setPicked] = useState<ActionGroup | null>(null);
  const groups = GROUPS.map((group) => ({
    ...group,
    actions: part.actions.filter((one) => one.group === group.id),
  })).filter((group) => group.actions.length > 0);
  const narrow = groups.find((one) => one.id === picked) ?? groups.find(hasOpen) ?? groups[0];
  const open = asking.value;
  const fresh = open === null ? undefined : part.actions.find((one) => actionKey(one) === actionKey(open));
  const number = flowNumber(part.id);
  const reason = oneReason(part.actions);
  return (
    <section class="card hand" aria-labelledby="hand-title">
      <header>
        <h2 id="hand-title">
          {number !== null && <span class="number">{number}</span>}
          <Said message={part.name} />
        </h2>
        {part.id !== 'phone' && (
          <span class="small">
            <PartStateWords view={view} part={part.id} />
            {part.here && ` · ${desk.t('call.youAreHere')}`}
          </span>
        )}
        {part.id === 'phone' && part.here && <span class="small">{desk.t('call.youAreHere')}</span>}
      </header>
      <p class="about">
        <Said message={part.about} />
      </p>
      {part.known.length > 0 && (
        <ul class="known" aria-label={desk.t('call.known')}>
          {[...part.known].reverse().map((one, index) => (
            <li key={`${one.id}${index}`}>
              <Said message={one} />
            </li>
          ))}
        </ul>
      )}
      <Cautions part={part} />
      {fresh === undefined ? (
        <>
          {reason !== undefined && (
            <p class="why-all">
              <Icon name="lock" />
              <Said message={reason} />
            </p>
          )}
          <nav class="group-tabs" aria-label={desk.t('call.groups')}>
            {groups.map((group) => (
              <button
                key={group.id}
                type="button"
                data-group={group.id}
                aria-current={group.id === narrow?.id}
                onClick={() => setPicked(group.id)}
              >
                {desk.t(`group.${group.id}`)}
              </button>
            ))}
          </nav>
          <div class={groups.length > 1 ? 'groups columns' : 'groups'} data-group={narrow?.id}>
            {groups.map((group) => (
              <section
                key={group.id}
                class={group.id === narrow?.id ? 'group front' : 'group'}
                data-group={group.id}
                aria-labelledby={`group-${group.id}`}
              >
                <h3 id={`group-${group.id}`}>
                  <Icon name={group.icon} />
                  {desk.t(`group.${group.id}`)}
                </h3>
                <ul>
                  {group.actions.map((one) => (
                    <ActionButton key={actionKey(one)} action={one} whySaid={reason !== undefined} />
                  ))}
                </ul>
              </section>
            ))}
          </div>
          {groups.length === 0 && <p class="small">{desk.t('call.nothingHere')}</p>}
        </>
      ) : (
        <ActionForm key={actionKey(fresh)} view={fresh} onDone={() => (asking.value = null)} />
      )}
    </section>
  );
}

function Cautions({ part }: { part: PartView }) {
  const { t } = useDesk();
  if (part.cautions.length === 0) return null;
  return (
    <div class="cautions">
      <CautionSign />
      <div>
        <span class="vh">{t('call.caution')}</span>
        {part.cautions.map((one) => (
          <p key={one.id}>
            <Said message={one} />
          </p>
        ))}
      </div>
    </div>
  );
}

/** Where nothing at all can be done here, and always for the same reason, that reason is said once. */
function oneReason(actions: readonly ActionView[]): Message | undefined {
  const reasons = new Set(actions.map((one) => (one.available ? '' : JSON.stringify(one.why ?? null))));
  return actions.length > 1 && reasons.size === 1 ? actions[0]?.why : undefined;
}

function hasOpen(group: { readonly actions: readonly ActionView[] }): boolean {
  return group.actions.some((one) => one.available);
}

function actionKey(view: ActionView): string {
  return `${view.action.id} ${JSON.stringify(view.action.fill ?? {})}`;
}
