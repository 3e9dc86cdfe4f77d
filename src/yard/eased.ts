/** Values that glide to where the scene puts them: levels and pressures never jump on the plate. */
export class Eased {
  readonly #values = new Map<string, { now: number; to: number }>();

  /** Sets where a value goes; a value seen for the first time, or `null` before, stands there at once. */
  aim(id: string, to: number | null, jump: boolean): void {
    if (to === null) {
      this.#values.delete(id);
      return;
    }
    const v = this.#values.get(id);
    if (v === undefined || jump) this.#values.set(id, { now: to, to });
    else v.to = to;
  }

  get(id: string): number | null {
    return this.#values.get(id)?.now ?? null;
  }

  /** Moves on by `dt` seconds; `fine` is the distance that no longer shows. */
  step(dt: number, fine: number): boolean {
    let moving = false;
    const k = Math.min(1, dt * 6);
    for (const v of this.#values.values()) {
      if (v.now === v.to) continue;
      v.now += (v.to - v.now) * k;
      if (Math.abs(v.to - v.now) < fine) v.now = v.to;
      else moving = true;
    }
    return moving;
  }
}
