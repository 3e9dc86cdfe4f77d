/** The plate's own clock: it asks for frames while something moves and is silent otherwise. */
export class Clock {
  readonly #frame: (t: number, dt: number) => boolean;
  #t = 0;
  #last = 0;
  #asked = 0;

  /** `frame` gets seconds since the start and since the last frame; it returns whether more has to come. */
  constructor(frame: (t: number, dt: number) => boolean) {
    this.#frame = frame;
  }

  get running(): boolean {
    return this.#asked !== 0;
  }

  /** Something changed: draw. `still` draws one frame at a fixed instant, so that the same scene gives the same picture. */
  wake(still: boolean): void {
    if (still) this.#t = 0;
    if (this.#asked !== 0) return;
    this.#last = 0;
    this.#asked = requestAnimationFrame(this.#tick);
  }

  stop(): void {
    if (this.#asked !== 0) cancelAnimationFrame(this.#asked);
    this.#asked = 0;
  }

  readonly #tick = (now: number): void => {
    // A page that was hidden for minutes goes on from where it was.
    const dt = this.#last === 0 ? 0 : Math.min(0.05, (now - this.#last) / 1000);
    this.#last = now;
    this.#t += dt;
    this.#asked = requestAnimationFrame(this.#tick);
    if (!this.#frame(this.#t, dt)) this.stop();
  };
}
