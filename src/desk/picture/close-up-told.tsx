import { useEffect, useState } from 'preact/hooks';
import type { ViewName, Yard } from '../../yard/index.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';

/** The figures of a close-up in words, for who does not see them. */
export function CloseUpTold({ yard, view }: { yard: Yard; view: ViewName }) {
  const { t } = useDesk();
  const [rows, setRows] = useState(yard.told());
  // Told anew with every drawing.
  useEffect(() => yard.onHotspots(() => setRows(yard.told())), [yard]);
  if (view === 'yard' || rows.length === 0) return null;
  return (
    // biome-ignore lint/a11y/useSemanticElements: no form, a picture's figures
    <div class="vh" role="group" aria-label={t(`plate.title.${view}`)}>
      <dl>
        {rows.map(([name, value], i) => (
          <div key={`${name.id}${i}`}>
            <dt>
              <Said message={name} />
            </dt>
            <dd>
              <Said message={value} />
            </dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
