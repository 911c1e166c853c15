/** The size of an element as it changes [px]. */
import { useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';

export function useSize<E extends Element>() {
  const ref = useRef<E>(null);
  const size = useSignal({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element) return undefined;
    const { width, height } = element.getBoundingClientRect();
    size.value = { width, height };
    const observer = new ResizeObserver(([entry]) => {
      size.value = { width: entry.contentRect.width, height: entry.contentRect.height };
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, [size]);
  return { ref, size: size.value };
}
