import type { LeverStand, PanelFigure } from '../../../quiz/figure.ts';
import { panelWords, SELECTOR_WORD } from '../../../quiz/figure-words.ts';
import { quantity } from '../../../service/message.ts';
import { formatClock } from '../../../words/measure.ts';
import type { Key } from '../../../words/words.ts';
import { useDesk } from '../../desk.ts';

const LEVERS = [
  ['alarmBreaker', 'yard.panel.alarm'],
  ['compressorBreaker', 'yard.panel.compressor'],
  ['pumpBreaker', 'yard.panel.pump'],
] as const;
const HANDLE: Readonly<Record<LeverStand, number>> = { on: 4, tripped: 36, off: 68 };
const LEVER_WORD = { on: 'yard.panel.on', tripped: 'yard.panel.trip', off: 'yard.panel.off' } as const;
const LAMP_NAMES = { lamp: 'yard.panel.alarm', airLamp: 'yard.panel.air', waterLamp: 'yard.panel.water' } as const;
/** Where the knob points, degrees from straight up. */
const KNOB = { hand: -50, off: 0, auto: 50 } as const;

/** The open panel as one stands before it, and what is known from elsewhere. */
export function PanelView({ figure }: { figure: PanelFigure }) {
  const { t, speak } = useDesk();
  const said = speak.value;
  return (
    <figure class="fig fig-panel">
      <svg viewBox="0 0 360 400" aria-hidden="true" focusable="false">
        <Lamps figure={figure} />
        <rect class="cabinet" x="10" y="62" width="340" height="330" rx="8" />
        <rect class="plate" x="20" y="72" width="320" height="134" rx="5" />
        {LEVERS.map(([id, name], i) => (
          <Lever key={id} x={figure.timer ? 34 + i * 68 : 52 + i * 96} name={t(name)} stand={figure.levers[id]} />
        ))}
        {figure.timer && <Timer timer={figure.timer} />}
        <Gauge text={said(pressure(figure))} />
        <Selector stand={figure.selector} />
        <Counters figure={figure} />
        <Buttons figure={figure} />
      </svg>
      <ul class="fig-facts" aria-label={t('drills.textTwin')}>
        {panelWords(figure).map((fact) => (
          <li key={said(fact)} class="vh">
            {said(fact)}
          </li>
        ))}
        {figure.notes.map((note) => (
          <li key={note.id}>{said(note)}</li>
        ))}
      </ul>
    </figure>
  );
}

const pressure = ({ gauge_kPa }: PanelFigure) => ({
  id: 'drill.option',
  values: { label: quantity('pressure_kPa', gauge_kPa, 0.5) },
});

function Lamps({ figure }: { figure: PanelFigure }) {
  const { t } = useDesk();
  const first = 170 - (figure.lamps.length - 1) * 80;
  return (
    <>
      {figure.lamps.map(({ id, lit }, i) => {
        const x = first + i * 160;
        return (
          <g key={id} class={lit ? 'lamp lit' : 'lamp'} transform={`translate(${x} 62)`}>
            {lit && <path class="rays" d="M-24 -22l-14 -8M-14 -40l-7 -11M0 -44v-12M14 -40l7 -11" />}
            <path class="glass" d="M-15 -6V-22a15 15 0 0 1 30 0V-6Z" />
            <path class="collar" d="M-20 -6h40v6h-40z" />
            <text class="lamp-name" x="26" y="-22">
              {t(LAMP_NAMES[id])}
            </text>
            <text class="stand here" x="26" y="-6">
              {t(lit ? 'drills.fig.lit' : 'drills.fig.dark')}
            </text>
          </g>
        );
      })}
    </>
  );
}

function Lever({ x, name, stand }: { x: number; name: string; stand: LeverStand }) {
  const { t } = useDesk();
  return (
    <g transform={`translate(${x} 78)`}>
      <text class="panel-name" x="27" y="12" text-anchor="middle">
        {name.length > 8 ? `${name.slice(0, 7)}.` : name}
      </text>
      <rect class="slot" x="6" y="18" width="26" height="100" rx="4" />
      <rect class={`handle ${stand}`} x="8" y={18 + HANDLE[stand]} width="22" height="28" rx="3" />
      {(['on', 'tripped', 'off'] as const).map((one) => (
        <text key={one} class={one === stand ? 'stand here' : 'stand'} x="36" y={40 + HANDLE[one]}>
          {t(LEVER_WORD[one])}
        </text>
      ))}
    </g>
  );
}

