import { useEffect, useRef, useState } from 'preact/hooks';

/** Width of a box as it is laid out, CSS pixels; `first` until it is known. */
export function useWidth(first: number) {
  const box = useRef<HTMLElement>(null);
  const [width, setWidth] = useState(first);
  useEffect(() => {
    const at = box.current;
    if (at === null) return;
    const watch = new ResizeObserver(() => setWidth(at.clientWidth));
    watch.observe(at);
    return () => watch.disconnect();
  }, []);
  return { box, width };
}
