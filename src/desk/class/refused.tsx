import type { Refused } from '../../records/marked.ts';
import { useDesk } from '../desk.ts';
import { Said } from '../screen.tsx';
import { titleOf } from './names.tsx';

/** Problems of one file beyond these say little more. */
const MOST = 4;

/** What does not count, each with its reason; what another version made stands apart. */
export function NotCounted({ refused }: { readonly refused: readonly Refused[] }) {
  const { t } = useDesk();
  const wrong = refused.filter(({ otherEngine }) => !otherEngine);
  const other = refused.filter(({ otherEngine }) => otherEngine);
  return (
    <section class="card" aria-labelledby="class-refused-title">
      <h2 id="class-refused-title">{t('class.refused')}</h2>
      <List refused={wrong} />
      {other.length > 0 && (
        <>
          <h3>{t('class.refused.other')}</h3>
          <p class="small">{t('class.refused.other.about')}</p>
          <List refused={other} />
        </>
      )}
    </section>
  );
}

function List({ refused }: { readonly refused: readonly Refused[] }) {
  const desk = useDesk();
  return (
    <ul class="class-refused">
      {refused.map(({ who, call, why, problems }, index) => (
        <li key={index}>
          <strong>{who}</strong>
          {call !== undefined && <span class="small">{titleOf(desk, call)}</span>}
          {why !== undefined && (
            <p>
              <Said message={why} />
            </p>
          )}
          {/* They name a file's keys, which are English, and are English themselves. */}
          {problems.slice(0, MOST).map(({ path, message, mend }) => (
            <p key={`${path} ${message}`} lang="en">
              {path !== '' && <code>{path}</code>} {message}; {mend}
            </p>
          ))}
          {problems.length > MOST && <p>{desk.t('class.refused.more', { n: problems.length - MOST })}</p>}
        </li>
      ))}
    </ul>
  );
}
