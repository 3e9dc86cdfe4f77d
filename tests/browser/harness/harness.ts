/** A bare page that holds one yard; the tests drive it through `window.harness`. */
import type { PartId } from '../../../src/scene/types.ts';
import type { Message } from '../../../src/service/message.ts';
import { openYard, type ViewName } from '../../../src/yard/index.ts';
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
  'yard.panel.locked': 'Locked out',
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
  'yard.floats.core': 'Core',
  'yard.floats.made': 'closed',
  'yard.floats.open': 'open',
  'yard.floats.unknown': 'not measured',
};

function text(m: Message): string {
  const v = m.values ?? {};
  if (m.id === 'note') return String(v.text);
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
const yard = await openYard(host, {
  text,
  renderer: renderer === 'webgl' || renderer === 'canvas' ? renderer : 'auto',
  still: ask.has('still'),
});
const harness = {
  yard,
  show: (name: SceneName) => yard.draw(SCENES[name]),
  /** The same values in new objects. */
  showCopy: (name: SceneName) => yard.draw(structuredClone(SCENES[name])),
  view: (view: ViewName) => yard.view(view),
  panTo: (part: PartId) => yard.panTo(part),
  outline() {
    for (const old of document.querySelectorAll('.spot')) old.remove();
    for (const s of yard.hotspots()) {
      const d = document.createElement('div');
      d.className = 'spot';
      d.style.cssText = `position:absolute;left:${s.x}px;top:${s.y}px;width:${s.width}px;height:${s.height}px;outline:2px solid #c0f`;
      host.append(d);
    }
  },
};
export type Harness = typeof harness;
(window as unknown as { harness: Harness }).harness = harness;
const first = ask.get('scene') ?? 'idleDay';
if (first in SCENES) harness.show(first as SceneName);
document.documentElement.dataset.ready = '';
