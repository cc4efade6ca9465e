// How large an element is on the screen, as it changes.

import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A ref for the element, and its inner size in CSS pixels; nothing before it is laid out. */
export function useSize<Kind extends HTMLElement>(): readonly [RefObject<Kind | null>, Size | undefined] {
  const place = useRef<Kind>(null);
  const [size, setSize] = useState<Size>();
  useLayoutEffect(() => {
    const element = place.current;
    if (!element) return;
    const measure = () => setSize((before) => (before?.width === element.clientWidth && before.height === element.clientHeight ? before : { width: element.clientWidth, height: element.clientHeight }));
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [place, size];
}