function Timer({ timer }: { timer: NonNullable<PanelFigure['timer']> }) {
  const { t } = useDesk();
  return (
    <g transform="translate(246 84)">
      <text class="panel-name" x="42" y="6" text-anchor="middle">
        {t('yard.panel.timer')}
      </text>
      <rect class="lcd" x="0" y="16" width="84" height="40" rx="4" />
      <text class={timer.keeps ? 'digits' : 'digits lost'} x="42" y="45" text-anchor="middle">
        {timer.keeps ? formatClock(timer.clock_s) : '– –:– –'}
      </text>
    </g>
  );
}

function Gauge({ text }: { text: string }) {
  const { t } = useDesk();
  return (
    <g transform="translate(62 262)">
      <text class="panel-name" y="-38" text-anchor="middle">
        {t('yard.panel.airSwitch')}
      </text>
      <circle class="gauge" r="30" />
      <text class="gauge-text" y="5" text-anchor="middle">
        {text}
      </text>
    </g>
  );
}

function Selector({ stand }: { stand: PanelFigure['selector'] }) {
  const { t } = useDesk();
  return (
    <g transform="translate(172 270)">
      <text class="panel-name" y="-46" text-anchor="middle">
        {t('yard.panel.selector')}
      </text>
      {(['hand', 'off', 'auto'] as const).map((one, i) => (
        <text
          key={one}
          class={one === stand ? 'stand here' : 'stand'}
          x={[-27, 0, 27][i]}
          y={[-10, -29, -10][i]}
          text-anchor={['end', 'middle', 'start'][i]}
        >
          {t(SELECTOR_WORD[one])}
        </text>
      ))}
      <circle class="knob-ring" r="24" />
      <path class="knob-bar" d="M0 16V-20" transform={`rotate(${KNOB[stand]})`} />
    </g>
  );
}

function Counters({ figure }: { figure: PanelFigure }) {
  const { t } = useDesk();
  const rows: readonly (readonly [Key, string])[] = [
    ['yard.panel.hours', figure.hours.toFixed(1).padStart(7, '0')],
    ['yard.panel.cycles', String(figure.cycles).padStart(6, '0')],
  ];
  return (
    <>
      {rows.map(([name, digits], i) => (
        <g key={name} transform={`translate(242 ${222 + i * 46})`}>
          <text class="panel-name" x="0" y="6">
            {t(name)}
          </text>
          <rect class="counter" x="0" y="11" width="94" height="24" rx="3" />
          <text class="counter-digits" x="47" y="28" text-anchor="middle">
            {digits}
          </text>
        </g>
      ))}
    </>
  );
}

function Buttons({ figure }: { figure: PanelFigure }) {
  const { t } = useDesk();
  const { testHeld, buzzer } = figure;
  return (
    <g transform="translate(0 350)">
      <path class="groove" d="M20 -30H340" />
      <circle class="button silence" cx="40" cy="4" r="13" />
      <text class="button-name" x="58" y="9">
        {t('yard.panel.silence')}
      </text>
      <circle class={testHeld ? 'button test held' : 'button test'} cx="142" cy="4" r="13" />
      <text class="button-name" x="160" y="9">
        {t('yard.panel.test')}
      </text>
      <circle class="horn" cx="238" cy="4" r="15" />
      <circle class="horn-hole" cx="238" cy="4" r="5" />
      {buzzer && <path class="rays" d="M256 -6a14 14 0 0 1 0 20M262 -12a22 22 0 0 1 0 32" />}
      <text class="button-name" x={buzzer ? 272 : 260} y="2">
        {t('yard.panel.buzzer')}
      </text>
      <text class="stand here" x={buzzer ? 272 : 260} y="18">
        {t(buzzer ? 'drills.fig.sounds' : 'drills.fig.mute')}
      </text>
    </g>
  );
}
