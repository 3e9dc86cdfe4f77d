/** Makes the paths that everything is painted with: the canvas's own, or another kind while a picture is written out. */
type Make = (d?: string | Path2D) => Path2D;

let make: Make = (d) => new Path2D(d);

export function newPath(d?: string | Path2D): Path2D {
  return make(d);
}

/** Paints with another kind of path. */
export function withPaths(other: Make, paint: () => void): void {
  const usual = make;
  make = other;
  try {
    paint();
  } finally {
    make = usual;
  }
}
