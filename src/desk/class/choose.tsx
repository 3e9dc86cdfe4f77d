import { useEffect, useRef } from 'preact/hooks';
import { classCsv } from '../../records/class-csv.ts';
import { useDesk } from '../desk.ts';
import { handOverText } from '../hand-over.ts';
import { Icon } from '../icons.tsx';
import { Said } from '../screen.tsx';
import type { HeldSheet } from './held.ts';
import { HowFar, told } from './how-far.tsx';
import { regretOf } from './reviews.ts';
import type { Marking } from './use-marking.ts';
import { whyOf } from './why.ts';

/** Spreadsheets take a text for UTF-8 where it begins with this. */
const UTF8_MARK = '\uFEFF';

interface Props {
  readonly marking: Marking;
  readonly sheet: HeldSheet;
}

/** Where records are chosen, how far their replay is, and what can be done with the sheet then. */
export function Choose({ marking, sheet }: Props) {
  const desk = useDesk();
  const { t } = desk;
  const idle = marking.running === null;
  const csv = () => classCsv(sheet, { why: (one) => whyOf(desk, one), regret: regretOf });
  const clear = () => {
    marking.clear();
    toTitle();
  };
  return (
    <>
      <div class="buttons">
        <Choice marking={marking} folder={false} />
        <Choice marking={marking} folder />
        {sheet.all.length > 0 && (
          <>
            <button
              type="button"
              class="secondary"
              data-csv
              aria-disabled={!idle}
              onClick={() => idle && handOverText('class.csv', UTF8_MARK + csv(), 'text/csv')}
            >
              <Icon name="save" /> {t('class.csv')}
            </button>
            <button type="button" class="secondary" aria-disabled={!idle} onClick={() => idle && clear()}>
              {t('class.clear')}
            </button>
          </>
        )}
      </div>
      <Running marking={marking} />
    </>
  );
}

function Choice({ marking, folder }: { readonly marking: Marking; readonly folder: boolean }) {
  const { t } = useDesk();
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    // An attribute that the elements' types do not know.
    if (input.current !== null) input.current.webkitdirectory = folder;
  }, [folder]);
  return (
    <>
      <button
        type="button"
        class={folder ? 'secondary' : 'primary'}
        aria-disabled={marking.running !== null}
        onClick={() => marking.running === null && input.current?.click()}
      >
        {!folder && <Icon name="sheet" />} {t(folder ? 'class.folder' : 'class.files')}
      </button>
      <input
        ref={input}
        type="file"
        multiple
        hidden
        accept={folder ? undefined : '.json,application/json'}
        data-choose={folder ? 'folder' : 'files'}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same files can be chosen again.
          currentTarget.value = '';
          if (files.length > 0) void marking.begin(files);
        }}
      />
    </>
  );
}

/** A button that goes away leaves the focus to the title. */
function toTitle(): void {
  document.querySelector<HTMLElement>('h1')?.focus();
}

function Running({ marking: { running, said, cancel } }: { readonly marking: Marking }) {
  const { t } = useDesk();
  const counts = running === 'reading' ? null : running;
  return (
    <div class="class-running">
      {counts !== null && (
        <HowFar
          {...counts}
          says={t('class.progress', { n: counts.done, m: counts.of })}
          act={t('class.cancel')}
          onAct={() => {
            cancel();
            toTitle();
          }}
        />
      )}
      <p role="status" class={said ? 'strong' : 'vh'}>
        {running === 'reading' && t('class.reading')}
        {counts !== null && t('class.progress', { n: told(counts), m: counts.of })}
        {said !== null && <Said message={said} />}
      </p>
    </div>
  );
}
