import { Fragment } from 'preact';
import type { LineFigure, LineReading } from '../../../quiz/figure.ts';
import { quantity } from '../../../service/message.ts';
import { useDesk } from '../../desk.ts';

/** The air line from top to bottom: its parts with their weights, the points between them, what has been read. */
export function LineView({ figure }: { figure: LineFigure }) {
  const { t } = useDesk();
  const { parts, readings } = figure;
  return (
    <figure class="fig fig-line">
      <p class="line-end">
        <CompressorSign /> {t('drills.fig.compressor')}
      </p>
      <ol>
        {parts.map((part, i) => (
          <Fragment key={part.id}>
            <li class={part.left ? 'line-part' : 'line-part ruled-out'}>
              <span class="pipe" aria-hidden="true" />
              <span class="part-name">{t('drill.option', { label: { id: `drill.part.${part.id}` } })}</span>
              <span class="part-weight">
                <span class="pips" aria-hidden="true">
                  {'●'.repeat(part.weight)}
                </span>{' '}
                {part.left ? t('drills.fig.weight', { n: part.weight }) : t('drills.fig.ruledOut')}
              </span>
            </li>
            {i < parts.length - 1 && (
              <Point
                n={i + 1}
                left={part.left || parts[i + 1]?.left === true}
                reading={readings.find(({ point }) => point === i + 1)}
              />
            )}
          </Fragment>
        ))}
      </ol>
      <p class="line-end">
        <DiffuserSign /> {t('drills.fig.diffusers')}
      </p>
      <figcaption class="small">{t('drills.fig.weights')}</figcaption>
    </figure>
  );
}

interface PointProps {
  readonly n: number;
  /** Whether the leak may still be beside it. */
  readonly left: boolean;
  readonly reading: LineReading | undefined;
}

function Point({ n, left, reading }: PointProps) {
  const { t } = useDesk();
  return (
    <li class={`line-point ${reading ? 'read' : ''} ${left ? '' : 'ruled-out'}`}>
      <span class="pipe" aria-hidden="true" />
      <span class="point-mark">{n}</span>
      {reading && (
        <span class="point-read">
          {t(reading.leak === 'beyond' ? 'drills.fig.shutHolds' : 'drills.fig.shutFalls', {
            n,
            p: quantity('pressure_kPa', reading.pressure_kPa, 0.5),
          })}
        </span>
      )}
    </li>
  );
}

function CompressorSign() {
  return (
    <svg class="end-sign" viewBox="0 0 40 26" aria-hidden="true" focusable="false">
      <path class="housing" d="M3 5h34v18H3z" />
      <path class="line" d="M8 10h10M8 14h10M8 18h10" />
      <circle class="dial" cx="28" cy="14" r="5" />
    </svg>
  );
}

function DiffuserSign() {
  return (
    <svg class="end-sign" viewBox="0 0 40 26" aria-hidden="true" focusable="false">
      <path class="housing" d="M5 18h30v5H5z" />
      <path class="line" d="M12 12a2 2 0 1 0 .1 0M20 6a2.4 2.4 0 1 0 .1 0M28 11a2 2 0 1 0 .1 0" />
    </svg>
  );
}
