/** How a pointer moves the speed cursor: a mouse wherever it presses; a finger along the chart, while across it the page scrolls. */

/** A finger is never still: this far it may stray before it means a way [px]. */
const SLOP = 6;

interface Start {
  readonly pointer: number;
  readonly x: number;
  readonly y: number;
}

/** @param follow given how far from the left of the layer the pointer is [px] */
export function cursorDrag(follow: (x: number) => void) {
  let start: Start | undefined;
  let isFollowing = false;
  const to = (event: PointerEvent): void =>
    follow(event.clientX - (event.currentTarget as HTMLElement).getBoundingClientRect().left);
  return {
    onPointerDown: (event: PointerEvent): void => {
      start = { pointer: event.pointerId, x: event.clientX, y: event.clientY };
      isFollowing = event.pointerType !== 'touch';
      (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
      if (isFollowing) to(event);
    },
    onPointerMove: (event: PointerEvent): void => {
      if (start?.pointer !== event.pointerId) return;
      const [along, across] = [Math.abs(event.clientX - start.x), Math.abs(event.clientY - start.y)];
      isFollowing ||= along > SLOP && along > across;
      if (isFollowing) to(event);
    },
    /** A tap, or the end of a way along. */
    onPointerUp: (event: PointerEvent): void => {
      if (start?.pointer === event.pointerId) to(event);
      start = undefined;
    },
    /** The page scrolls instead. */
    onPointerCancel: (): void => {
      start = undefined;
    },
  };
}
