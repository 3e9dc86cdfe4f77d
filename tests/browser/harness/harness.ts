/** A bare page that holds one yard; the tests drive it through `window.harness`. */
import { Container } from 'pixi.js';
import type { Ink, PartId, Scene } from '../../../src/scene/types.ts';
import { en } from '../../../src/words/en.ts';
import { ofPicture as enPicture } from '../../../src/words/en-picture.ts';
import { es } from '../../../src/words/es.ts';
import { ofPicture as esPicture } from '../../../src/words/es-picture.ts';
import { speak } from '../../../src/words/speak.ts';
import { STAFFS, type Units } from '../../../src/words/units.ts';
import type { Language } from '../../../src/words/words.ts';
import { openYard, type Speech, type ViewName } from '../../../src/yard/index.ts';
import { KEYS, type Keyed } from '../../../src/yard/posterWords.ts';
import { makeRenderer } from '../../../src/yard/renderer.ts';
import { SCENES, type SceneName } from '../fixtures/index.ts';

const WORDS = {
  en: { language: 'en', texts: { ...en, ...enPicture } },
  es: { language: 'es', texts: { ...es, ...esPicture } },
} as const;

/** The real words; only the notes of the fixtures bring their own text. */
function speech(language: Language, units: Units): Speech {
  const say = speak(WORDS[language], units, true);
  return { text: (m) => (m.id === 'note' ? String(m.values?.text) : say(m)), staff: STAFFS[units] };
}

/** Values to put in place of others, each where it stands in the scene. */
export interface Changes {
  readonly [name: string]: Changes | number | string | boolean | null;
}

function changed(value: object, changes: Changes): object {
  const entries = Object.entries(changes).map(([name, to]) => {
    const from = (value as Record<string, unknown>)[name];
    const deeper = typeof to === 'object' && to !== null && typeof from === 'object' && from !== null;
    return [name, deeper ? changed(from, to) : to];
  });
  return { ...value, ...Object.fromEntries(entries) };
}

const host = document.getElementById('host');
if (host === null) throw new Error('no host');
const ask = new URLSearchParams(location.search);
const renderer = ask.get('renderer');
const pressed: PartId[] = [];
const yard = await openYard(host, {
  ...speech('en', 'us'),
  renderer: renderer === 'webgl' || renderer === 'canvas' ? renderer : 'auto',
  still: ask.has('still'),
  onSelect: (part) => pressed.push(part),
});
const harness = {
  yard,
  pressed,
  show: (name: SceneName) => yard.draw(SCENES[name]),
  /** The same scene in another wind. */
  blow: (name: SceneName, wind_ms: number) => {
    const scene: Scene = SCENES[name];
    yard.draw({ ...scene, sky: { ...scene.sky, wind_ms } });
  },
  /** A scene with whole parts of it replaced. */
  showParts: (name: SceneName, parts: Partial<Scene>) => yard.draw({ ...SCENES[name], ...parts }),
  /** The same values in new objects. */
  showCopy: (name: SceneName) => yard.draw(structuredClone(SCENES[name])),
  /** A scene with some of its values replaced. */
  showWith: (name: SceneName, changes: Changes) => yard.draw(changed(SCENES[name], changes) as Scene),
  /** A maker that lets truth through behind a pencil part: the drawing must not show it. */
  showLeaky(toldAs: SceneName, trueAs: SceneName) {
    const told: Scene = SCENES[toldAs];
    const truth: Scene = SCENES[trueAs];
    const hide = <T extends { readonly ink: Ink }>(part: T): T => ({ ...part, ink: { kind: 'pencil' } });
    yard.draw({
      ...told,
      house: hide({ ...truth.house, backingUp: true }),
      chambers: {
        'trash-tank': hide(truth.chambers['trash-tank']),
        aeration: hide(truth.chambers.aeration),
        clarifier: hide({ ...truth.chambers.clarifier, lid: 'open', sludge_m: 0.5, scum_m: 0.1 }),
        disinfection: hide(truth.chambers.disinfection),
        'pump-tank': hide(SCENES.coredTank.chambers['pump-tank']),
      },
      jar: hide({ ...SCENES.trouble.jar, specks: true }),
      floats: truth.floats.map(hide),
      pump: hide(truth.pump),
      panel: {
        ...hide(truth.panel),
        lamps: truth.panel.lamps.map(hide),
        buzzer: null,
        breakers: truth.panel.breakers.map((b) => hide({ ...b, lever: 'tripped' as const })),
      },
      compressor: hide({
        ...SCENES.halfInked.compressor,
        rattle: true,
        intakeDirt: 1,
        outlet: hide({ ...truth.compressor.outlet, plugged: false, tripped: true }),
      }),
      ultraviolet: hide(truth.ultraviolet),
      discFilter: hide({ ...truth.discFilter, open: true, flowShare: 0.01 }),
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
  poster: (kind: 'png' | 'svg', title: string) =>
    yard.poster({
      kind,
      title,
      when: 'May 14, 2031, 16:42',
      legend: Object.fromEntries(KEYS.map((key) => [key, key])) as Record<Keyed, string>,
      simulated: 'Simulated.',
      drawing: 'Drawn.',
      progress: () => {},
    }),
  view: (view: ViewName) => yard.view(view),
  speak: (language: Language, units: Units) => yard.setSpeech(speech(language, units)),
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
