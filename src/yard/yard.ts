/** Opens the yard in a host element: renderer, camera, clock, and the sheets between which one zooms. */
import { Container } from 'pixi.js';
import type { PartId, Scene } from '../scene/types.ts';
import { Camera, type Frame, holds, union, visible } from './camera.ts';
import { Clock } from './clock.ts';
import { Hand } from './hand.ts';
import { onScreen, toHotspots } from './hotspots.ts';
import { PLATE_WIDTH } from './layout.ts';
import { type Box, box } from './pen.ts';
import { fontsReady, makeRenderer } from './renderer.ts';
import type { Print, Sheet } from './sheet.ts';
import { makeSparks } from './sparks.ts';
import type { Hotspot, Speech, ViewName, Yard, YardOptions } from './types.ts';
import { Works } from './works.ts';

/** More than two device pixels per CSS pixel cost much and show nothing on a drawing. */
const FINEST = 2;
/** Device pixels up to which a whole sheet is painted at once, so that panning repaints nothing. */
const WHOLE_SHEET = 4_500_000;
const FADE_S = 0.25;
const MOST_ZOOM = 5;

/** Opens the cutaway; resolves when the first empty sheet stands. Call `draw` to put a scene on it. */
export async function openYard(host: HTMLElement, options: YardOptions): Promise<Yard> {
  const density = Math.min(FINEST, Math.max(1, window.devicePixelRatio || 1));
  const renderer = await makeRenderer(options.renderer ?? 'auto', density);
  await fontsReady();
  const stage = new Container();
  const sparks = makeSparks();
  const works = new Works(sparks);
  const closeUps = new Map<ViewName, Sheet>();
  const camera = new Camera();
  const heard = new Set<(spots: readonly Hotspot[]) => void>();
  let { text, staff }: Speech = options;
  let still = options.still ?? false;
  let scene: Scene | null = null;
  let selected: PartId | null = null;
  let asked: ViewName = 'yard';
  let wanted: ViewName = 'yard';
  let shown: Sheet = works;
  let leaving: Sheet | null = null;
  let fading = 1;
  let baked: { area: Box; unit: number } | null = null;
  let spots: readonly Hotspot[] = [];
  let home = camera.now;
  /** Where one was on the whole works, to come back to from a close-up. */
  let worksAt: Frame | null = null;
  let frames = 0;
  /** Parts of the drawing that are being fetched. */
  let pending = 0;
  let disposed = false;

  const hang = (sheet: Sheet) => {
    sheet.root.visible = false;
    stage.addChild(sheet.root);
  };
  hang(works);
  host.append(renderer.canvas);
  renderer.canvas.style.display = 'block';
  renderer.canvas.style.touchAction = 'none';

  const sheets = (): readonly Sheet[] => [works, ...closeUps.values()];
  const sheetOf = (view: ViewName): Sheet => closeUps.get(view) ?? works;
  const inReach = (scale: number) => Math.min(home.scale * MOST_ZOOM, Math.max(home.scale, scale));

  const place = () => {
    for (const s of [shown, leaving]) {
      if (s === null) continue;
      const { scale, x, y } = s === shown ? camera.now : leftAt;
      s.root.scale.set(scale);
      const px = (v: number) => Math.round(v * density) / density;
      s.root.position.set(px(camera.width / 2 - x * scale), px(camera.height / 2 - y * scale));
    }
  };
  let leftAt = camera.now;

  const render = () => {
    place();
    renderer.render(stage);
    frames++;
  };

  const print = () => {
    if (scene === null) return;
    if (
      baked === null ||
      (!camera.moving && !holds(baked.area, camera.view)) ||
      (!camera.moving && baked.unit !== camera.now.scale)
    )
      bake();
    if (baked === null) return;
    const view = visible(camera.target, camera.width, camera.height);
    const p: Print = { scene, ...baked, view, scale: baked.unit * density, text, staff, selected, still };
    shown.print(p);
    shown.root.visible = true;
  };

  const bake = () => {
    const to = camera.target;
    const view = visible(to, camera.width, camera.height);
    const { limits } = camera;
    const whole = limits.width * limits.height * (to.scale * density) ** 2 <= WHOLE_SHEET;
    const more = whole ? 0 : view.width * 0.35;
    const wide = box(view.x - more, view.y - more * 0.4, view.width + 2 * more, view.height + more * 0.8);
    baked = { area: whole ? union(limits, view) : wide, unit: to.scale };
  };

  const tell = () => {
    spots = scene === null || camera.moving ? spots : toHotspots(shown.spots(), camera);
    for (const h of heard) h(spots);
  };

  const clock = new Clock((t, dt) => {
    if (scene === null || disposed) return false;
    const gliding = camera.step(dt);
    if (fading < 1) {
      fading = Math.min(1, fading + dt / FADE_S);
      shown.root.alpha = fading;
      if (fading >= 1 && leaving !== null) {
        leaving.root.visible = false;
        leaving = null;
      }
    }
    const settled = !gliding && !camera.moving;
    if (settled && baked !== null && (baked.unit !== camera.now.scale || !holds(baked.area, camera.view))) {
      print();
      tell();
    }
    const moving = still ? false : shown.step(t, dt);
    render();
    return gliding || fading < 1 || moving;
  });

  const fit = () => {
    if (scene === null) return;
    const f = shown.fit(scene, camera.width, camera.height);
    camera.limits = f.limits;
    home = f.home;
  };

  const frameFor = (view: ViewName): Frame => (view === 'yard' ? { ...(worksAt ?? home), scale: home.scale } : home);

  const refresh = () => {
    if (disposed) return;
    print();
    tell();
    clock.wake(still);
  };

  const settle = () => {
    fit();
    camera.jump(frameFor(wanted));
    baked = null;
    refresh();
  };

  const go = (view: ViewName) => {
    wanted = view;
    const next = sheetOf(view);
    if (scene === null) {
      shown = next;
      return;
    }
    if (shown === works) worksAt = camera.target;
    if (next !== shown) {
      if (leaving !== null) leaving.root.visible = false;
      leaving = shown;
      leftAt = camera.now;
      shown = next;
      stage.addChild(next.root);
      fit();
      camera.jump(frameFor(view));
      fading = still ? 1 : 0;
      next.root.alpha = fading;
      if (still) {
        leaving.root.visible = false;
        leaving = null;
      }
      baked = null;
    } else if (still) camera.jump(frameFor(view));
    else camera.glide(frameFor(view));
    refresh();
  };

  /** Goes to a view once its sheet is there; of those asked for meanwhile only the last one counts. */
  const turnTo = async (to: ViewName) => {
    asked = to;
    if (to !== 'yard' && !closeUps.has(to)) {
      const sheet = await (await import('./closeUps.ts')).openCloseUp(to, sparks);
      if (disposed || closeUps.has(to)) sheet.dispose();
      else {
        hang(sheet);
        closeUps.set(to, sheet);
      }
    }
    if (!disposed && asked === to) go(to);
  };

  const moveTo = (frame: Frame, smooth: boolean) => {
    if (smooth && !still) camera.glide(frame);
    else camera.jump(frame);
    if (shown === works) worksAt = camera.target;
    refresh();
  };

  const hand = new Hand(options.touch ?? host, {
    pan: (dx, dy) =>
      moveTo(
        { ...camera.now, x: camera.now.x - dx / camera.now.scale, y: camera.now.y - dy / camera.now.scale },
        false,
      ),
    zoom: (by, px, py) => {
      const scale = inReach(camera.now.scale * by);
      const k = 1 / camera.now.scale - 1 / scale;
      moveTo(
        { scale, x: camera.now.x + (px - camera.width / 2) * k, y: camera.now.y + (py - camera.height / 2) * k },
        false,
      );
    },
    press: (px, py) => {
      const hit = spots.filter((s) => px >= s.x && px <= s.x + s.width && py >= s.y && py <= s.y + s.height);
      const least = hit.sort((a, b) => a.width * a.height - b.width * b.height)[0];
      if (least !== undefined && shown === works) options.onSelect?.(least.id as PartId);
    },
  });

  const resize = () => {
    const width = Math.max(1, Math.round(host.clientWidth));
    const height = Math.max(1, Math.round(host.clientHeight));
    if (width === camera.width && height === camera.height) return;
    camera.width = width;
    camera.height = height;
    renderer.resize(width, height);
    settle();
  };
  const watcher = new ResizeObserver(resize);
  watcher.observe(host);
  const restored = () => {
    for (const s of sheets()) s.stale();
    refresh();
  };
  renderer.canvas.addEventListener('webglcontextrestored', restored);

  /** Shows no picture before its first sky is there; without one it shows a fair day's. */
  const awaitSky = (next: Scene) => {
    const coming = works.prepare(next);
    if (coming === undefined) return;
    pending++;
    if (scene === null) renderer.canvas.style.visibility = 'hidden';
    const done = () => {
      pending--;
      if (disposed) return;
      renderer.canvas.style.visibility = '';
      refresh();
    };
    coming.then(done, done);
  };

  return {
    draw(next) {
      awaitSky(next);
      const first = scene === null;
      const before = scene?.geometry;
      scene = next;
      if (first) {
        camera.width = 0;
        resize();
      } else if (before !== next.geometry && JSON.stringify(before) !== JSON.stringify(next.geometry)) settle();
      else refresh();
    },
    select(part) {
      selected = part;
      refresh();
    },
    view: turnTo,
    hotspots: () => spots,
    labels: () => shown.labels().map((b) => onScreen(b, camera)),
    told: () => shown.told?.() ?? [],
    onHotspots(listener) {
      heard.add(listener);
      listener(spots);
      return () => heard.delete(listener);
    },
    pan: (dx, dy = 0) =>
      moveTo(
        { ...camera.target, x: camera.target.x + dx / camera.now.scale, y: camera.target.y + dy / camera.now.scale },
        true,
      ),
    panTo(part) {
      const b = works.partBox(part);
      const there = { x: b.x + b.width / 2, y: b.y + b.height / 2 };
      if (shown === works) moveTo({ ...camera.target, ...there }, true);
      else worksAt = { scale: 1, ...there };
    },
    zoom: (by) => moveTo({ ...camera.target, scale: inReach(camera.target.scale * by) }, true),
    poster: async (wish) => {
      const { makePoster } = await import('./poster.ts');
      if (scene === null) throw new Error('nothing is drawn yet');
      return makePoster(scene, wanted, { text, staff }, wish);
    },
    glass: async () =>
      (await import('./glass.ts')).makeGlass({
        works,
        scene: () => scene,
        toPlate: (x, y) => [camera.view.x + x / camera.now.scale, camera.view.y + y / camera.now.scale],
        toScreen: (x, y) => [(x - camera.view.x) * camera.now.scale, (y - camera.view.y) * camera.now.scale],
        scale: () => camera.now.scale,
      }),
    setStill(on) {
      still = on;
      if (on) camera.jump(camera.target);
      refresh();
    },
    setSpeech(next) {
      ({ text, staff } = next);
      for (const s of sheets()) s.stale();
      refresh();
    },
    visible: () => ({ x: camera.view.x / PLATE_WIDTH, width: camera.view.width / PLATE_WIDTH }),
    get frames() {
      return frames;
    },
    get moving() {
      return clock.running || pending > 0;
    },
    dispose() {
      disposed = true;
      clock.stop();
      hand.dispose();
      watcher.disconnect();
      renderer.canvas.removeEventListener('webglcontextrestored', restored);
      for (const s of sheets()) s.dispose();
      renderer.canvas.remove();
      renderer.destroy();
      heard.clear();
    },
  };
}
