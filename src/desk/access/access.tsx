import '../css/access.css';
import type { Key } from '../../words/words.ts';
import { Bar } from '../bar.tsx';
import { useDesk } from '../desk.ts';
import { ScreenTitle } from '../screen.tsx';

/** What is said under each heading. The same, criterion by criterion, is in `docs/accessibility.md`. */
const PARTS: readonly { readonly title: Key; readonly lines: readonly Key[] }[] = [
  { title: 'access.keys', lines: ['access.keys.tab', 'access.keys.skip', 'access.keys.arrows', 'access.keys.space'] },
  { title: 'access.reader', lines: ['access.reader.words', 'access.reader.news', 'access.reader.lists'] },
  { title: 'access.eyes', lines: ['access.eyes.zoom', 'access.eyes.colour', 'access.eyes.drag'] },
  { title: 'access.ears', lines: ['access.ears.captions'] },
  { title: 'access.calm', lines: ['access.calm.still', 'access.calm.flash', 'access.calm.time'] },
  {
    title: 'access.not',
    lines: ['access.not.people', 'access.not.picture', 'access.not.canvas', 'access.not.pointing', 'access.not.hum'],
  },
  { title: 'access.tell', lines: ['access.tell.how'] },
];

/** The statement on access: what was aimed at, what works how, what does not yet, and how to tell. */
export function AccessScreen() {
  const { t } = useDesk();
  return (
    <>
      <Bar />
      <main class="access">
        <ScreenTitle>{t('access.title')}</ScreenTitle>
        <p class="access-aim">{t('access.aim')}</p>
        <div class="access-parts">
          {PARTS.map(({ title, lines }) => (
            <section key={title} class="card" aria-labelledby={title}>
              <h2 id={title}>{t(title)}</h2>
              <ul>
                {lines.map((line) => (
                  <li key={line}>{t(line)}</li>
                ))}
              </ul>
            </section>
          ))}
        </div>
        <a class="secondary" href="#/">
          {t('title.start')}
        </a>
      </main>
    </>
  );
}
