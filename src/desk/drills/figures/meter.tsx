import { Fragment } from 'preact';
import type { MeterFigure } from '../../../quiz/figure.ts';
import { readingWords } from '../../../quiz/figure-words.ts';
import type { Message } from '../../../service/message.ts';
import { useDesk } from '../../desk.ts';

/** The meter over the way that its probes are on: screws from the line down to neutral, and what lies between them. */
export function MeterView({ figure }: { figure: MeterFigure }) {
  const { t, speak } = useDesk();
  const said = speak.value;
  const { chain, red, black, notes } = figure;
  return (
    <figure class="fig fig-meter">
      <div class="meter-box">
        <p class="meter-lcd">
          <span class="vh">{said(readOut(figure))}</span>
          <span aria-hidden="true">{digits(figure, said)}</span>
        </p>
        <p class="meter-mode">{figure.mode === 'volts' ? 'V ~' : 'Ω'}</p>
        <ul class="meter-notes">
          {notes.map((note) => (
            <li key={note.id}>{said(note)}</li>
          ))}
        </ul>
      </div>
      <ol class="chain">
        {chain.nodes.map((node, i) => {
          const part = chain.parts[i];
          const between = i >= red && i < black;
          return (
            <Fragment key={node.id}>
              <li class={i >= red && i <= black ? 'node between' : 'node'}>
                <span class="screw" aria-hidden="true" />
                <span class="node-name">{said(node.name)}</span>
                {i === red && <Probe mark="red" />}
                {i === black && <Probe mark="black" />}
              </li>
              {part && (
                <li class={between ? 'part between' : 'part'}>
                  <span class="wire" aria-hidden="true" />
                  <span class="part-box">{said(part)}</span>
                </li>
              )}
            </Fragment>
          );
        })}
      </ol>
      <p class="vh">{t('drills.fig.probe', { red: nameAt(figure, red), black: nameAt(figure, black) })}</p>
    </figure>
  );
}

function nameAt({ chain }: MeterFigure, i: number): Message {
  return chain.nodes[i]?.name ?? { id: 'meter.none' };
}

/** What the display says, as a sentence. */
function readOut(figure: MeterFigure): Message {
  if (figure.reading === undefined) return { id: 'drills.fig.asked' };
  return { id: 'drills.fig.shows', values: { r: readingWords(figure.mode, figure.reading) } };
}

function digits(figure: MeterFigure, said: (message: Message) => string): string {
  if (figure.reading === undefined) return '?';
  return figure.reading === null ? 'OL' : said(readingWords(figure.mode, figure.reading));
}

/** A probe's letter in its own shape, round for red and square for black: never colour alone. */
function Probe({ mark }: { mark: 'red' | 'black' }) {
  const { t } = useDesk();
  return <span class={`probe-mark ${mark}`}>{t(`meter.${mark}.mark`)}</span>;
}
