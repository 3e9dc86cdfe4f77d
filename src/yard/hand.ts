/**
 * Pointer on the picture: drag to pan, wheel and pinch to zoom, a short press to choose. It listens on an element that
 * may hold real buttons over the picture: those keep their clicks, but a drag that starts on one still pans.
 */
export interface Gestures {
  pan(dx: number, dy: number): void;
  zoom(by: number, x: number, y: number): void;
  press(x: number, y: number): void;
}

/** A press may wander this many CSS pixels. */
const SLACK = 6;

export class Hand {
  readonly #ground: HTMLElement;
  readonly #to: Gestures;
  readonly #down = new Map<number, { x: number; y: number }>();
  readonly #stop = new AbortController();
  #wandered = 0;

  constructor(ground: HTMLElement, to: Gestures) {
    this.#ground = ground;
    this.#to = to;
    const signal = this.#stop.signal;
    ground.addEventListener('pointerdown', this.#start, { signal });
    ground.addEventListener('pointermove', this.#move, { signal });
    ground.addEventListener('pointerup', this.#end, { signal });
    ground.addEventListener('pointercancel', this.#end, { signal });
    ground.addEventListener('click', this.#click, { signal, capture: true });
    ground.addEventListener('wheel', this.#wheel, { signal, passive: false });
  }

  dispose(): void {
    this.#stop.abort();
  }

  readonly #start = (e: PointerEvent): void => {
    if (e.button !== 0) return;
    if (this.#down.size === 0) this.#wandered = 0;
    this.#down.set(e.pointerId, { x: e.clientX, y: e.clientY });
  };

  readonly #move = (e: PointerEvent): void => {
    const was = this.#down.get(e.pointerId);
    if (was === undefined) return;
    const dx = e.clientX - was.x;
    const dy = e.clientY - was.y;
    const other = [...this.#down].find(([id]) => id !== e.pointerId)?.[1];
    this.#down.set(e.pointerId, { x: e.clientX, y: e.clientY });
    this.#wandered += Math.abs(dx) + Math.abs(dy);
    if (other !== undefined) {
      const before = Math.hypot(was.x - other.x, was.y - other.y);
      const after = Math.hypot(e.clientX - other.x, e.clientY - other.y);
      const r = this.#ground.getBoundingClientRect();
      if (before > 8)
        this.#to.zoom(after / before, (e.clientX + other.x) / 2 - r.left, (e.clientY + other.y) / 2 - r.top);
    } else if (this.#wandered > SLACK) {
      if (!this.#ground.hasPointerCapture(e.pointerId)) this.#ground.setPointerCapture(e.pointerId);
      this.#to.pan(dx, dy);
    }
  };

  readonly #end = (e: PointerEvent): void => {
    if (!this.#down.delete(e.pointerId) || this.#down.size > 0 || e.type === 'pointercancel') return;
    if (this.#wandered > SLACK || !(e.target instanceof HTMLCanvasElement)) return;
    const r = this.#ground.getBoundingClientRect();
    this.#to.press(e.clientX - r.left, e.clientY - r.top);
  };

  /** The click that a browser sends after a drag is none. */
  readonly #click = (e: MouseEvent): void => {
    if (this.#wandered <= SLACK || e.detail === 0) return;
    e.stopPropagation();
    e.preventDefault();
  };

  /** Only with the control key, which is also what a pinch on a touchpad sends: a plain wheel scrolls the page. */
  readonly #wheel = (e: WheelEvent): void => {
    if (!e.ctrlKey) return;
    e.preventDefault();
    const r = this.#ground.getBoundingClientRect();
    this.#to.zoom(Math.exp(-e.deltaY * 0.004), e.clientX - r.left, e.clientY - r.top);
  };
}
