/** A bare page that holds one yard; the tests drive it through `window.harness`. */
import { Container } from 'pixi.js';
import type { Ink, PartId } from '../../../src/scene/types.ts';
import type { Message } from '../../../src/service/message.ts';
import { openYard, type ViewName } from '../../../src/yard/index.ts';
import { makeRenderer } from '../../../src/yard/renderer.ts';
import { SCENES, type SceneName } from '../fixtures/scenes.ts';

/** Good enough words for a picture: the test of the real words is elsewhere. */
const NAMES: Readonly<Record<string, string>> = {
  'trash-tank': 'Trash tank',
  aeration: 'Aeration chamber',
  clarifier: 'Clarifier',
  disinfection: 'Disinfection',
  'pump-tank': 'Pump tank',
  'disc-filter': 'Disc filter',
  'spray-field': 'Spray field',
  panel: 'Control panel',
  compressor: 'Compressor and air line',
  house: 'House',
  'clean-out': 'Clean-out',
};

const LINES: Readonly<Record<string, string>> = {
  'yard.panel.alarm': 'Alarm',
  'yard.panel.compressor': 'Compressor',
  'yard.panel.pump': 'Pump',
  'yard.panel.on': 'on',
  'yard.panel.trip': 'trip',
  'yard.panel.off': 'off',
  'yard.panel.timer': 'Timer',
  'yard.panel.airSwitch': 'Air switch',
  'yard.panel.relay': 'Pump relay',
  'yard.panel.selector': 'Pump',
  'yard.panel.hand': 'Hand',
  'yard.panel.auto': 'Auto',
  'yard.panel.hours': 'Hours',
  'yard.panel.cycles': 'Starts',
  'yard.panel.silence': 'Silence',
  'yard.panel.test': 'Test',
  'yard.panel.buzzer': 'Buzzer',
  'yard.panel.reset': 'Reset',
  'yard.panel.reset1': 'All three levers off',
  'yard.panel.reset2': 'Wait one minute',
  'yard.panel.reset3': 'On: left to right',
  'yard.panel.reset4': 'Watch the lamp',
  'yard.float.stop': 'Stop',
  'yard.float.dose': 'Dose',
  'yard.float.override': 'Override',
  'yard.float.high-water': 'High water',
  'yard.floats.tree': 'Float tree',
  'yard.floats.pump': 'Pump',
  'yard.floats.intake': 'Intake',
  'yard.floats.discharge': 'Discharge',
  'yard.floats.checkValve': 'Check valve',
  'yard.floats.inlet': 'Inlet',
  'yard.floats.made': 'closed',
  'yard.floats.open': 'open',
  'yard.floats.unknown': 'not measured',
};

function text(m: Message): string {
  const v = m.values ?? {};
  if (m.id === 'note') return String(v.text);
  if (m.id === 'yard.panel.runs') return `${String(v.n)} × 9 min`;
  if (m.id.startsWith('part.')) return NAMES[m.id.slice(5)] ?? m.id;
  const q = Object.values(v)[0];
  if (q !== undefined && typeof q === 'object' && 'measure' in q) {
    if (q.measure === 'clock_s') return new Date(q.value * 1000).toISOString().slice(11, 16);
    if (q.measure === 'length_m') return `${(q.value * 39.37).toFixed(1)} in`;
    if (q.measure === 'pressure_kPa') return `${(q.value / 6.895).toFixed(1)} psi`;
    return String(q.value);
  }
  return LINES[m.id] ?? m.id;
}

const host = document.getElementById('host');
if (host === null) throw new Error('no host');
const ask = new URLSearchParams(location.search);
const renderer = ask.get('renderer');
const pressed: PartId[] = [];
const yard = await openYard(host, {
  text,
  renderer: renderer === 'webgl' || renderer === 'canvas' ? renderer : 'auto',
  still: ask.has('still'),
  onSelect: (part) => pressed.push(part),
});
const harness = {
  yard,
  pressed,
  show: (name: SceneName) => yard.draw(SCENES[name]),
  /** The same values in new objects. */
  showCopy: (name: SceneName) => yard.draw(structuredClone(SCENES[name])),
  /** A maker that lets truth through behind a pencil part: the drawing must not show it. */
  showLeaky() {
    const told = SCENES.callStart;
    const truth = SCENES.nightAlarm;
    const hide = <T extends { readonly ink: Ink }>(part: T): T => ({ ...part, ink: { kind: 'pencil' } });
    yard.draw({
      ...told,
      house: hide({ ...truth.house, backingUp: true }),
      chambers: {
        'trash-tank': hide(truth.chambers['trash-tank']),
        aeration: hide(truth.chambers.aeration),
        clarifier: hide(truth.chambers.clarifier),
        disinfection: hide(truth.chambers.disinfection),
        'pump-tank': hide(SCENES.coredTank.chambers['pump-tank']),
      },
      floats: truth.floats.map(hide),
      pump: hide(truth.pump),
      panel: {
        ...hide(truth.panel),
        lampInk: { kind: 'pencil' },
        buzzer: null,
        breakers: truth.panel.breakers.map((b) => hide({ ...b, lever: 'tripped' as const })),
      },
      compressor: hide({ ...SCENES.halfInked.compressor, rattle: true, intakeDirt: 1 }),
      discFilter: hide({ ...truth.discFilter, flowShare: 0.01 }),
      field: hide(truth.field),
    });
  },
  /** A real button over the picture, as the page lays them. */
  addButton(part: PartId) {
    const s = yard.hotspots().find((one) => one.id === part);
    if (s === undefined) return;
    const b = document.createElement('button');
    Object.assign(b.style, {
      position: 'absolute',
      left: `${s.x}px`,
      top: `${s.y}px`,
      width: `${s.width}px`,
      height: `${s.height}px`,
      opacity: '0',
    });
    b.addEventListener('click', () => pressed.push('panel'));
    host.append(b);
  },
  view: (view: ViewName) => yard.view(view),
  panTo: (part: PartId) => yard.panTo(part),
};
export type Harness = typeof harness;
(window as unknown as { harness: Harness }).harness = harness;
const first = ask.get('scene') ?? 'idleDay';
if (ask.has('empty')) {
  // What any picture costs here: the same renderer with nothing on its stage.
  yard.dispose();
  const bare = await makeRenderer(renderer === 'webgl' ? 'webgl' : 'canvas', 1);
  bare.resize(host.clientWidth, host.clientHeight);
  host.append(bare.canvas);
  const nothing = new Container();
  const again = () => {
    bare.render(nothing);
    requestAnimationFrame(again);
  };
  again();
} else if (first in SCENES) harness.show(first as SceneName);
document.documentElement.dataset.ready = '';
